using SetupService.Api.Http.Contract;
using SetupService.Api.Http.Shared;
using SetupService.Domain.Vehicles;
using SetupService.Domain.Wear.Diagnosis;
using SetupService.Domain.Wear.Diagnosis.Advice;

namespace SetupService.Api.Wear.Diagnosis;

/// <summary>What the tyres say.</summary>
public sealed record DiagnosisAnswer
{
    /// <summary>The answer in one or two sentences.</summary>
    [Sample("Most likely (86 %): the front has too little negative camber.")]
    public required string Summary { get; init; }

    /// <summary>What can hurt somebody, worn out and unsafe first.</summary>
    public required CautionResponse[] Cautions { get; init; }

    /// <summary>The causes, the likeliest first; normal is always there.</summary>
    public required CauseResponse[] Causes { get; init; }

    /// <summary>What to do at each axle.</summary>
    public required AxlesAdviceResponse Axles { get; init; }

    /// <summary>Each tyre's tread.</summary>
    public required TreadResponse[] Tread { get; init; }

    /// <summary>The wear model of each axle, where there is one.</summary>
    public required AxleWearResponse[] WearModel { get; init; }

    /// <summary>What to measure next.</summary>
    public required NextCheckResponse NextCheck { get; init; }

    /// <summary>Readings that cannot well be true together.</summary>
    public required ContradictionResponse[] Contradictions { get; init; }

    /// <summary>What the answer cannot tell, and why.</summary>
    public required UnknownResponse[] Unknown { get; init; }

    /// <summary>Key of the method page.</summary>
    [Sample("wear-diagnosis")]
    public required string Method { get; init; }

    /// <summary>Edition of model and tables.</summary>
    [Sample("2026.11")]
    public required string Edition { get; init; }

    /// <summary>The calls that usually follow.</summary>
    public required NextCallResponse[] Next { get; init; }

    /// <summary>What was used although nobody gave it.</summary>
    public required AssumptionResponse[] Assumptions { get; init; }
}

/// <summary>What to do at each axle.</summary>
public sealed record AxlesAdviceResponse
{
    /// <summary>At the front.</summary>
    public required AxleAdviceResponse Front { get; init; }

    /// <summary>At the rear.</summary>
    public required AxleAdviceResponse Rear { get; init; }
}

/// <summary>What to do at one axle.</summary>
public sealed record AxleAdviceResponse
{
    /// <summary>By how much the static camber is less negative than wanted.</summary>
    public required CamberShortResponse CamberShortDeg { get; init; }

    /// <summary>Whether the treads are even within what the use explains.</summary>
    [Sample(false)]
    public required bool IsDone { get; init; }

    /// <summary>What to do, or when to read again.</summary>
    [Sample("Nothing to change. Read again in 40 laps.")]
    public required string Text { get; init; }

    internal static AxleAdviceResponse From(AxleAdvice advice) => new()
    {
        CamberShortDeg = new CamberShortResponse
        {
            ByTreads = UncertaintyResponse.From(advice.CamberShort.ByTreads),
            ByModel = UncertaintyResponse.From(advice.CamberShort.ByModel),
            Together = UncertaintyResponse.From(advice.CamberShort.Together),
        },
        IsDone = advice.IsDone,
        Text = advice.Text,
    };
}

/// <summary>By how much the static camber is less negative than wanted; null where it cannot be told.</summary>
public sealed record CamberShortResponse
{
    /// <summary>What would even the shoulders out.</summary>
    public required UncertaintyResponse? ByTreads { get; init; }

    /// <summary>What the cornering model expects.</summary>
    public required UncertaintyResponse? ByModel { get; init; }

    /// <summary>Both by their precision; the treads' alone where they disagree.</summary>
    public required UncertaintyResponse? Together { get; init; }
}

/// <summary>What the depths of one tyre come down to.</summary>
public sealed record TreadResponse
{
    /// <summary>Which wheel.</summary>
    [Sample("frontLeft")]
    public required WheelPosition Position { get; init; }

