namespace SetupService.Domain.Vehicles;

/// <summary>What belongs to a wheel's position.</summary>
public static class WheelPositions
{
    /// <summary>All four, front left first.</summary>
    public static IReadOnlyList<WheelPosition> All { get; } = [WheelPosition.FrontLeft, WheelPosition.FrontRight, WheelPosition.RearLeft, WheelPosition.RearRight];

    /// <summary>The axle it stands on.</summary>
    public static CarAxle AxleOf(WheelPosition at) => at is WheelPosition.FrontLeft or WheelPosition.FrontRight ? CarAxle.Front : CarAxle.Rear;
}
