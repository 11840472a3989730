using SetupService.Api.Http.Contract;
using SetupService.Api.Http.Shared;
using SetupService.Domain.Wear.BeforeAfter;

namespace SetupService.Api.Wear.BeforeAfter;

/// <summary>Whether a change changed how the tread wears.</summary>
public sealed record BeforeAfterAnswer
{
    /// <summary>What rates are compared by; none where nothing can be compared.</summary>
    [Sample("track")]
    public required ComparedClock Clock { get; init; }

    /// <summary>Road that goes with each lap; null unless the clock is sameMix.</summary>
    [Sample(58.8)]
    public required double? RoadPerLapKm { get; init; }

    /// <summary>Each zone; null where nothing can be compared.</summary>
    public required ZoneChangesPart? Zones { get; init; }

    /// <summary>The outer shoulder against the centre; null likewise.</summary>
    public required ShoulderChangePart? OuterToCentre { get; init; }

    /// <summary>The inner shoulder against the centre; null likewise.</summary>
    public required ShoulderChangePart? InnerToCentre { get; init; }

    /// <summary>Further readings the plan counts with.</summary>
    [Sample(4)]
    public required int PlannedReadings { get; init; }

    /// <summary>Scatter of one reading about straight wear, one standard deviation over both lists; null where there are too few.</summary>
    [Sample(0.12)]
    public required double? ScatterMm { get; init; }

    /// <summary>What it means, in sentences.</summary>
    public required string[] Summary { get; init; }

    /// <summary>What is null above, and why.</summary>
    public required UnknownResponse[] Unknown { get; init; }

    /// <summary>Key of the method page.</summary>
    [Sample("wear-before-after")]
    public required string Method { get; init; }

    /// <summary>Edition of model and tables.</summary>
    [Sample("2026.11")]
    public required string Edition { get; init; }

    /// <summary>What was used although nobody gave it.</summary>
    public required AssumptionResponse[] Assumptions { get; init; }

    /// <summary>What can hurt somebody.</summary>
    public required CautionResponse[] Cautions { get; init; }
}
