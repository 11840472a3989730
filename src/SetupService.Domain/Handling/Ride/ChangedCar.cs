using SetupService.Domain.Handling.Cars;
using SetupService.Domain.Suspension.Steering;
using SetupService.Domain.Vehicles;

namespace SetupService.Domain.Handling.Ride;

/// <summary>A car after a change, standing at the height its springs hold it.</summary>
/// <param name="Car">The car, its ride heights changed.</param>
/// <param name="FrontHeightMm">Change of front ride height, mm, positive = higher; null where it is not known and is taken as zero.</param>
/// <param name="RearHeightMm">Change of rear ride height, mm, positive = higher; null where it is not known and is taken as zero.</param>
public sealed record ChangedCar(HandlingCar Car, double? FrontHeightMm, double? RearHeightMm)
{
    /// <summary>Finds the changed car's ride height on its springs; null where its points do not close.</summary>
    /// <param name="before">The car before, as prepared.</param>
    /// <param name="statedBefore">The car before, as stated.</param>
    /// <param name="after">The car after, as prepared, still at its stated ride height.</param>
    /// <param name="statedAfter">The car after, as stated.</param>
    public static ChangedCar? Solve(HandlingCar before, Vehicle statedBefore, HandlingCar after, Vehicle statedAfter)
    {
        ArgumentNullException.ThrowIfNull(statedBefore);
        ArgumentNullException.ThrowIfNull(statedAfter);
        if (!TryHeight(before, after, CarAxle.Front, statedBefore, statedAfter, out var front)
            || !TryHeight(before, after, CarAxle.Rear, statedBefore, statedAfter, out var rear)) return null;
        var stands = after with
        {
            Front = after.Front with { RideHeightChangeMm = after.Front.RideHeightChangeMm + (front ?? 0) },
            Rear = after.Rear with { RideHeightChangeMm = after.Rear.RideHeightChangeMm + (rear ?? 0) },
        };
        return new(stands, front + after.Front.RideHeightChangeMm - before.Front.RideHeightChangeMm, rear + after.Rear.RideHeightChangeMm - before.Rear.RideHeightChangeMm);
    }

    private static bool TryHeight(HandlingCar before, HandlingCar after, CarAxle at, Vehicle statedBefore, Vehicle statedAfter, out double? heightMm)
    {
        var (springBefore, springAfter) = (statedBefore.At(at).Spring, statedAfter.At(at).Spring);
        heightMm = 0;

        // A ride height stated with the change holds, whatever the springs.
        if (after.At(at).RideHeightChangeMm != before.At(at).RideHeightChangeMm) return true;
        if (springBefore == springAfter && before.At(at).SprungLoadN == after.At(at).SprungLoadN) return true;
        heightMm = null;

        // Both at the height before: what a changed height is stated to be is not to be changed again by it.
        var atOldHeight = after.With(at, after.At(at) with { RideHeightChangeMm = before.At(at).RideHeightChangeMm });
        if (!TryForce(before, at, out var forceBefore, out var ratio) || !TryForce(atOldHeight, at, out var forceAfter, out _)) return false;
        heightMm = SpringHeight.HeightChangeMm(
            springBefore, forceBefore, springAfter, forceAfter, ratio, before.At(at).ReboundTravelMm);
        return true;
    }

    private static bool TryForce(HandlingCar car, CarAxle at, out double forceN, out double motionRatio)
    {
        (forceN, motionRatio) = (0, 0);
        var axle = car.At(at);
        if (axle.Suspension.MotionOf(axle.SetupOf(at, WheelSide.Left)) is not { } motion) return false;
        var state = motion.Origin;
        if (!motion.TryAt(0, 0, ref state, out var rest)) return false;
        motionRatio = rest.SpringMotionRatio;
        forceN = axle.SprungLoadN / 2 * rest.RisePerTravel / motionRatio;
        return true;
    }
}
