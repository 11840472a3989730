namespace SetupService.Domain.Vehicles;

/// <summary>One of the four wheels.</summary>
public enum WheelPosition
{
    /// <summary>Front left.</summary>
    FrontLeft,

    /// <summary>Front right.</summary>
    FrontRight,

    /// <summary>Rear left.</summary>
    RearLeft,

    /// <summary>Rear right.</summary>
    RearRight,
}
