using SetupService.Domain.Numerics;
using SetupService.Domain.Suspension.Kinematics;

namespace SetupService.Domain.Suspension;

/// <summary>
/// Moves one wheel, set in one way, to a travel and steer. Of a left wheel; a right one is moved as its mirror image. Immutable and safe
/// for several threads: the caller keeps the pose a continuation goes on from. Asking allocates nothing.
/// </summary>
public abstract class WheelMotion
{
    private protected WheelMotion()
    {
    }

    /// <summary>The pose a continuation starts from: ride height, rack in the middle.</summary>
    public abstract SuspensionPose Origin { get; }

    /// <summary>Moves the wheel.</summary>
    /// <param name="travelMm">Wheel travel from the present ride height, mm; positive = bump.</param>
    /// <param name="steer">Rack travel, mm, where points have a rack, else degrees of steer; positive = left.</param>
    /// <param name="pose">The pose to go on from; moved to the new one, or as far as the way leads.</param>
    /// <param name="wheel">Where the wheel then is.</param>
    /// <param name="budget">Work allowed; null = any.</param>
    /// <returns>False where the wheel cannot be there, or the work allowed is spent.</returns>
    public abstract bool TryAt(double travelMm, double steer, ref SuspensionPose pose, out WheelPose wheel, WorkBudget? budget = null);

    /// <summary>Change of the spring's motion ratio per mm of travel; null where nothing tells it.</summary>
    /// <param name="pose">The pose there, as this motion moved it.</param>
    public abstract double? SpringRatioPerTravel(in SuspensionPose pose);

    /// <summary>The same motion for what asks about one position again and again: about there to second order where that is quicker, beyond it as it is.</summary>
    /// <param name="travelMm">Wheel travel there, mm from the present ride height.</param>
    /// <param name="steer">Steer there.</param>
    /// <param name="pose">The pose there.</param>
    internal virtual WheelMotion Near(double travelMm, double steer, in SuspensionPose pose) => this;
}
