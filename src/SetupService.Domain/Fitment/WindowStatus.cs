namespace SetupService.Domain.Fitment;

/// <summary>Whether any offset fits.</summary>
public enum WindowStatus
{
    /// <summary>The offsets between the ends fit.</summary>
    Pass,

    /// <summary>No offset fits.</summary>
    Fail,

    /// <summary>Neither end is known.</summary>
    Unknown,
}
