using SetupService.Domain.Answers;
using SetupService.Domain.Wear.Readings;

namespace SetupService.Domain.Wear.Pressures;

/// <summary>Computes gas temperature and settings from a tyre's pressures.</summary>
public static class TyrePressureBuilder
{
    /// <summary>
    /// Degrees the hot gas rises per degree the day does: the rise above the air stays. It may follow less, down to not at all, where a tyre is driven to the
    /// same temperature on any day; common practice, no source.
    /// </summary>
    public const double Follows = 1;

    /// <summary>The least it may follow.</summary>
    public const double LeastFollows = 0;

    // Plausible range of the gas temperature, °C: the range of temperatures the service accepts.
    private const double LeastGasC = -40;
    private const double MostGasC = 250;

    /// <summary>Computes the figures.</summary>
    /// <param name="reading">The pressures.</param>
    /// <param name="conditions">What they were read in.</param>
    /// <param name="need">What the load needs.</param>
    /// <param name="treadC">Mean temperature of the tread, °C; null where it was not read.</param>
    public static TyrePressure Build(in TyrePressures reading, in PressureConditions conditions, LoadNeed need, double? treadC)
    {
        ArgumentNullException.ThrowIfNull(need);
        var told = new TyrePressure { Reading = reading, Need = need };

        // Where no pressure carries the load there is none to set.
        var aimHotKpa = need.Gap == LoadGap.BeyondLoad ? null : reading.AimHotKpa;
        if (reading is { ColdKpa: null, HotKpa: { } onlyHotKpa, AimHotKpa: not null } && aimHotKpa is { } onlyAimKpa)
            return told with { HotNow = FromHotAlone(onlyHotKpa, onlyAimKpa, conditions, need) };
        if (reading is not { ColdKpa: { } coldKpa, HotKpa: { } hotKpa }) return told;
        var rise = new PressureRise(coldKpa, hotKpa, conditions.AirKpa);
        var contradiction = Contradiction(rise, conditions, treadC);
        if (contradiction != PressureContradiction.None) return told with { Contradiction = contradiction };
        var errors = conditions.Errors;
        told = told with
        {
            HotGasC = conditions.ColdC is { } cold ? errors.Propagate(rise, cold, static (one, coldC) => one.HotGasC(coldC)) : null,
            ColdNow = aimHotKpa is { } aim ? Now(rise, errors, aim, need) : null,
            HotNow = aimHotKpa is { } wanted ? WhileHot(rise, errors, wanted, need) : null,
            HotOnColdAimKpa = reading.AimColdKpa is { } aimCold ? errors.Propagate(rise, one => one.HotForColdKpa(aimCold)) : null,
        };
        return conditions is { ColdC: { } coldC, NextColdC: { } nextC } ? Next(told, rise, errors, coldC, nextC) : told;
    }

    /// <summary>The same tyre set to other cold pressures, with what they reach hot.</summary>
    /// <param name="told">The tyre.</param>
    /// <param name="conditions">What it was read in.</param>
    /// <param name="nowKpa">The setting on a day like this; null leaves it.</param>
    /// <param name="nextKpa">The setting on the next day; null leaves it.</param>
    internal static TyrePressure SetTo(TyrePressure told, in PressureConditions conditions, double? nowKpa, double? nextKpa)
    {
        if (told.Reading is not { ColdKpa: { } coldKpa, HotKpa: { } hotKpa }) return told;
        var (rise, errors) = (new PressureRise(coldKpa, hotKpa, conditions.AirKpa), conditions.Errors);
        if (told.ColdNow is { } now && nowKpa is { } set)
            told = told with { ColdNow = now with { SetKpa = set, HotThenKpa = errors.Propagate(rise, one => one.HotForColdKpa(set)).Ninety } };
        if (told.ColdNext is { } next && nextKpa is { } then && conditions is { ColdC: { } coldC, NextColdC: { } nextC })
            told = told with { ColdNext = next with { SetKpa = then, HotThenKpa = Following(follows => errors.Propagate(rise, coldC, (one, fromC) => one.NextHotForColdKpa(then, fromC, nextC, follows))) } };
        return told;
    }

