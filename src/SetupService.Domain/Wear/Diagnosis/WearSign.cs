namespace SetupService.Domain.Wear.Diagnosis;

/// <summary>What readings of an axle come down to, each a number; means are over its tyres that were read, differences are left less right.</summary>
public enum WearSign
{
    /// <summary>Wear of the outer shoulder less that of the inner one, divided by the mean wear.</summary>
    ShoulderDifference,

    /// <summary>Difference of <see cref="ShoulderDifference"/> between left and right.</summary>
    ShoulderDifferenceAcrossAxle,

    /// <summary>Wear of the centre less the mean of the shoulders', divided by the mean wear.</summary>
    CrownDifference,

    /// <summary>Difference of <see cref="CrownDifference"/> between left and right.</summary>
    CrownDifferenceAcrossAxle,

    /// <summary>Natural logarithm of the left tyre's mean wear by the right one's.</summary>
    SideWearRatio,

    /// <summary>Natural logarithm of this axle's mean wear by the other's.</summary>
    AxleWearRatio,

    /// <summary>Root-mean-square difference of depth round the tyre beyond the gauge's error, of the axle's worse tyre, mm.</summary>
    SpreadAround,

    /// <summary>Share of that difference that goes once round the tyre, from 0 to 1.</summary>
    OncePerTurnShare,

    /// <summary>Temperature of the outer shoulder less that of the inner one, °C.</summary>
    ShoulderTemperatureDifference,

    /// <summary>Temperature of the centre less the mean of the shoulders', °C.</summary>
    CrownTemperatureDifference,

    /// <summary>Mean temperature against the tyre's window: −1 at its cold end, 1 at its hot end.</summary>
    TemperatureInWindow,

    /// <summary>Mean temperature less the other axle's, °C.</summary>
    AxleTemperatureDifference,

    /// <summary>Pressure beyond its aim, percent of the aim.</summary>
    PressureDeviation,

    /// <summary>Difference of <see cref="PressureDeviation"/> between left and right, percent.</summary>
    PressureDifference,

    /// <summary>Toe of a wheel as set, degrees.</summary>
    ToeSet,

    /// <summary>Half the difference of toe between left and right: where the axle points, degrees.</summary>
    ThrustSet,

    /// <summary>Camber as set, degrees.</summary>
    CamberSet,

    /// <summary>Camber as set less what the cornering needs, degrees: positive = too little negative.</summary>
    CamberShort,

    /// <summary>Difference of camber between left and right, degrees.</summary>
    CamberDifference,

    /// <summary>Damping ratio of the axle's dampers as they are stated, bump and rebound averaged.</summary>
    DampingRatio,
}

/// <summary>What is either there or not. The first ten are the patterns of <see cref="Readings.TreadPattern"/> in their order.</summary>
public enum WearMark
{
    /// <summary>Edges feel sharp towards the car's centre.</summary>
    FeatheredSharpInboard,

    /// <summary>Edges feel sharp away from the car.</summary>
    FeatheredSharpOutboard,

    /// <summary>Hollows round the tyre.</summary>
    Cupping,

    /// <summary>Blocks worn at one end.</summary>
    HeelAndToe,

    /// <summary>One flat place.</summary>
    FlatSpot,

    /// <summary>Grains on the outer shoulder.</summary>
    ShoulderGraining,

    /// <summary>Blisters.</summary>
    Blistering,

    /// <summary>Pieces torn out.</summary>
    Chunking,

    /// <summary>Scuffed onto the sidewall.</summary>
    WornPastShoulder,

    /// <summary>Patches at an angle.</summary>
    DiagonalScallop,

    /// <summary>The rim is narrower or wider than the tyre's permitted ones.</summary>
    RimOutsidePermitted,

    /// <summary>A tyre was elsewhere on the car, or was turned on its rim.</summary>
    MovedOrTurned,

    /// <summary>The two tyres were made more than half a year apart, or new depths differ by a millimetre or more.</summary>
    TyresDiffer,
}
