namespace SetupService.Domain.Wear.Temperatures;

/// <summary>Which wheels are held against each other.</summary>
public enum WheelPairs
{
    /// <summary>Front axle less rear axle.</summary>
    FrontLessRear,

    /// <summary>Front left less front right.</summary>
    FrontLeftLessRight,

    /// <summary>Rear left less rear right.</summary>
    RearLeftLessRight,
}
