using SetupService.Domain.Suspension.Steering;
using SetupService.Domain.Vehicles;

namespace SetupService.Domain.Handling.Cornering;

/// <summary>A wheel that would have to travel further than is known of it.</summary>
/// <param name="Axle">Its axle.</param>
/// <param name="Side">Its side.</param>
/// <param name="TravelMm">The travel it needs from where its suspension was read, mm; positive = bump.</param>
public readonly record struct WheelReach(CarAxle Axle, WheelSide Side, double TravelMm)
{
    /// <summary>Its place on the car.</summary>
    public WheelPosition Position => (Axle, Side) switch
    {
        (CarAxle.Front, WheelSide.Left) => WheelPosition.FrontLeft,
        (CarAxle.Front, _) => WheelPosition.FrontRight,
        (_, WheelSide.Left) => WheelPosition.RearLeft,
        _ => WheelPosition.RearRight,
    };
}
