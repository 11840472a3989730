namespace SetupService.Domain.Wear.Diagnosis;

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
