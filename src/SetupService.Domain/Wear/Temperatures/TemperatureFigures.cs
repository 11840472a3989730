using SetupService.Domain.Answers;

namespace SetupService.Domain.Wear.Temperatures;

/// <summary>
/// The figures of one tread, each with its standard error. Errors of the three places are taken as independent in differences, and as common to
/// all three in the mean, where an instrument's bias does not average out: both are the wider choice.
/// </summary>
public static class TemperatureFigures
{
    /// <summary>Outer less inner shoulder, °C; negative = the inner one is hotter.</summary>
    public static Estimate OuterLessInnerC(in TreadReading tread) =>
        new(tread.ReadC.Outer - tread.ReadC.Inner, Math.Sqrt(2) * ErrorC(tread));

    /// <summary>The hottest place less the coldest, °C; the thermometer's scatter makes it rather too large.</summary>
    public static Estimate WidestSpreadC(in TreadReading tread)
    {
        var (outer, centre, inner) = (tread.ReadC.Outer, tread.ReadC.Centre, tread.ReadC.Inner);
        return new(Math.Max(outer, Math.Max(centre, inner)) - Math.Min(outer, Math.Min(centre, inner)), Math.Sqrt(2) * ErrorC(tread));
    }

    /// <summary>The middle less the mean of the shoulders, °C; positive = the middle is hotter.</summary>
    public static Estimate CentreLessShouldersC(in TreadReading tread) =>
        new(tread.ReadC.Centre - ((tread.ReadC.Outer + tread.ReadC.Inner) / 2), Math.Sqrt(1.5) * ErrorC(tread));

    /// <summary>Mean of the three places, °C.</summary>
    public static Estimate MeanC(in TreadReading tread) => new(tread.MeanC, ErrorC(tread));

    /// <summary>Every figure relative to its range, in the order of <see cref="TreadAspect"/>.</summary>
    public static TreadFinding[] Judge(in TreadReading tread) =>
    [
        Judge(tread, TreadAspect.OuterLessInner, OuterLessInnerC(tread), UsualTemperatures.OuterLessInner),
        Judge(tread, TreadAspect.WidestSpread, WidestSpreadC(tread), UsualTemperatures.WidestSpread),
        Judge(tread, TreadAspect.CentreLessShoulders, CentreLessShouldersC(tread), UsualTemperatures.CentreLessShoulders),
        Judge(tread, TreadAspect.MeanInWindow, MeanC(tread), tread.WindowC),
    ];

    /// <summary>True when the tread reads colder than the air by more than the thermometer's error: a driven tyre is not.</summary>
    public static bool IsBelowAir(in TreadReading tread, double airC) => MeanC(tread).Ninety.Upper < airC;

    private static TreadFinding Judge(in TreadReading tread, TreadAspect aspect, Estimate figureC, TemperatureRange? range) =>
        new(aspect, figureC, range, tread.IsTooLate ? RangeVerdict.Unknown : range?.Judge(figureC) ?? RangeVerdict.Unknown);

    private static double ErrorC(in TreadReading tread) => ThermometerErrors.StandardErrorC(tread.By);
}
