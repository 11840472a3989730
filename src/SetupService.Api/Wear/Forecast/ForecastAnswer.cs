using SetupService.Api.Http.Contract;
using SetupService.Api.Http.Shared;

namespace SetupService.Api.Wear.Forecast;

/// <summary>How a tyre wears and how long it lasts.</summary>
public sealed record ForecastAnswer
{
    /// <summary>Each zone across the tread.</summary>
    public required ForecastZonesPart Zones { get; init; }

    /// <summary>The zone that ends the tyre; null where none is estimated to.</summary>
    public required EndsFirstPart? EndsFirst { get; init; }

    /// <summary>Depth at which the tyre is done.</summary>
    [Sample(1.6)]
    public required double LimitDepthMm { get; init; }

    /// <summary>How many readings stand at different distances.</summary>
    [Sample(7)]
    public required int DistinctReadings { get; init; }

    /// <summary>Scatter of one reading about straight wear, one standard deviation over all zones; null without a forecast.</summary>
    [Sample(0.12)]
    public required double? ScatterMm { get; init; }

    /// <summary>Readings the scatter rests on, beyond those the lines use up.</summary>
    [Sample(12)]
    public required int? DegreesOfFreedom { get; init; }

    /// <summary>Readings further from straight wear than the gauge errs.</summary>
    public required MisfitPart[] Misfits { get; init; }

    /// <summary>What turning the tyre on its rim brings; null where it is not told.</summary>
    public required TurningPart? Turning { get; init; }

    /// <summary>What swapping with the other tyre brings; null where it is not told or no other is given.</summary>
    public required SwappingPart? Swapping { get; init; }

    /// <summary>What wear costs; null where price or new depth is not given or nothing is estimated.</summary>
    public required WearCostPart? Cost { get; init; }

    /// <summary>What treadwear grades say; null where none is given.</summary>
    public required TreadwearPart? Treadwear { get; init; }

    /// <summary>What it means, in sentences.</summary>
    public required string[] Summary { get; init; }

    /// <summary>What is null above, and why.</summary>
    public required UnknownResponse[] Unknown { get; init; }

    /// <summary>Key of the method page.</summary>
    [Sample("wear-forecast")]
    public required string Method { get; init; }

    /// <summary>Edition of model and tables.</summary>
    [Sample("2026.11")]
    public required string Edition { get; init; }

    /// <summary>What was used although nobody gave it.</summary>
    public required AssumptionResponse[] Assumptions { get; init; }

    /// <summary>What can hurt somebody.</summary>
    public required CautionResponse[] Cautions { get; init; }
}
