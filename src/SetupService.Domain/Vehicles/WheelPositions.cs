namespace SetupService.Domain.Vehicles;

/// <summary>What belongs to a wheel's position.</summary>
public static class WheelPositions
{
    /// <summary>The axle it stands on.</summary>
    public static CarAxle AxleOf(WheelPosition at) => at is WheelPosition.FrontLeft or WheelPosition.FrontRight ? CarAxle.Front : CarAxle.Rear;
}
