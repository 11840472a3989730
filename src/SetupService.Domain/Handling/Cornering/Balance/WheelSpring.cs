using SetupService.Domain.Handling.Cars;
using SetupService.Domain.Suspension;

namespace SetupService.Domain.Handling.Cornering.Balance;

/// <summary>What spring, bump stop and droop stop do at a wheel, without the bar.</summary>
/// <param name="ForceN">Their force, N.</param>
/// <param name="RateNPerMm">Its change per mm of travel.</param>
/// <param name="ForcePerTravelNPerMm">Change of the wheel's force per mm the spring alone is compressed; 0 where the spring is loose.</param>
internal readonly record struct WheelSpring(double ForceN, double RateNPerMm, double ForcePerTravelNPerMm)
{
    // Rate of what is solid, N/mm: a fully compressed stop, a fully extended damper.
    private const double SolidRateNPerMm = 100_000;

    /// <summary>Computes them.</summary>
    /// <param name="axle">The axle.</param>
    /// <param name="pose">Where the suspension has the wheel.</param>
    /// <param name="travelMm">Its travel from ride height.</param>
    /// <param name="atRestN">Force of the spring itself at rest.</param>
    /// <param name="ratioPerTravel">Change of the spring's motion ratio per mm of travel.</param>
    public static WheelSpring Compute(HandlingAxle axle, in WheelPose pose, double travelMm, double atRestN, double ratioPerTravel)
    {
        var ratio = pose.SpringMotionRatio;
        var springN = atRestN + (axle.SpringRateNPerMm * pose.SpringTravelMm);
        var isPressed = springN > 0;
        var perTravel = isPressed ? axle.SpringRateNPerMm * ratio : 0;
        var (forceN, rateNPerMm) = isPressed ? (springN * ratio, (perTravel * ratio) + (springN * ratioPerTravel)) : (0, 0);
        if (axle.BumpLeftMm is { } bump && travelMm > bump)
        {
            var (stopN, stopRate) = Stop(axle, pose.DamperMotionRatio, travelMm - bump);
            forceN += stopN;
            rateNPerMm += stopRate;
        }

        if (axle.DroopLeftMm is { } droop && travelMm < -droop)
        {
            forceN += SolidRateNPerMm * (travelMm + droop);
            rateNPerMm += SolidRateNPerMm;
        }

        return new(forceN, rateNPerMm, perTravel);
    }

    /// <summary>True where the bump stop, compressed this far itself, mm, is as good as solid.</summary>
    public static bool IsSolid(HandlingAxle axle, double compressionMm) => compressionMm > (axle.StopCurve is { Count: > 0 } curve ? curve[^1].CompressionMm : axle.StopLengthMm);

    // Force and rate at the wheel of a bump stop pressed this far, mm of wheel travel: by its curve, straight between its points, else by its one rate; then solid.
    private static (double ForceN, double RateNPerMm) Stop(HandlingAxle axle, double ratio, double pressedMm)
    {
        if (axle.StopCurve is not { Count: > 0 } curve)
        {
            var rate = axle.StopRateNPerMm * ratio * ratio;
            var soft = Math.Min(pressedMm, axle.StopLengthMm / ratio);
            var solid = pressedMm - soft;
            return ((rate * soft) + (SolidRateNPerMm * solid), solid > 0 ? SolidRateNPerMm : rate);
        }

        var (atMm, atN) = (0.0, 0.0);
        for (var i = 0; i < curve.Count; i++)
        {
            var rate = (curve[i].ForceN - atN) / (curve[i].CompressionMm - atMm);
            if (pressedMm * ratio <= curve[i].CompressionMm) return (ratio * (atN + (rate * ((pressedMm * ratio) - atMm))), ratio * ratio * rate);
            (atMm, atN) = (curve[i].CompressionMm, curve[i].ForceN);
        }

        return ((ratio * atN) + (SolidRateNPerMm * (pressedMm - (atMm / ratio))), SolidRateNPerMm);
    }
}
