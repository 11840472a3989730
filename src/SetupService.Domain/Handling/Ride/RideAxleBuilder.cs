using SetupService.Domain.Handling.Cars;
using SetupService.Domain.Suspension;
using SetupService.Domain.Suspension.Kinematics;
using SetupService.Domain.Suspension.Steering;
using SetupService.Domain.Vehicles;

namespace SetupService.Domain.Handling.Ride;

/// <summary>Computes how an axle rides.</summary>
public static class RideAxleBuilder
{
    // Small beside what bends the motion ratio, large beside the solver's rounding.
    private const double StepMm = 0.5;

    private static readonly double[] TravelsMm = [-40, -20, 0, 20, 40];

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
        var wheelRate = RateAt(motion, axle, 0, forceN)?.WheelRateNPerMm ?? axle.WheelRateNPerMm;

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
        var rates = new List<TravelRate>();
        foreach (var travelMm in TravelsMm)
        {
            if (RateAt(motion, axle, travelMm, forceN) is { } rate) rates.Add(rate);
        }

        return rates;
    }

    private static TravelRate? RateAt(WheelMotion motion, HandlingAxle axle, double travelMm, double forceAtRestN)
    {
        var state = motion.Origin;
        if (!motion.TryAt(travelMm, 0, ref state, out var here) || !Ratio(motion, state, travelMm - StepMm, out var below) || !Ratio(motion, state, travelMm + StepMm, out var above)) return null;
        var forceN = Math.Max(0, forceAtRestN + (axle.SpringRateNPerMm * here.SpringTravelMm));
        var bend = (above - below) / (2 * StepMm);
        return new(travelMm, here.SpringMotionRatio, (axle.SpringRateNPerMm * here.SpringMotionRatio * here.SpringMotionRatio) + (forceN * bend));
    }

    private static bool Ratio(WheelMotion motion, SuspensionPose near, double travelMm, out double ratio)
    {
        var isThere = motion.TryAt(travelMm, 0, ref near, out var wheel);
        ratio = wheel.SpringMotionRatio;
        return isThere;
    }

    /// <summary>From the spring's length at ride height over the travel left and the stop's own length, by the ratio at ride height.</summary>
    private static double? CoilClearance(Spring spring, double forceN, HandlingAxle axle, double motionRatio) =>
        SpringHeight.LengthMm(spring, forceN) - (motionRatio * (axle.BumpLeftMm + (axle.StopLengthMm / axle.DamperMotionRatio))) - spring.SolidLengthMm;
}
