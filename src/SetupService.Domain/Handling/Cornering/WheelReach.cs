using SetupService.Domain.Suspension.Steering;
using SetupService.Domain.Vehicles;

namespace SetupService.Domain.Handling.Cornering;

/// <summary>A wheel that would have to travel further than it can, or than is known of it.</summary>
/// <param name="Axle">Its axle.</param>
/// <param name="Side">Its side.</param>
/// <param name="TravelMm">The travel it needs from where its suspension is stated, mm; positive = bump.</param>
/// <param name="ReachMm">How far it comes that way: its points close, or its readings and what they are extended by tell of it, mm.</param>
/// <param name="IsOfPoints">True where points do not close further; false where readings end.</param>
public readonly record struct WheelReach(CarAxle Axle, WheelSide Side, double TravelMm, double ReachMm, bool IsOfPoints = false)
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
