using SetupService.Domain.Handling.Cars;
using SetupService.Domain.Suspension.Kinematics;
using SetupService.Domain.Suspension.Steering;
using SetupService.Domain.Vehicles;

namespace SetupService.Domain.Handling.Guides;

/// <summary>
/// What guides one wheel: its points, its readings, or a swing arm where neither is known. A right wheel is guided as its left mirror.
/// Immutable; the caller keeps the state a walk goes on from.
/// </summary>
public abstract class WheelGuide
{
    /// <summary>Makes the guide of a wheel; null where its points do not close.</summary>
    public static WheelGuide? Of(HandlingAxle axle, CarAxle at, WheelSide side)
    {
        ArgumentNullException.ThrowIfNull(axle);
        return axle.Points is not null ? DrawnGuide.Of(axle, side) : new UndrawnGuide(axle, at == CarAxle.Front, side);
    }

    /// <summary>
    /// The wheel at a travel from the present ride height, mm, and a steer input of the left mirror (rack in mm where points have a
    /// rack, else degrees of steer).
    /// </summary>
    /// <returns>False where it cannot be there.</returns>
    public abstract bool TryAt(double travelMm, double steer, ref SuspensionPose state, out GuidedWheel wheel);

    /// <summary>Where a walk starts.</summary>
    public abstract SuspensionPose Origin { get; }
}
