using SetupService.Domain.Answers;

namespace SetupService.Domain.Wear.Temperatures;

/// <summary>Wheels against each other by the mean of their treads.</summary>
/// <param name="Pairs">Which.</param>
/// <param name="DifferenceC">The difference as read, °C; positive = the first named is hotter.</param>
/// <param name="AtLapEndC">The same when the lap ended, °C, with its 90 % range; null where that cannot be known.</param>
/// <param name="Verdict">Where the difference as read lies against <see cref="UsualTemperatures.BetweenPairs"/>; unknown where a reading came too late, or its error may put it within.</param>
/// <param name="Order">What the order of measuring does to it.</param>
/// <param name="WaitedS">How much longer after the lap the second named was read than the first, s; null where a time is not given.</param>
public readonly record struct PairComparison(
    WheelPairs Pairs, Estimate DifferenceC, Uncertainty? AtLapEndC, RangeVerdict Verdict, ReadingOrder Order, double? WaitedS)
{
    // Readings within this of each other, s, count as taken at the same time; judgement.
    private const double SameTimeS = 10;

    /// <summary>True when a reading of it came too late to show what a tread was on the lap.</summary>
    public bool IsTooLate { get; init; }

    /// <summary>True when the whole 90 % range lies where the difference does.</summary>
    public bool IsClear => Verdict != RangeVerdict.Unknown
        && UsualTemperatures.BetweenPairs.Judge(DifferenceC.Ninety.Lower) == Verdict
        && UsualTemperatures.BetweenPairs.Judge(DifferenceC.Ninety.Upper) == Verdict;

    /// <summary>The comparison; null where a wheel of it was not read.</summary>
    /// <param name="pairs">Which wheels.</param>
    /// <param name="treads">All readings, one a wheel.</param>
    /// <param name="airC">The air around them, °C; null where it is not known.</param>
    public static PairComparison? Compute(WheelPairs pairs, IReadOnlyList<TreadReading> treads, double? airC)
    {
        if (WheelGroups.Create(pairs, treads) is not { } groups) return null;
        var differenceC = new Estimate(
            groups.First.Average(tread => tread.MeanC) - groups.Second.Average(tread => tread.MeanC), StandardErrorC(groups));
        double? waitedS = groups.All.All(tread => tread.SecondsAfterLap is not null)
            ? groups.Second.Average(tread => tread.SecondsAfterLap!.Value) - groups.First.Average(tread => tread.SecondsAfterLap!.Value)
            : null;
        return new PairComparison(
            pairs,
            differenceC,
            airC is { } air ? TreadCooling.DifferenceAtLapEndC(groups, differenceC.StandardError, air) : null,
            groups.All.Any(tread => tread.IsTooLate) ? RangeVerdict.Unknown : UsualTemperatures.BetweenPairs.Judge(differenceC),
            waitedS is not { } waited ? ReadingOrder.NotTimed : Math.Abs(waited) <= SameTimeS ? ReadingOrder.Alike : ReadingOrder.Apart,
            waitedS)
        { IsTooLate = groups.All.Any(tread => tread.IsTooLate) };
    }

    /// <summary>The same instrument reads both sides, and its bias drops out: each mean is as good as its three independent places.</summary>
    private static double StandardErrorC(WheelGroups groups)
    {
        var variance = groups.All.Sum(tread => Math.Pow(ThermometerErrors.StandardErrorC(tread.By), 2) / 3);
        return Math.Sqrt(variance) / groups.First.Count;
    }
}

/// <summary>What the order in which wheels were read does to a comparison.</summary>
public enum ReadingOrder
{
    /// <summary>They were read about equally long after the lap.</summary>
    Alike,

    /// <summary>One side had longer to cool.</summary>
    Apart,

    /// <summary>Not stated when each was read.</summary>
    NotTimed,
}
