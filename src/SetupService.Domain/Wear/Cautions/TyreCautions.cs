using SetupService.Domain.Answers;
using SetupService.Domain.Handling.Cornering;
using SetupService.Domain.Vehicles;
using SetupService.Domain.Wear.Readings;

namespace SetupService.Domain.Wear.Cautions;

/// <summary>The cautions that tyres' damage, depth and age call for.</summary>
public static class TyreCautions
{
    /// <summary>From this age, years, a tyre is looked at closely; common practice, no source.</summary>
    public const double LookCloselyYears = 6;

    /// <summary>From this age, years, it is replaced whatever its tread; common practice, no source.</summary>
    public const double ReplaceYears = 10;

    /// <summary>Tyres of one axle differ by no more than about this, mm; common practice, no source.</summary>
    public const double AxleDifferenceMm = 2;

    // A shoulder this thin, mm, may be through to the cords by the next look; judgement.
    private const double ThinShoulderMm = 1;

    /// <summary>The gravest caution where it says not to drive on a tyre, or to replace it; null where none does.</summary>
    public static Caution? Unsafe(IReadOnlyList<TyreCondition> tyres, UnitSystem units)
    {
        foreach (var caution in Build(tyres, units))
        {
            if (caution.Code is "damagedTyre" or "thinShoulder" or "wornOut" or "tooOld") return caution;
        }

        return null;
    }

    /// <summary>The cautions, the gravest kind first, within a kind in the order of the tyres.</summary>
    public static IReadOnlyList<Caution> Build(IReadOnlyList<TyreCondition> tyres, UnitSystem units)
    {
        ArgumentNullException.ThrowIfNull(tyres);
        var list = new List<Caution>();
        Add(list, tyres, tyre => Damaged(tyre));
        Add(list, tyres, tyre => WornOut(tyre, units));
        Add(list, tyres, tyre => ThinShoulder(tyre, units));
        Add(list, tyres, tyre => TooOld(tyre));
        AddAxle(list, tyres, CarAxle.Front, units);
        AddAxle(list, tyres, CarAxle.Rear, units);
        Add(list, tyres, tyre => WetGrip(tyre, units));
        Add(list, tyres, tyre => Old(tyre));
        return list;
    }

    private static void Add(List<Caution> list, IReadOnlyList<TyreCondition> tyres, Func<TyreCondition, Caution?> caution)
    {
        foreach (var tyre in tyres)
        {
            if (caution(tyre) is { } one) list.Add(one);
        }
    }

    private static Caution? Damaged(TyreCondition tyre) => tyre.Damage.Count == 0 ? null : new(
        "damagedTyre",
        $"Do not drive on the {Name(tyre)} tyre: it has {string.Join(", ", tyre.Damage.Distinct().Order().Select(WordOf))}. It can burst without warning; have a tyre professional replace or judge it. Local law decides whether it may be used at all.");

    private static string WordOf(TyreDamage damage) => damage switch
    {
        TyreDamage.CordsVisible => "visible cords",
        TyreDamage.Separation => "tread or ply coming away",
        TyreDamage.Bulge => "a bulge",
        TyreDamage.Cut => "a cut",
        _ => "a cracked sidewall",
    };

    /// <summary>A shoulder near its end beside a middle that looks well: the middle is what people look at, and where the law measures in many countries.</summary>
    private static Caution? ThinShoulder(TyreCondition tyre, UnitSystem units)
    {
        if (tyre.LeastDepthMm is not { } depth || depth.Centre <= tyre.LimitMm) return null;
        var (shoulderMm, name) = depth.Inner <= depth.Outer ? (depth.Inner, "inner") : (depth.Outer, "outer");
        return shoulderMm > ThinShoulderMm ? null : new(
            "thinShoulder",
            Prose.Write(units, $"Do not drive fast on the {Name(tyre)} tyre: its {name} shoulder has {shoulderMm:tread} left, its middle {depth.Centre:tread}. Worn to the cords there it can burst while it looks good; have a tyre professional inspect it off the car. Local law decides where depth is measured."));
    }

