namespace SetupService.Domain.Wear.Temperatures;

/// <summary>Where a figure lies against its range.</summary>
public enum RangeVerdict
{
    /// <summary>Below it.</summary>
    Below,

    /// <summary>In it.</summary>
    Within,

    /// <summary>Above it.</summary>
    Above,

    /// <summary>Not told.</summary>
    Unknown,
}
