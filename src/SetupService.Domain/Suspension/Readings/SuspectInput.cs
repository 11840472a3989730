namespace SetupService.Domain.Suspension.Readings;

/// <summary>Which two inputs of a measured corner can hardly both be right.</summary>
public enum SuspectInputKind
{
    /// <summary>The camber stated for ride height and the readings over travel.</summary>
    StatedCamber,

    /// <summary>One camber reading and the others: with its sign turned it agrees.</summary>
    CamberSign,

    /// <summary>The travel of one reading and the other readings: with its sign turned it agrees.</summary>
    TravelSign,

    /// <summary>One reading and the others: with the sign of either its travel or its camber turned it agrees.</summary>
    CamberOrTravelSign,

    /// <summary>The stated caster and the readings on turn plates.</summary>
    Caster,

    /// <summary>The stated steering-axis inclination and the readings on turn plates.</summary>
    Inclination,

    /// <summary>Camber grows more positive in bump over all readings: the signs of travel and camber.</summary>
    CamberGain,
}

/// <summary>Two inputs that can hardly both be right; angles in degrees.</summary>
/// <param name="Kind">Which two.</param>
/// <param name="Reading">Index of the reading meant, in the order given; null where none is meant alone.</param>
/// <param name="GivenDeg">What was given; of <see cref="SuspectInputKind.CamberGain"/> the change over all readings.</param>
/// <param name="ExpectedDeg">What the other input makes of it.</param>
/// <param name="AllowedDeg">How far the two may be apart.</param>
/// <param name="IsSignTurned">Whether the two agree with the sign of one turned: the likely slip.</param>
public readonly record struct SuspectInput(SuspectInputKind Kind, int? Reading, double GivenDeg, double ExpectedDeg, double AllowedDeg, bool IsSignTurned);
