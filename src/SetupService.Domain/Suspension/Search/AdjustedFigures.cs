using SetupService.Domain.Answers;

namespace SetupService.Domain.Suspension.Search;

/// <summary>What is told of an adjusted corner as it stands; null where it is not known or this kind of suspension has it not. Signs as everywhere.</summary>
public sealed record AdjustedFigures
{
    /// <summary>Camber, degrees.</summary>
    public required double CamberDeg { get; init; }

    /// <summary>The same with what a gauge's error leaves open; null where points are taken as exact.</summary>
    public Estimate? Camber { get; init; }

    /// <summary>Caster with what the readings' error leaves open; null where it is not known or points are taken as exact.</summary>
    public Estimate? Caster { get; init; }

    /// <summary>Caster, degrees.</summary>
    public double? CasterDeg { get; init; }

    /// <summary>Steering-axis inclination, degrees.</summary>
    public double? SteeringAxisInclinationDeg { get; init; }

    /// <summary>Toe, degrees.</summary>
    public double? ToeDeg { get; init; }

    /// <summary>Scrub radius, mm.</summary>
    public double? ScrubRadiusMm { get; init; }

    /// <summary>Mechanical trail, mm.</summary>
    public double? MechanicalTrailMm { get; init; }

    /// <summary>Roll-centre height, mm.</summary>
    public double? RollCentreHeightMm { get; init; }

    /// <summary>Change of camber per mm of bump, degrees.</summary>
    public double? CamberGainDegPerMm { get; init; }

    /// <summary>Change of toe per mm of bump, degrees.</summary>
    public double? ToeGainDegPerMm { get; init; }

    /// <summary>Spring travel by wheel travel.</summary>
    public double? SpringMotionRatio { get; init; }

    /// <summary>Height of the contact against the body, mm; only differences mean something.</summary>
    public double? ContactHeightMm { get; init; }

    /// <summary>Distance of the contact from the car's centre plane, mm.</summary>
    public double? HalfTrackMm { get; init; }

    /// <summary>Length of the tie rod or toe link, mm.</summary>
    public double? TieRodLengthMm { get; init; }

    /// <summary>How far outboard the tyre's top stands, mm.</summary>
    public double? TyreTopOutboardMm { get; init; }

    /// <summary>From the strut's axis outboard to the wheel's centre plane, mm, at the tyre's top.</summary>
    public double? StrutGapMm { get; init; }
}
