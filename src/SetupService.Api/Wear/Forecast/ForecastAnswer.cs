using SetupService.Api.Http.Contract;
using SetupService.Api.Http.Shared;
using SetupService.Domain.Vehicles;
using SetupService.Domain.Wear.Forecast;
using SetupService.Domain.Wear.Readings;

namespace SetupService.Api.Wear.Forecast;

/// <summary>How a car's tyres wear and how long they last.</summary>
public sealed record ForecastAnswer
{
    /// <summary>The tyre that is done first and when, how fast it wears, and what gains most, in at most five sentences.</summary>
    [Sample("Front left: The outer shoulder ends the tyre first (probability 97 %): it has 4.5 mm, and the limit is 1.6 mm.")]
    public required string Summary { get; init; }

    /// <summary>Each tyre, in the order of the request.</summary>
    public required TyreForecastResponse[] Tyres { get; init; }

    /// <summary>Front with rear on one side, left with right on one axle, where it is told what swapping brings.</summary>
    public required SwappingResponse[] Swaps { get; init; }

    /// <summary>Depth at which a tyre is done.</summary>
    [Sample(1.6)]
    public required double LimitDepthMm { get; init; }

    /// <summary>What treadwear grades say; null where none is given.</summary>
    public required TreadwearResponse? Treadwear { get; init; }

    /// <summary>What is null above, and why.</summary>
    public required UnknownResponse[] Unknown { get; init; }

    /// <summary>Key of the method page.</summary>
    [Sample("wear-forecast")]
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

/// <summary>How one tyre wears and how long it lasts.</summary>
public sealed record TyreForecastResponse
{
    /// <summary>Where it is on the car.</summary>
    [Sample("frontLeft")]
    public required WheelPosition Position { get; init; }

    /// <summary>What ends it and when; what has worn so far where there is no forecast.</summary>
    [Sample("The outer shoulder ends the tyre first (probability 97 %): it has 4.5 mm, and the limit is 1.6 mm.")]
    public required string Text { get; init; }

    /// <summary>Each zone across the tread.</summary>
    public required ForecastZonesResponse Zones { get; init; }

    /// <summary>The zone that ends the tyre; null where none is estimated to.</summary>
    public required EndingZoneResponse? EndsFirst { get; init; }

    /// <summary>Whether wear is shown to slow or quicken; rates are then the later half's.</summary>
    [Sample(false)]
    public required bool IsCurved { get; init; }

    /// <summary>How many readings stand at different distances.</summary>
    [Sample(7)]
    public required int DistinctReadings { get; init; }

    /// <summary>Scatter of one reading about the fitted wear, one standard deviation over all zones; null where no zone is estimated.</summary>
    [Sample(0.12)]
    public required double? ScatterMm { get; init; }

    /// <summary>Readings the scatter rests on, beyond those the lines use up.</summary>
    [Sample(12)]
    public required int? DegreesOfFreedom { get; init; }

    /// <summary>Readings further from the fitted wear than the gauge errs.</summary>
    public required MisfitResponse[] Misfits { get; init; }

    /// <summary>What turning the tyre on its rim brings; null where it is not told.</summary>
    public required TurningResponse? Turning { get; init; }

    /// <summary>What wear costs; null where price or new depth is not given or nothing is forecast.</summary>
    public required WearCostResponse? Cost { get; init; }
}

/// <summary>The three zones across the tread.</summary>
public sealed record ForecastZonesResponse
{
    /// <summary>The outer shoulder.</summary>
    public required ForecastZoneResponse Outer { get; init; }

    /// <summary>The middle.</summary>
    public required ForecastZoneResponse Centre { get; init; }

    /// <summary>The inner shoulder.</summary>
    public required ForecastZoneResponse Inner { get; init; }
}

/// <summary>How one zone wears and how long it lasts.</summary>
public sealed record ForecastZoneResponse
{
    /// <summary>By the readings' own scatter (estimated), or from two or three readings by gauge error and a usual rate (rough).</summary>
    [Sample("estimated")]
    public required ForecastStatus Status { get; init; }

    /// <summary>Why there is no forecast; null where there is one.</summary>
    [Sample("One reading tells no wear rate: read again after more use.")]
    public required string? Reason { get; init; }

    /// <summary>How fast it wears on road and track; why that is unknown without a forecast.</summary>
    [Sample("The outer shoulder loses 2.9 mm per 100 laps on track (1.99 mm per 100 laps to 3.81 mm per 100 laps).")]
    public required string Text { get; init; }

    /// <summary>Wear from the first reading to the last, as read.</summary>
    [Sample(2.1)]
    public required double WornMm { get; init; }

