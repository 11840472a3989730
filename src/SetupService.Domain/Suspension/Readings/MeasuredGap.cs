namespace SetupService.Domain.Suspension.Readings;

/// <summary>Why a measured corner does not know something.</summary>
public enum MeasuredGap
{
    /// <summary>Toe was read at fewer than two different heights.</summary>
    ToeNotRead,

    /// <summary>The caster is not given, and no steer readings tell it.</summary>
    CasterNotKnown,

    /// <summary>The steering-axis inclination is not given, and no steer readings tell it.</summary>
    InclinationNotKnown,

    /// <summary>Camber was read at fewer than two different places of the top mount.</summary>
    TopMountNotRead,

    /// <summary>The top mount was moved too little: its effect does not stand out from the gauge's error.</summary>
    TopMountMovedTooLittle,

    /// <summary>Camber went up with the top mount moved inboard, which a strut cannot do: the sign of the readings.</summary>
    TopMountWrongWay,

    /// <summary>It needs the points of the corner, or a measurement nobody is asked for here.</summary>
    NeedsPoints,
}
