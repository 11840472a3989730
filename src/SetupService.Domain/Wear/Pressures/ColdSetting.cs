using SetupService.Domain.Answers;

namespace SetupService.Domain.Wear.Pressures;

/// <summary>A cold pressure to set for a hot one; gauge, kPa.</summary>
/// <param name="NeededKpa">What the hot aim alone asks for; null where it is outside what is known.</param>
/// <param name="SetKpa">What to set; null where it is outside what is known.</param>
/// <param name="HotThenKpa">What that reaches hot; null with it.</param>
/// <param name="IsHeldByLoad">True when the load needs more than the hot aim asks for, so that the aim is passed.</param>
public readonly record struct ColdSetting(Uncertainty? NeededKpa, double? SetKpa, Uncertainty? HotThenKpa, bool IsHeldByLoad)
{
    /// <summary>The setting.</summary>
    /// <param name="neededKpa">What the hot aim asks for.</param>
    /// <param name="leastKpa">What the load needs; null where it is not known.</param>
    /// <param name="hotFor">What a cold pressure reaches hot.</param>
    public static ColdSetting Compute(in Uncertainty neededKpa, double? leastKpa, Func<double, Uncertainty> hotFor)
    {
        ArgumentNullException.ThrowIfNull(hotFor);
        var isHeld = leastKpa > neededKpa.Value;
        var setKpa = isHeld ? leastKpa!.Value : neededKpa.Value;
        var isTold = PlausiblePressures.Include(setKpa);
        return new ColdSetting(
            PlausiblePressures.Include(neededKpa.Value) ? neededKpa : null,
            isTold ? setKpa : null,
            isTold ? hotFor(setKpa) : null,
            isHeld);
    }
}

/// <summary>What to let out of or into a tyre while it is hot.</summary>
/// <param name="ChangeKpa">Change of the hot gauge pressure, kPa; negative = let out.</param>
/// <param name="HotThenKpa">What the gauge then reads hot, kPa.</param>
/// <param name="ColdThenKpa">What it reads when the tyre is as cold as before the session, kPa.</param>
/// <param name="IsHeldByLoad">True when the load needs more than the hot aim leaves, so that the aim is passed.</param>
public readonly record struct HotAdjustment(double ChangeKpa, double HotThenKpa, Uncertainty ColdThenKpa, bool IsHeldByLoad);
