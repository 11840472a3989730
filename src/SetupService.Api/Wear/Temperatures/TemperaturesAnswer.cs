using SetupService.Api.Http.Contract;
using SetupService.Api.Http.Shared;
using SetupService.Domain.Answers;
using SetupService.Domain.Vehicles;
using SetupService.Domain.Wear.Temperatures;

namespace SetupService.Api.Wear.Temperatures;

/// <summary>What tread temperatures and pressures after driving say, and what to set.</summary>
public sealed record TemperaturesAnswer
{
    /// <summary>What is unsafe, what was read wrongly, the tread that stands out most and what to set, in at most five sentences.</summary>
    [Sample("Front left: the outer shoulder is 13 °C hotter than the inner one, as with too little negative camber for these corners or toe-in.")]
    public required string Summary { get; init; }

    /// <summary>What to do first, at most five; pressures by steps of at most 20 kPa, but at once to what the load needs or to a stated cold aim.</summary>
    public required HeatActionResponse[] Actions { get; init; }

    /// <summary>Each tyre, in the order of the readings.</summary>
    public required TyreHeatResponse[] Tyres { get; init; }

    /// <summary>Front against rear, left against right; those whose wheels were read.</summary>
    public required PairResponse[] Comparisons { get; init; }

    /// <summary>Absolute pressure of the air the answer used.</summary>
    [Sample(98.5)]
    public required double AirPressureKpa { get; init; }

    /// <summary>What is null above, and why.</summary>
    public required UnknownResponse[] Unknown { get; init; }

    /// <summary>Key of the method page.</summary>
    [Sample("tread-temperatures")]
    public required string Method { get; init; }

    /// <summary>Edition of model and tables.</summary>
    [Sample("2026.11")]
    public required string Edition { get; init; }

    /// <summary>The calls that usually follow.</summary>
    public required NextCallResponse[] Next { get; init; }

    /// <summary>What was used although nobody gave it.</summary>
    public required AssumptionResponse[] Assumptions { get; init; }

    /// <summary>What can hurt somebody.</summary>
    public required CautionResponse[] Cautions { get; init; }
}

/// <summary>One thing to do.</summary>
public sealed record HeatActionResponse
{
    /// <summary>What kind of thing.</summary>
    [Sample("setPressure")]
    public required HeatActionKind Kind { get; init; }

    /// <summary>As an instruction.</summary>
    [Sample("Set cold: front left from 230 kPa to 218 kPa. Drive, read hot again, then take the next step.")]
    public required string Text { get; init; }

    /// <summary>The tyres it is about; empty where it is about none or all.</summary>
    public required WheelPosition[] Tyres { get; init; }

    /// <summary>The pressures to set.</summary>
    public required PressureStepResponse[] Steps { get; init; }

    internal static HeatActionResponse From(HeatAction action) => new()
    {
        Kind = action.Kind,
        Text = action.Text,
        Tyres = [.. action.Tyres],
        Steps = [.. action.Steps.Select(step => new PressureStepResponse { Position = step.Position, FromKpa = step.FromKpa, ToKpa = step.ToKpa, TowardsKpa = step.TowardsKpa, IsHot = step.IsHot })],
    };
}

/// <summary>A pressure to set; gauge.</summary>
public sealed record PressureStepResponse
{
    /// <summary>Of which wheel's tyre.</summary>
    [Sample("frontLeft")]
    public required WheelPosition Position { get; init; }

    /// <summary>What it has; before the next session what it reads then if nothing is done.</summary>
    [Sample(230.0)]
    public required double FromKpa { get; init; }

    /// <summary>What to set now.</summary>
    [Sample(218.0)]
    public required double ToKpa { get; init; }

    /// <summary>Where that is going.</summary>
    [Sample(218.0)]
    public required double TowardsKpa { get; init; }

    /// <summary>Whether both are while it is as hot as read; else cold.</summary>
    [Sample(false)]
    public required bool IsHot { get; init; }
}

/// <summary>What the readings of one tyre say.</summary>
public sealed record TyreHeatResponse
{
    /// <summary>Which wheel it is on.</summary>
    [Sample("frontLeft")]
    public required WheelPosition Position { get; init; }

    /// <summary>The tread; null where its temperatures are not given.</summary>
    public required TreadHeatResponse? Tread { get; init; }

    /// <summary>The pressures; null where none is given.</summary>
    public required TyrePressureResponse? Pressure { get; init; }
}

/// <summary>What a tread's temperatures say; figures are as read, not corrected for cooling.</summary>
public sealed record TreadHeatResponse
{
    /// <summary>Outer less inner shoulder; negative = the inner one is hotter.</summary>
    public required UncertaintyResponse OuterLessInnerC { get; init; }

    /// <summary>The hottest place less the coldest.</summary>
    public required UncertaintyResponse WidestSpreadC { get; init; }

    /// <summary>The middle less the mean of the shoulders; positive = the middle is hotter.</summary>
    public required UncertaintyResponse CentreLessShouldersC { get; init; }

    /// <summary>Mean of the three places.</summary>
    public required UncertaintyResponse MeanC { get; init; }

    /// <summary>The tread at the end of the lap; null where that cannot be told.</summary>
    public required TreadAtLapEndResponse? AtLapEndC { get; init; }

    /// <summary>Each figure against its range, in this order.</summary>
    public required TreadFindingResponse[] Findings { get; init; }

    /// <summary>How the readings contradict each other; null where they do not.</summary>
    [Sample("The tread means 12 °C and the air is said to be 21 °C.")]
    public required string? Contradiction { get; init; }
}

/// <summary>What the tread was like when the lap ended, from how long it cooled; a rough estimate with a wide range.</summary>
public sealed record TreadAtLapEndResponse
{
    /// <summary>At the outer shoulder.</summary>
    public required UncertaintyResponse Outer { get; init; }

    /// <summary>In the middle.</summary>
    public required UncertaintyResponse Centre { get; init; }

    /// <summary>At the inner shoulder.</summary>
    public required UncertaintyResponse Inner { get; init; }
}

/// <summary>One figure of a tread held to its range.</summary>
public sealed record TreadFindingResponse
{
    /// <summary>Which figure.</summary>
    [Sample("outerLessInner")]
    public required TreadAspect Aspect { get; init; }

    /// <summary>Where it lies; unknown where there is no range or the reading came too late.</summary>
    [Sample("below")]
    public required RangeVerdict Verdict { get; init; }

    /// <summary>Whether the thermometer's error leaves no doubt of that.</summary>
    [Sample(true)]
    public required bool IsClear { get; init; }

    /// <summary>The range; null where none is known.</summary>
    public required RangeResponse? RangeC { get; init; }

    /// <summary>Where the range comes from.</summary>
    [Sample("common practice, no source")]
    public required string Source { get; init; }

    /// <summary>The figure and what it says, as a sentence.</summary>
    [Sample("The inner shoulder is 12 °C hotter than the outer one (±2.3 °C for the thermometer).")]
    public required string Text { get; init; }
}

/// <summary>Wheels held against each other by the means of their treads.</summary>
public sealed record PairResponse
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

    internal static PairResponse From(in PairComparison one, UnitSystem units) => new()
    {
        Pairs = one.Pairs,
        DifferenceC = UncertaintyResponse.From(one.DifferenceC),
        AtLapEndC = UncertaintyResponse.From(one.AtLapEndC),
        Verdict = one.Verdict,
        IsClear = one.IsClear,
        Order = one.Order,
        WaitedS = one.WaitedS,
        Source = UsualTemperatures.Source,
        Text = PairWords.Describe(one, units),
    };
}
