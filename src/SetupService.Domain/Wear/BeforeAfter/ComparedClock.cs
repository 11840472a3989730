namespace SetupService.Domain.Wear.BeforeAfter;

/// <summary>What rates before and after are compared by.</summary>
public enum ComparedClock
{
    /// <summary>Nothing: no clock is known of both.</summary>
    None,

    /// <summary>Wear per lap.</summary>
    Track,

    /// <summary>Wear per kilometre on the road.</summary>
    Road,

    /// <summary>Wear per lap together with the road between laps, where both always moved in the same proportion.</summary>
    SameMix,
}
