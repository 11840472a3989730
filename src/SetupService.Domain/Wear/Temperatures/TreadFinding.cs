using SetupService.Domain.Answers;

namespace SetupService.Domain.Wear.Temperatures;

/// <summary>One figure of a tread against the range it is held to.</summary>
/// <param name="Aspect">Which figure.</param>
/// <param name="FigureC">The figure, °C, with what the thermometer leaves uncertain.</param>
/// <param name="RangeC">The range; null where none is known.</param>
/// <param name="Verdict">Where the figure lies; unknown where there is no range, the reading came too late, or its error may put it within.</param>
public readonly record struct TreadFinding(TreadAspect Aspect, Estimate FigureC, TemperatureRange? RangeC, RangeVerdict Verdict)
{
    /// <summary>True when the whole 90 % range of the figure lies where the figure does.</summary>
    public bool IsClear => RangeC is { } range && Verdict != RangeVerdict.Unknown
        && range.Judge(FigureC.Ninety.Lower) == Verdict && range.Judge(FigureC.Ninety.Upper) == Verdict;
}

/// <summary>What of a tread's temperatures is looked at.</summary>
public enum TreadAspect
{
    /// <summary>Outer less inner shoulder.</summary>
    OuterLessInner,

    /// <summary>The hottest place less the coldest.</summary>
    WidestSpread,

    /// <summary>The middle less the mean of the shoulders.</summary>
    CentreLessShoulders,

    /// <summary>The mean of the three places against the range the tyre works in.</summary>
    MeanInWindow,
}