    /// <summary>Depth at the last reading by the fit; null without a forecast.</summary>
    public required UncertaintyResponse? DepthNowMm { get; init; }

    /// <summary>Wear per 1000 km on the road, never below 0; null where the readings do not tell it apart.</summary>
    public required UncertaintyResponse? RatePer1000KmMm { get; init; }

    /// <summary>Wear per lap on track, never below 0; null where the readings do not tell it apart.</summary>
    public required UncertaintyResponse? RatePerLapMm { get; init; }

    /// <summary>Kilometres left on road alone; upper is null where wear is not shown to be above zero, the whole where the rate is unknown.</summary>
    public required UncertaintyResponse? KmLeft { get; init; }

    /// <summary>Laps left on track alone; null likewise.</summary>
    public required UncertaintyResponse? LapsLeft { get; init; }

    /// <summary>What is left if road and track go on in the proportion they had; null without a forecast or where one clock stands still.</summary>
    public required SameMixResponse? SameMix { get; init; }
}

/// <summary>What is left with road and track in the proportion they had.</summary>
public sealed record SameMixResponse
{
    /// <summary>Road driven for each lap.</summary>
    [Sample(58.8)]
    public required double RoadPerLapKm { get; init; }

    /// <summary>Wear per lap with the road that goes with it.</summary>
    public required UncertaintyResponse WearPerLapMm { get; init; }

    /// <summary>Laps left; upper is null where wear is not shown to be above zero, the whole where depth grows.</summary>
    public required UncertaintyResponse? LapsLeft { get; init; }

    /// <summary>Kilometres left that go with those laps; null likewise.</summary>
    public required UncertaintyResponse? KmLeft { get; init; }
}

/// <summary>The zone that ends the tyre if it is used as it was.</summary>
public sealed record EndingZoneResponse
{
    /// <summary>The zone estimated to be at the limit first.</summary>
    [Sample("inner")]
    public required TreadPlace Zone { get; init; }

    /// <summary>How sure that is.</summary>
    [Sample(0.97)]
    public required double Probability { get; init; }

    /// <summary>Whether the readings tell it from the other zones: a probability of 0.9 or more.</summary>
    [Sample(true)]
    public required bool IsToldApart { get; init; }
}

/// <summary>A reading further from the fitted wear than the gauge errs.</summary>
public sealed record MisfitResponse
{
    /// <summary>JSON Pointer to the depth in the request.</summary>
    [Sample("/tyres/0/readings/3/depthMm/inner")]
    public required string Input { get; init; }

    /// <summary>The zone.</summary>
    [Sample("inner")]
    public required TreadPlace Zone { get; init; }

    /// <summary>How much deeper it reads than the line; negative where shallower.</summary>
    [Sample(0.9)]
    public required double AboveLineMm { get; init; }
}

/// <summary>What wear costs: the zone that ends the tyre takes its share of the usable depth, times the price.</summary>
public sealed record WearCostResponse
{
    /// <summary>The currency.</summary>
    [Sample("EUR")]
    public required string Currency { get; init; }

    /// <summary>The zone it is counted by.</summary>
    [Sample("inner")]
    public required TreadPlace Zone { get; init; }

    /// <summary>New depth minus the limit.</summary>
    [Sample(6.4)]
    public required double UsableDepthMm { get; init; }

    /// <summary>Cost of a lap; null where its wear is not told apart.</summary>
    public required UncertaintyResponse? PerLapAmount { get; init; }

    /// <summary>Cost of 1000 km on the road; null where their wear is not told apart.</summary>
    public required UncertaintyResponse? Per1000KmAmount { get; init; }

    /// <summary>Cost of a lap with the road that goes with it; null where one clock stands still.</summary>
    public required UncertaintyResponse? PerLapOfMixAmount { get; init; }
}

/// <summary>What treadwear grades say: a weak guide, and none to a track.</summary>
public sealed record TreadwearResponse
{
    /// <summary>The grade of this tyre.</summary>
    [Sample(240.0)]
    public required double Grade { get; init; }

    /// <summary>The least projected life on the government's course that gets this grade.</summary>
    [Sample(115872.8)]
    public required double CourseKm { get; init; }

    /// <summary>The other grade; null where none is given.</summary>
    [Sample(300.0)]
    public required double? OtherGrade { get; init; }

    /// <summary>Expected life of the other over this one's in the same use; the range is a factor of 2 either way, by judgement. Null where no other is given.</summary>
    public required UncertaintyResponse? LifeRatio { get; init; }

    /// <summary>What the grade is, and is not.</summary>
    [Sample("A grade of 240 stands for a projected life of at least 115 873 km on the government's road course.")]
    public required string Text { get; init; }
}
