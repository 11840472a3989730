using SetupService.Api.Http.Contract;
using SetupService.Api.Http.Shared;
using SetupService.Domain.Answers;
using SetupService.Domain.Wear.Temperatures;

namespace SetupService.Api.Wear.Temperatures;

/// <summary>Wheels held against each other by the means of their treads.</summary>
public sealed record PairPart
{
    /// <summary>Which.</summary>
    [Sample("frontLessRear")]
    public required WheelPairs Pairs { get; init; }

    /// <summary>The difference as read; positive = the first named is hotter.</summary>
    public required UncertaintyResponse DifferenceC { get; init; }

    /// <summary>The same at the end of the lap, from how long each cooled; null where that cannot be told.</summary>
    public required UncertaintyResponse? AtLapEndC { get; init; }

    /// <summary>Where the difference as read lies against −10 to 10 °C; unknown where a reading came too late.</summary>
    [Sample("within")]
    public required RangeVerdict Verdict { get; init; }

    /// <summary>Whether the thermometer's error leaves no doubt of that.</summary>
    [Sample(true)]
    public required bool IsClear { get; init; }

    /// <summary>What the order of measuring does to it.</summary>
    [Sample("apart")]
    public required ReadingOrder Order { get; init; }

    /// <summary>How much longer after the lap the second named was read; null where a time is not given.</summary>
    [Sample(45.0)]
    public required double? WaitedS { get; init; }

    /// <summary>Where the range comes from.</summary>
    [Sample("common practice, no source")]
    public required string Source { get; init; }

    /// <summary>The same as sentences.</summary>
    [Sample("The front axle is 6.5 °C hotter than the rear axle (±0.9 °C). Up to about 10 °C is usual.")]
    public required string Text { get; init; }

    internal static PairPart Of(in PairComparison one, UnitSystem units) => new()
    {
        Pairs = one.Pairs,
        DifferenceC = UncertaintyResponse.Of(one.DifferenceC),
        AtLapEndC = one.AtLapEndC is { } end ? UncertaintyResponse.Of(end) : null,
        Verdict = one.Verdict,
        IsClear = one.IsClear,
        Order = one.Order,
        WaitedS = one.WaitedS,
        Source = UsualTemperatures.Source,
        Text = PairWords.Describe(one, units),
    };
}
