using SetupService.Domain.Handling.Cars;

namespace SetupService.Domain.Planning.Ranking;

/// <summary>What tyres are ranked by.</summary>
public enum TyreCriterion
{
    /// <summary>Grip on a wet road.</summary>
    WetGrip,

    /// <summary>Grip on a dry road or track.</summary>
    DryGrip,

    /// <summary>How long the tread lasts.</summary>
    TreadLife,

    /// <summary>How much heat it stands.</summary>
    HeatResistance,

    /// <summary>How easily it rolls.</summary>
    RollingResistance,

    /// <summary>How quiet it is outside.</summary>
    Noise,

    /// <summary>How little it costs.</summary>
    Price,
}

/// <summary>How good a tyre is by one criterion, from 0 to 1, and what that was told by.</summary>
/// <param name="Value">The middle of the range.</param>
/// <param name="HalfWidth">Half the width of the range it may lie in: a class is a range.</param>
/// <param name="ToldBy">The member of the offer that told it.</param>
public readonly record struct TyreMerit(double Value, double HalfWidth, string ToldBy);

/// <summary>
/// Puts grades, classes and test scores on scales from 0 to 1 that do not depend on the other tyres of the list, price excepted. What was measured goes before a label's class, and that
/// before a sidewall's grade. Method page: docs/methods/tyre-ranking.
/// </summary>
public static class TyreMerits
{
    /// <summary>How many criteria there are.</summary>
    public const int Count = 7;

    // Ends of the scales. Wet grip index: Regulation (EU) 1222/2009, Annex I, class A begins at 1.55 and the last ends at 1.09. Rolling resistance, kg/t: A to 6.5, the last from 10.6 (2020/740, from memory).
    private const double LeastWetIndex = 1, MostWetIndex = 1.7;
    private const double LeastRolling = 5, MostRolling = 12;

    // Coefficient on wet asphalt, 49 CFR 575.104 as quoted second-hand: AA above 0.54, A above 0.47, B above 0.38.
    private const double LeastTraction = 0.3, MostTraction = 0.62;

    // Peak friction on a dry road, common practice, no source: see TyreTypicals.
    private const double LeastFriction = 0.8, MostFriction = 1.5;

    // Treadwear grades of a soft tyre for the track and of a touring tyre, common practice, no source; a grade is off by a factor of 1.5 either way (judgement).
    private const double LeastTreadwear = 40, MostTreadwear = 800, TreadwearFactor = 1.5;

    // Seats of one test lie close together: 60 % of the best is the end of the scale, 2 points either way are its scatter; judgement, no source.
    private const double LeastTestPct = 60, TestScatterPct = 2;

    /// <summary>How good a tyre is by a criterion; null where nothing tells.</summary>
    /// <param name="tyre">The tyre.</param>
    /// <param name="criterion">The criterion.</param>
    /// <param name="cheapest">The lowest price of the list; null where no price is told.</param>
    /// <param name="bestOfTest">Friction of the best tyre of the dry test, as <see cref="FrictionOfBest"/> finds it; null = the test is taken on its own scale.</param>
    public static TyreMerit? Find(TyreOffer tyre, TyreCriterion criterion, double? cheapest, (double Lower, double Upper)? bestOfTest = null)
    {
        ArgumentNullException.ThrowIfNull(tyre);
        return criterion switch
        {
            TyreCriterion.WetGrip => Test(tyre.WetTestPct, "wetTestPct") ?? Wet(tyre.WetGrip) ?? Traction(tyre.Traction),
            TyreCriterion.DryGrip => DryTest(tyre.DryTestPct, bestOfTest) ?? Friction(tyre),
            TyreCriterion.TreadLife => tyre.TreadwearGrade is { } grade ? Logarithmic(grade / TreadwearFactor, grade * TreadwearFactor, LeastTreadwear, MostTreadwear, "treadwearGrade") : null,
            TyreCriterion.HeatResistance => tyre.Temperature is { } heat ? Range(1 - (((int)heat + 1) / 3.0), 1 - ((int)heat / 3.0), "temperatureGrade") : null,
            TyreCriterion.RollingResistance => Rolling(tyre.RollingResistance),
            TyreCriterion.Noise => tyre.Noise is { } noise ? Range(1 - (((int)noise + 1) / 3.0), 1 - ((int)noise / 3.0), "noiseClass") : null,
            TyreCriterion.Price => tyre.Price is { } price && cheapest is { } least ? new TyreMerit(least / price, 0, "price") : null,
            _ => null,
        };
    }

