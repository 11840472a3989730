using SetupService.Domain.Handling.Cars;
using SetupService.Domain.Suspension;
using SetupService.Domain.Suspension.Kinematics;
using SetupService.Domain.Suspension.Steering;
using SetupService.Domain.Vehicles;

namespace SetupService.Domain.Handling.Ride;

/// <summary>Computes how an axle rides.</summary>
public static class RideAxleBuilder
{
    // Travels the rate is told at: so many on either side of ride height, so far apart, mm.
    private const int Steps = 2;
    private const double StepMm = 20;

    /// <summary>The axle; null where its points do not close at this ride height, or its spring does not hold the car up there.</summary>
    /// <param name="car">The car at its present ride height.</param>
    /// <param name="at">Which axle.</param>
    /// <param name="stated">The axle as stated, for spring and damper.</param>
    public static RideAxle? Build(HandlingCar car, CarAxle at, Axle stated)
    {
        ArgumentNullException.ThrowIfNull(car);
        ArgumentNullException.ThrowIfNull(stated);
        var axle = car.At(at);
        if (axle.Suspension.MotionOf(axle.SetupOf(at, WheelSide.Left)) is not { } motion) return null;
        var state = motion.Origin;
        if (!motion.TryAt(0, 0, ref state, out var rest)) return null;
        var sprungN = axle.SprungLoadN / 2;
        var forceN = sprungN * rest.RisePerTravel / rest.SpringMotionRatio;
        var wheelRate = RateAt(motion, axle, state, rest, 0, forceN)?.WheelRateNPerMm ?? axle.WheelRateNPerMm;

        // A spring whose leverage falls faster than its force grows, or has none, holds nothing up.
        if (!(wheelRate > 0) || !double.IsFinite(forceN)) return null;
        var damping = rest.DamperMotionRatio * rest.DamperMotionRatio;
        return new RideAxle
        {
            SprungMassKg = sprungN / HandlingCar.StandardGravity,
            MotionRatio = rest.SpringMotionRatio,
            SpringForceN = forceN,
            WheelRateNPerMm = wheelRate,
            TyreRateNPerMm = axle.TyreRateNPerMm,
            WheelHopFrequencyHz = Math.Sqrt(1000 * (wheelRate + axle.TyreRateNPerMm) / axle.UnsprungMassKg) / (2 * Math.PI),
            BumpDampingNsPerM = damping * stated.Damper.BumpNsPerM,
            ReboundDampingNsPerM = damping * stated.Damper.ReboundNsPerM,
            SpringLengthMm = SpringHeight.LengthMm(stated.Spring, forceN),
            BumpLeftMm = axle.BumpLeftMm,
            DroopLeftMm = axle.DroopLeftMm,
            CoilClearanceMm = CoilClearance(stated.Spring, forceN, axle, rest.SpringMotionRatio),
            SeatedAtDroopMm = forceN / axle.SpringRateNPerMm - (rest.SpringMotionRatio * axle.DroopLeftMm),
        };
    }

    /// <summary>
    /// The rate at the wheel at some travels from ride height, mm, the spring itself taken as linear; travels that cannot be taken are left out, and all where
    /// the points do not close.
    /// </summary>
    public static IReadOnlyList<TravelRate> RatesOverTravel(HandlingCar car, CarAxle at)
    {
        ArgumentNullException.ThrowIfNull(car);
        var axle = car.At(at);
        if (axle.Suspension.MotionOf(axle.SetupOf(at, WheelSide.Left)) is not { } motion) return [];
        var state = motion.Origin;
        if (!motion.TryAt(0, 0, ref state, out var rest)) return [];
        var forceN = axle.SprungLoadN / 2 * rest.RisePerTravel / rest.SpringMotionRatio;
        var below = Over(-StepMm);
        below.Reverse();
        var atRest = RateAt(motion, axle, state, rest, 0, forceN);
        return [.. below, .. atRest is { } rate ? [rate] : Array.Empty<TravelRate>(), .. Over(StepMm)];

        // From ride height outward, each position from the one before.
        List<TravelRate> Over(double stepMm)
        {
            var (rates, pose) = (new List<TravelRate>(Steps), state);
            for (var i = 1; i <= Steps && motion.TryAt(i * stepMm, 0, ref pose, out var here); i++)
            {
                if (RateAt(motion, axle, pose, here, i * stepMm, forceN) is { } at) rates.Add(at);
            }

            return rates;
        }
    }

    private static TravelRate? RateAt(WheelMotion motion, HandlingAxle axle, in SuspensionPose pose, in WheelPose wheel, double travelMm, double forceAtRestN)
    {
        if (motion.SpringRatioPerTravel(pose) is not { } bend) return null;
        var forceN = Math.Max(0, forceAtRestN + (axle.SpringRateNPerMm * wheel.SpringTravelMm));
        return new(travelMm, wheel.SpringMotionRatio, (axle.SpringRateNPerMm * wheel.SpringMotionRatio * wheel.SpringMotionRatio) + (forceN * bend));
    }

    /// <summary>From the spring's length at ride height over the travel left and the stop's own length, by the ratio at ride height.</summary>
    private static double? CoilClearance(Spring spring, double forceN, HandlingAxle axle, double motionRatio) =>
        SpringHeight.LengthMm(spring, forceN) - (motionRatio * (axle.BumpLeftMm + (axle.StopLengthMm / axle.DamperMotionRatio))) - spring.SolidLengthMm;
}
