using SetupService.Domain.Answers;

namespace SetupService.Domain.Wear.Pressures;

/// <summary>A cold pressure to set for a hot one; gauge, kPa.</summary>
/// <param name="NeededKpa">What the hot aim alone asks for; null where it is outside what is known.</param>
/// <param name="SetKpa">What to set; null where it is outside what is known.</param>
/// <param name="HotThenKpa">What that reaches hot; null with it.</param>
/// <param name="IsHeldByLoad">True when the load needs more than the hot aim asks for, so that the aim is passed.</param>
/// <param name="OverAimKpa">By how much the aim is passed, kPa; 0 where it is reached.</param>
public readonly record struct ColdSetting(Uncertainty? NeededKpa, double? SetKpa, Uncertainty? HotThenKpa, bool IsHeldByLoad, double OverAimKpa)
{
    /// <summary>The most a cold setting is changed before it is driven and read again, kPa; common practice, no source.</summary>
    public const double MostStepKpa = 20;

    /// <summary>What to set now: towards the setting by at most <see cref="MostStepKpa"/>, but at once to what the load needs.</summary>
    /// <param name="coldKpa">The present cold pressure.</param>
    /// <param name="setKpa">Where it is going.</param>
    /// <param name="floorKpa">What the load needs; null where it is not known.</param>
    public static double Step(double coldKpa, double setKpa, double? floorKpa) =>
        Math.Max(Math.Clamp(setKpa, coldKpa - MostStepKpa, coldKpa + MostStepKpa), Math.Min(floorKpa ?? 0, Math.Max(setKpa, coldKpa)));

    /// <summary>The setting.</summary>
    /// <param name="aimHotKpa">The hot aim.</param>
    /// <param name="neededKpa">What the hot aim asks for.</param>
    /// <param name="leastKpa">What the load needs; null where it is not known.</param>
    /// <param name="hotFor">What a cold pressure reaches hot.</param>
    public static ColdSetting Compute(double aimHotKpa, in Uncertainty neededKpa, double? leastKpa, Func<double, Uncertainty> hotFor)
    {
        ArgumentNullException.ThrowIfNull(hotFor);
        var isHeld = leastKpa > neededKpa.Value;
        var setKpa = isHeld ? leastKpa!.Value : neededKpa.Value;
        var isTold = PlausiblePressures.Include(setKpa);
        Uncertainty? hotThen = isTold ? hotFor(setKpa) : null;
        return new ColdSetting(
            PlausiblePressures.Include(neededKpa.Value) ? neededKpa : null,
            isTold ? setKpa : null,
            hotThen,
            isHeld,
            isHeld && hotThen is { } hot ? Math.Max(0, hot.Value - aimHotKpa) : 0);
    }
}

/// <summary>What to let out of or into a tyre while it is hot.</summary>
/// <param name="ChangeKpa">Change of the hot gauge pressure, kPa; negative = let out.</param>
/// <param name="HotThenKpa">What the gauge then reads hot, kPa.</param>
/// <param name="ColdThenKpa">What it reads when the tyre is as cold as before the session, kPa.</param>
/// <param name="IsHeldByLoad">True when the load needs more than the hot aim leaves, so that the aim is passed.</param>
public readonly record struct HotAdjustment(double ChangeKpa, double HotThenKpa, Uncertainty ColdThenKpa, bool IsHeldByLoad);
