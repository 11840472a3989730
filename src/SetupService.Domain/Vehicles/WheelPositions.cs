namespace SetupService.Domain.Vehicles;

/// <summary>What belongs to a wheel's position.</summary>
public static class WheelPositions
{
    /// <summary>The axle it stands on.</summary>
    public static CarAxle AxleOf(WheelPosition at) => at is WheelPosition.FrontLeft or WheelPosition.FrontRight ? CarAxle.Front : CarAxle.Rear;
}

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
