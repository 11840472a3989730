namespace SetupService.Domain.Wear.Pressures;

/// <summary>Why cold and hot pressure cannot be of one filling that got warm.</summary>
public enum PressureContradiction
{
    /// <summary>They can.</summary>
    None,

    /// <summary>Hot is below cold by more than the gauge's error, although nothing says that the tyre is colder.</summary>
    HotBelowCold,

    /// <summary>The gas would have to be hotter than any tyre stands, or colder than any place raced at.</summary>
    GasBeyondReason,
}
