using SetupService.Domain.Vehicles;

namespace SetupService.Domain.Tests.Wear.Simulation;

/// <summary>A share of the use in which the car does one thing.</summary>
/// <param name="DistanceM">How far, m, of the whole use.</param>
/// <param name="LateralG">Acceleration to the left, g.</param>
/// <param name="DriveG">Acceleration forwards, g; negative = braking.</param>
/// <param name="IsTrack">On a track.</param>
internal readonly record struct DrivingState(double DistanceM, double LateralG, double DriveG, bool IsTrack)
{
    /// <summary>Front slip against that at which the whole contact slides, where the front is steered too far; 0 = it is not.</summary>
    public double OverdrivenSlip { get; init; }

    /// <summary>Where not null, the axle whose wheels spin.</summary>
    public CarAxle? Spins { get; init; }
}
