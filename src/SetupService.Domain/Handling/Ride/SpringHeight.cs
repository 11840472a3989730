using SetupService.Domain.Vehicles;

namespace SetupService.Domain.Handling.Ride;

/// <summary>Length of a spring under its static force, and the ride height with another spring in the same seats.</summary>
public static class SpringHeight
{
    /// <summary>Length at ride height, mm: as measured, else free length less force by rate; null where neither is known.</summary>
    public static double? LengthMm(Spring spring, double forceN)
    {
        ArgumentNullException.ThrowIfNull(spring);
        return spring.InstalledLengthMm ?? spring.FreeLengthMm - (forceN / spring.RateNPerMm);
    }

    /// <summary>
    /// Change of ride height after a change of spring, seats or load, mm at the wheel, positive = higher; null where the lengths it needs are not known.
    /// </summary>
    /// <param name="before">The spring before.</param>
    /// <param name="forceBeforeN">Its static force, N.</param>
    /// <param name="after">The spring after; a member not changed is the one before.</param>
    /// <param name="forceAfterN">Its static force, N.</param>
    /// <param name="motionRatio">Spring travel by wheel travel.</param>
    /// <param name="droopLeftMm">Travel left to full droop before, mm; null where it is not known.</param>
    /// <param name="isLengthStated">True where the change states the length at ride height, be it the one before.</param>
    /// <param name="isPreloadStated">True where it states the preload, be it the one before.</param>
    public static double? HeightChangeMm(
        Spring before, double forceBeforeN, Spring after, double forceAfterN, double motionRatio, double? droopLeftMm, bool isLengthStated = false, bool isPreloadStated = false)
    {
        ArgumentNullException.ThrowIfNull(before);
        ArgumentNullException.ThrowIfNull(after);
        var (pressedBefore, pressedAfter) = (forceBeforeN / before.RateNPerMm, forceAfterN / after.RateNPerMm);
        if (after.InstalledLengthMm is { } installed && (isLengthStated || installed != before.InstalledLengthMm))
            return (installed - LengthMm(before, forceBeforeN)) / motionRatio;
        if (after.PreloadMm is { } preload && (isPreloadStated || preload != before.PreloadMm))
        {
            // Pressed together by preload at full droop, by its force at ride height: the wheel hangs the difference below.
            var preloadBefore = before.PreloadMm ?? pressedBefore - (motionRatio * droopLeftMm);
            return ((pressedBefore - preloadBefore) - (pressedAfter - preload)) / motionRatio;
        }

        // In the same seats the spring's length under load is the seats' distance. A free length known before and after, or the same unknown one, drops out.
        if (after.FreeLengthMm is null && after.RateNPerMm != before.RateNPerMm) return null;
        if (before.FreeLengthMm is null != after.FreeLengthMm is null) return null;
        return ((after.FreeLengthMm ?? 0) - (before.FreeLengthMm ?? 0) + (pressedBefore ?? 0) - (pressedAfter ?? 0)) / motionRatio;
    }

    /// <summary>True when a change of rate kept the free length of the spring before, which a person may not have meant.</summary>
    public static bool KeepsFreeLength(Spring before, Spring after)
    {
        ArgumentNullException.ThrowIfNull(before);
        ArgumentNullException.ThrowIfNull(after);
        return after.RateNPerMm != before.RateNPerMm && after.FreeLengthMm is not null && after.FreeLengthMm == before.FreeLengthMm
            && (after.InstalledLengthMm ?? before.InstalledLengthMm) == before.InstalledLengthMm && (after.PreloadMm ?? before.PreloadMm) == before.PreloadMm;
    }
}