    /// <summary>Depth across, by a parabola through what was read.</summary>
    public required DepthsResponse? DepthMm { get; init; }

    /// <summary>The least depth read anywhere.</summary>
    [Sample(3.8)]
    public required double? LeastDepthMm { get; init; }

    /// <summary>Mean wear over the tread.</summary>
    public required UncertaintyResponse? WornMm { get; init; }

    /// <summary>Wear of the outer shoulder less that of the inner one, as a share of the mean wear.</summary>
    public required UncertaintyResponse? OuterLessInnerPct { get; init; }

    /// <summary>Wear of the centre less the mean of the shoulders', as a share of the mean wear.</summary>
    public required UncertaintyResponse? CentreLessShouldersPct { get; init; }

    /// <summary>RMS difference of depth round the tyre beyond the gauge's error.</summary>
    public required UncertaintyResponse? RoundTyreMm { get; init; }

    /// <summary>Depth the wear model predicts after it learned from the axle.</summary>
    public required DepthsResponse? PredictedDepthMm { get; init; }

    /// <summary>Age in years on the day of the readings.</summary>
    [Sample(4.2)]
    public required double? AgeYears { get; init; }
}

/// <summary>The wear model of an axle after it learned from its treads.</summary>
public sealed record AxleWearResponse
{
    /// <summary>Which axle.</summary>
    [Sample("front")]
    public required CarAxle Axle { get; init; }

    /// <summary>Mean wear of a thousand kilometres of road.</summary>
    public required UncertaintyResponse WearPer1000KmMm { get; init; }

    /// <summary>Mean wear of a lap.</summary>
    public required UncertaintyResponse WearPerLapMm { get; init; }

    /// <summary>How many depths it learned from.</summary>
    [Sample(6)]
    public required int DepthsLearnedFromCount { get; init; }

    /// <summary>What a camber set by `axles…camberShortDeg.together` at once would do at the same use.</summary>
    public required CamberEffectResponse? WithCamberSet { get; init; }

    /// <summary>The camber within 5° with which the axle's fastest-worn place lasts longest; null where the shoulders read contradict the model.</summary>
    public required CamberEffectResponse? LongestLife { get; init; }
}

/// <summary>What another static camber does to the wear at the same use.</summary>
public sealed record CamberEffectResponse
{
    /// <summary>Change of the static camber of each wheel; negative = more negative.</summary>
    [Sample(-1.2)]
    public required double CamberChangeDeg { get; init; }

    /// <summary>Wear predicted over the same use, left tyre.</summary>
    public required DepthsResponse LeftWornMm { get; init; }

    /// <summary>Wear predicted over the same use, right tyre.</summary>
    public required DepthsResponse RightWornMm { get; init; }

    /// <summary>By what the life of the axle's fastest-worn place is multiplied.</summary>
    [Sample(1.3)]
    public required double LifeRatio { get; init; }
}

/// <summary>The measurement that is expected to tell most.</summary>
public sealed record NextCheckResponse
{
    /// <summary>Which.</summary>
    [Sample("toe")]
    public required WearCheck Check { get; init; }

    /// <summary>How it is done.</summary>
    [Sample("Have the toe of each wheel measured.")]
    public required string Text { get; init; }

    /// <summary>How much it is expected to tell, in bits; null where all is read already.</summary>
    [Sample(0.42)]
    public required double? ExpectedInformation { get; init; }
}

/// <summary>Readings that cannot well be true together.</summary>
public sealed record ContradictionResponse
{
    /// <summary>The tyre they are of; null = of the whole car.</summary>
    [Sample("frontLeft")]
    public required WheelPosition? Position { get; init; }

    /// <summary>What contradicts what.</summary>
    [Sample("Edges point to toe-in, the stated toe is 0.20° out.")]
    public required string Text { get; init; }
}