    private static Caution? WornOut(TyreCondition tyre, UnitSystem units)
    {
        if (tyre.ShallowestMm is not { } leastMm) return null;
        if (leastMm <= tyre.LimitMm)
        {
            return new("wornOut", Prose.Write(units, $"Replace the {Name(tyre)} tyre before driving: it is down to {leastMm:tread} at its shallowest, at or below the limit of {tyre.LimitMm:tread}. Local law decides what depth is legal and where it is measured; ask a tyre professional."));
        }

        var openMm = Uncertainty.StandardErrorsAtNinetyPct * tyre.GaugeErrorMm;
        return leastMm - openMm > tyre.LimitMm ? null : new(
            "nearLimit",
            Prose.Write(units, $"The {Name(tyre)} tyre may already be at its limit of {tyre.LimitMm:tread}: it reads {leastMm:tread} at its shallowest, ±{openMm:tread} with this gauge. Have a tyre professional measure it; local law decides."));
    }

    private static Caution? TooOld(TyreCondition tyre) => tyre.AgeYears is { } years && (years >= ReplaceYears || tyre.MayBeOlder) ? new(
        "tooOld",
        FormattableString.Invariant($"Replace the {Name(tyre)} tyre whatever its tread: it is {(tyre.MayBeOlder ? "at least " : "")}{years:0.0} years old, and {ReplaceYears:0} years is the usual limit (common practice, no source). The makers of tyre and car and local law may ask for it sooner.")) : null;

    private static Caution? Old(TyreCondition tyre) => tyre is { MayBeOlder: false, AgeYears: >= LookCloselyYears and < ReplaceYears and var years } ? new(
        "oldTyre",
        FormattableString.Invariant($"Inspect the {Name(tyre)} tyre closely and often for cracks and bulges: it is {years:0.0} years old. From {LookCloselyYears:0} years have a tyre professional judge it (common practice, no source); the makers of tyre and car and local law may set another age.")) : null;

    private static void AddAxle(List<Caution> list, IReadOnlyList<TyreCondition> tyres, CarAxle axle, UnitSystem units)
    {
        TyreCondition[] measured = [.. tyres.Where(tyre => tyre.LeastDepthMm is not null && WheelPositions.AxleOf(tyre.Position) == axle)];
        if (measured.Length != 2) return;
        var differenceMm = Math.Abs(MeanMm(measured[0]) - MeanMm(measured[1]));
        if (differenceMm <= AxleDifferenceMm) return;
        list.Add(new(
            "unevenAxle",
            Prose.Write(units, $"Fit a matching pair: the {Name(measured[0])} and {Name(measured[1])} tyres differ by {differenceMm:tread} of tread. More than about {AxleDifferenceMm:tread} on one axle pulls under braking and in the wet, and strains a limited-slip differential (common practice, no source); local law or a tyre professional may allow less.")));
    }

    private static double MeanMm(TyreCondition tyre) => tyre.LeastDepthMm is { } depth ? (depth.Outer + depth.Centre + depth.Inner) / 3 : 0;

    private static Caution? WetGrip(TyreCondition tyre, UnitSystem units) => tyre.ShallowestMm is { } leastMm && leastMm < TreadDepths.WetGripMm && leastMm > tyre.LimitMm ? new(
        "wetGrip",
        Prose.Write(units, $"Slow down in the wet: the {Name(tyre)} tyre has {leastMm:tread} at its shallowest. Below {TreadDepths.WetGripMm:tread} it aquaplanes much sooner (owners' literature); plan a replacement. Local law may ask for more depth, above all in winter; a tyre professional can advise.")) : null;

    private static string Name(TyreCondition tyre) => CorneringWords.Name(tyre.Position);
}