    private static PressureContradiction Contradiction(in PressureRise rise, in PressureConditions conditions, double? treadC)
    {
        var bothKpa = Uncertainty.StandardErrorsAtNinetyPct * Math.Sqrt(2) * conditions.Errors.GaugeKpa;
        if (rise.HotKpa < rise.ColdKpa - bothKpa && !(treadC < conditions.ColdC)) return PressureContradiction.HotBelowCold;
        if (TypicalRise.IsMissing(rise.ColdKpa, rise.HotKpa, bothKpa, treadC, conditions.ColdC)) return PressureContradiction.HotAsCold;
        return conditions.ColdC is { } coldC && rise.HotGasC(coldC) is < LeastGasC or > MostGasC ? PressureContradiction.GasBeyondReason : PressureContradiction.None;
    }

    private static ColdSetting Now(PressureRise rise, PressureErrors errors, double aimKpa, LoadNeed need) => ColdSetting.Compute(
        aimKpa,
        errors.Propagate(rise, one => one.ColdForHotKpa(aimKpa)).Ninety,
        need.FloorKpa,
        coldKpa => errors.Propagate(rise, one => one.HotForColdKpa(coldKpa)).Ninety);

    private static HotAdjustment? WhileHot(in PressureRise rise, in PressureErrors errors, double aimKpa, LoadNeed need)
    {
        var leastHotKpa = need.FloorKpa is { } leastKpa ? rise.HotForColdKpa(leastKpa) : (double?)null;
        var isHeld = leastHotKpa > aimKpa;
        var hotThenKpa = isHeld ? leastHotKpa!.Value : aimKpa;
        var coldThen = errors.Propagate(rise, one => one.ColdForHotKpa(hotThenKpa));
        return PlausiblePressures.Include(coldThen.Value) && PlausiblePressures.Include(hotThenKpa)
            ? new HotAdjustment(hotThenKpa - rise.HotKpa, hotThenKpa, coldThen.Ninety, isHeld)
            : null;
    }

    /// <summary>What to let out where the cold pressure was not read: what it leaves cold is known by the usual rise only.</summary>
    private static HotAdjustment? FromHotAlone(double hotKpa, double aimKpa, in PressureConditions conditions, LoadNeed need)
    {
        var leastHotKpa = need.FloorKpa is { } floorKpa ? TypicalRise.HotForCold(floorKpa, conditions.AirKpa, conditions.ColdC) : (double?)null;
        var isHeld = leastHotKpa > aimKpa;
        var hotThenKpa = isHeld ? leastHotKpa!.Value : aimKpa;
        var coldThen = TypicalRise.ColdForHot(hotThenKpa, conditions.AirKpa, conditions.ColdC);
        return PlausiblePressures.Include(coldThen.Value) && PlausiblePressures.Include(hotThenKpa) ? new HotAdjustment(hotThenKpa - hotKpa, hotThenKpa, coldThen, isHeld) : null;
    }

    private static TyrePressure Next(TyrePressure told, PressureRise rise, PressureErrors errors, double coldC, double nextC)
    {
        var untouched = errors.Propagate(rise, coldC, (one, fromC) => one.UntouchedColdKpa(fromC, nextC)).Ninety;
        var hot = Following(follows => errors.Propagate(rise, coldC, (one, fromC) => one.UntouchedHotKpa(fromC, nextC, follows)));
        return told with
        {
            UntouchedColdKpa = PlausiblePressures.Include(untouched.Value) ? untouched : null,
            UntouchedHotKpa = PlausiblePressures.Include(hot.Value) ? hot : null,
            ColdNext = told.Need.Gap != LoadGap.BeyondLoad && told.Reading.AimHotKpa is { } aimKpa
                ? ColdSetting.Compute(
                    aimKpa,
                    Following(follows => errors.Propagate(rise, coldC, (one, fromC) => one.NextColdForHotKpa(aimKpa, fromC, nextC, follows))),
                    told.Need.FloorKpa,
                    setKpa => Following(follows => errors.Propagate(rise, coldC, (one, fromC) => one.NextHotForColdKpa(setKpa, fromC, nextC, follows))))
                : null,
        };
    }

    /// <summary>A figure with its errors, and as far as it moves where the hot gas does not follow the day.</summary>
    private static Uncertainty Following(Func<double, Estimate> figure)
    {
        var (full, still) = (figure(Follows), figure(LeastFollows));
        var range = full.Ninety;
        var (below, above) = (Math.Max(0, full.Value - still.Value), Math.Max(0, still.Value - full.Value));
        return range with
        {
            Lower = full.Value - RootSum(below, full.Value - range.Lower),
            Upper = full.Value + RootSum(above, range.Upper - full.Value),
        };
    }

    private static double RootSum(double one, double other) => Math.Sqrt((one * one) + (other * other));
}