    /// <summary>
    /// Where a list has tyres that the dry test left out, told by their category alone, the test stands on the scale of friction: what the categories of the tyres tested say its best one
    /// has, lower and upper. Null where the test tells all that is told, or no tyre tested has a category: it then stands on its own scale.
    /// </summary>
    /// <param name="tyres">The list.</param>
    public static (double Lower, double Upper)? FrictionOfBest(IReadOnlyList<TyreOffer> tyres)
    {
        ArgumentNullException.ThrowIfNull(tyres);
        var (lower, upper, count, isMixed) = (0.0, 0.0, 0, false);
        foreach (var tyre in tyres)
        {
            isMixed |= tyre is { DryTestPct: null, Category: not null };
            if (tyre is not { DryTestPct: > 0 and var pct, Category: { } category }) continue;
            var typical = TyreTypicals.Friction(category);
            lower += typical.Lower / pct * 100;
            upper += typical.Upper / pct * 100;
            count++;
        }

        return isMixed && count > 0 ? (lower / count, upper / count) : null;
    }

    private static TyreMerit? DryTest(double? pct, (double Lower, double Upper)? best) => (pct, best) is ({ } score, { } friction)
        ? Linear((score - TestScatterPct) / 100 * friction.Lower, (score + TestScatterPct) / 100 * friction.Upper, LeastFriction, MostFriction, "dryTestPct")
        : Test(pct, "dryTestPct");

    private static TyreMerit? Test(double? pct, string toldBy) =>
        pct is { } score ? Linear(score - TestScatterPct, score + TestScatterPct, LeastTestPct, 100, toldBy) : null;

    private static TyreMerit? Wet(LabelClass? label) => label switch
    {
        LabelClass.A => Linear(1.55, MostWetIndex, LeastWetIndex, MostWetIndex, "wetGripClass"),
        LabelClass.B => Linear(1.4, 1.55, LeastWetIndex, MostWetIndex, "wetGripClass"),
        LabelClass.C => Linear(1.25, 1.4, LeastWetIndex, MostWetIndex, "wetGripClass"),
        LabelClass.D => Linear(1.1, 1.25, LeastWetIndex, MostWetIndex, "wetGripClass"),
        LabelClass.E => Linear(LeastWetIndex, 1.1, LeastWetIndex, MostWetIndex, "wetGripClass"),
        _ => null,
    };

    private static TyreMerit? Traction(TractionGrade? grade) => grade switch
    {
        TractionGrade.AA => Linear(0.54, MostTraction, LeastTraction, MostTraction, "tractionGrade"),
        TractionGrade.A => Linear(0.47, 0.54, LeastTraction, MostTraction, "tractionGrade"),
        TractionGrade.B => Linear(0.38, 0.47, LeastTraction, MostTraction, "tractionGrade"),
        TractionGrade.C => Linear(LeastTraction, 0.38, LeastTraction, MostTraction, "tractionGrade"),
        _ => null,
    };

    private static TyreMerit? Rolling(LabelClass? label) => label switch
    {
        LabelClass.A => Linear(6.5, LeastRolling, MostRolling, LeastRolling, "rollingResistanceClass"),
        LabelClass.B => Linear(7.7, 6.6, MostRolling, LeastRolling, "rollingResistanceClass"),
        LabelClass.C => Linear(9, 7.8, MostRolling, LeastRolling, "rollingResistanceClass"),
        LabelClass.D => Linear(10.5, 9.1, MostRolling, LeastRolling, "rollingResistanceClass"),
        LabelClass.E => Linear(MostRolling, 10.6, MostRolling, LeastRolling, "rollingResistanceClass"),
        _ => null,
    };

    private static TyreMerit? Friction(TyreOffer tyre)
    {
        if (tyre.Category is not { } category) return null;
        var typical = TyreTypicals.Friction(category);
        return Linear(typical.Lower, typical.Upper, LeastFriction, MostFriction, "category");
    }

    private static TyreMerit Linear(double from, double to, double worst, double best, string toldBy) => Range((from - worst) / (best - worst), (to - worst) / (best - worst), toldBy);

    private static TyreMerit Logarithmic(double from, double to, double worst, double best, string toldBy) =>
        Range(Math.Log(from / worst) / Math.Log(best / worst), Math.Log(to / worst) / Math.Log(best / worst), toldBy);

    private static TyreMerit Range(double lower, double upper, string toldBy)
    {
        (lower, upper) = (Math.Clamp(lower, 0, 1), Math.Clamp(upper, 0, 1));
        return new((lower + upper) / 2, (upper - lower) / 2, toldBy);
    }
}
