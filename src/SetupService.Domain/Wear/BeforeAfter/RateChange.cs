using SetupService.Domain.Answers;
using SetupService.Domain.Numerics.Statistics;
using SetupService.Domain.Wear.Readings;
using SetupService.Domain.Wear.StraightWear;

namespace SetupService.Domain.Wear.BeforeAfter;

/// <summary>A rate of one zone before and after a change.</summary>
/// <param name="BeforeMm">Wear of the unit of use before, mm.</param>
/// <param name="AfterMm">The same after, mm; null where the readings after do not determine it.</param>
/// <param name="Ratio">After over before, by Fieller's theorem; null in the same case.</param>
/// <param name="IsShown">True when the 90 % range of the ratio, with what sessions vary, leaves 1 out; null in the same case.</param>
public readonly record struct RateChange(Uncertainty BeforeMm, Uncertainty? AfterMm, RatioRange? Ratio, bool? IsShown)
{
    /// <summary>The change; null where the readings before do not determine the rate. Both fits carry the scatter of all readings.</summary>
    public static RateChange? Compute(WearFit before, WearFit? after, TreadPlace place, TyreUse use, SessionVariance sessions)
    {
        ArgumentNullException.ThrowIfNull(before);
        if (before.Wear(place, use) is not { } was) return null;
        if (after?.Wear(place, use) is not { } now) return new(was, null, null, null);
        var wasVariance = before.LostVarianceMm2(place, before.Design.Share(use)!.Value) + (sessions.Before * was.Value * was.Value);
        var nowVariance = after.LostVarianceMm2(place, after.Design.Share(use)!.Value) + (sessions.After * now.Value * now.Value);
        var quantile = before.Scatter.Quantile;
        var ratio = RatioRange.Compute(now.Value, was.Value, nowVariance, 0, wasVariance, quantile);

        // Fieller's range leaves 1 out exactly where the difference is further from 0 than its standard errors allow.
        var isShown = Math.Abs(now.Value - was.Value) > quantile * Math.Sqrt(wasVariance + nowVariance);
        return new(was, now, ratio, isShown);
    }
}

/// <summary>How fast a shoulder wears against the centre, before and after: the pattern, whatever the pace.</summary>
/// <param name="Before">Shoulder's rate over the centre's before.</param>
/// <param name="After">The same after; null where the readings after do not determine it.</param>
/// <param name="IsShown">True when a change of it beyond what sessions vary is shown at 90 %; null where a rate is not shown to be above zero.</param>
/// <param name="FurtherSessions">How many further sessions on each side would show a change of this size four times in five; 0 where it is shown; null where no number up to <see cref="MostSessions"/> would, or nothing is known.</param>
public readonly record struct ShoulderChange(RatioRange Before, RatioRange? After, bool? IsShown, int? FurtherSessions)
{
    /// <summary>More sessions than anybody drives to find out.</summary>
    public const int MostSessions = 50;

    /// <summary>Standard errors between what is tested and what is found four times in five, beyond the test's own.</summary>
    internal const double ForPower = 0.8416212335729143;

    /// <summary>How many sessions more on each side.</summary>
    /// <param name="effect">The size looked for.</param>
    /// <param name="error">Its error with what there is.</param>
    /// <param name="quantile">Standard errors of the test.</param>
    /// <param name="present">Sessions on the side that has fewer.</param>
    internal static int? Further(double effect, double error, double quantile, int present)
    {
        var times = (quantile + ForPower) * error / Math.Abs(effect);
        var sessions = Math.Ceiling(present * times * times);
        return sessions <= MostSessions ? Math.Max(1, (int)sessions - present) : null;
    }

    /// <summary>The change; null where the readings before do not determine the rates.</summary>
    public static ShoulderChange? Compute(WearFit before, WearFit? after, TreadPlace shoulder, TyreUse use, SessionVariance sessions, int sessionCount)
    {
        ArgumentNullException.ThrowIfNull(before);
        if (Ratio(before, shoulder, use) is not { } was) return null;
        if (after is null || Ratio(after, shoulder, use) is not { } now) return new(was, null, null, null);
        if (!was.IsBounded || !now.IsBounded || !(was.Value > 0) || !(now.Value > 0)) return new(was, now, null, null);

        // Of the logarithm each rate's relative error counts alike; all four rates are above zero here.
        const double InRatio = Sessions.ShareInRatio * Sessions.ShareInRatio;
        var error = Math.Sqrt(
            Relative(before, shoulder, use) + Relative(before, TreadPlace.Centre, use) + Relative(after, shoulder, use) + Relative(after, TreadPlace.Centre, use)
            + (InRatio * (sessions.Before + sessions.After)));
        var effect = Math.Log(now.Value!.Value / was.Value!.Value);
        var isShown = Math.Abs(effect) > before.Scatter.Quantile * error;
        return new(was, now, isShown, isShown ? 0 : Further(effect, error, before.Scatter.Quantile, sessionCount));
    }

    private static RatioRange? Ratio(WearFit fit, TreadPlace shoulder, TyreUse use)
    {
        if (fit.Design.Share(use) is not { } share) return null;
        return RatioRange.Compute(
            fit.LostMm(shoulder, share), fit.LostMm(TreadPlace.Centre, share), fit.LostVarianceMm2(shoulder, share), 0, fit.LostVarianceMm2(TreadPlace.Centre, share), fit.Scatter.Quantile);
    }

    /// <summary>Variance of a rate over its square.</summary>
    private static double Relative(WearFit fit, TreadPlace place, TyreUse use)
    {
        var share = fit.Design.Share(use)!.Value;
        var lostMm = fit.LostMm(place, share);
        return fit.LostVarianceMm2(place, share) / (lostMm * lostMm);
    }
}
