namespace SetupService.Domain.Fitment;

/// <summary>Whether any offset fits.</summary>
public enum WindowStatus
{
    /// <summary>Offsets from the minimum to the maximum fit.</summary>
    Fits,

    /// <summary>No offset fits.</summary>
    NothingFits,

    /// <summary>Neither end is known.</summary>
    Unknown,
}
