using SetupService.Api.Http.Contract;
using SetupService.Api.Http.Shared;

namespace SetupService.Api.Wear.Temperatures;

/// <summary>What tread temperatures and pressures after driving say, and what to set.</summary>
public sealed record TemperaturesAnswer
{
    /// <summary>Each tyre, in the order of the readings.</summary>
    public required TyreHeatPart[] Tyres { get; init; }

    /// <summary>Front against rear, left against right; those whose wheels were read.</summary>
    public required PairPart[] Comparisons { get; init; }

    /// <summary>Absolute pressure of the air the answer used.</summary>
    [Sample(98.5)]
    public required double AirPressureKpa { get; init; }

    /// <summary>What stands out, in sentences.</summary>
    [Sample("Front left: The inner shoulder is 12 °C hotter than the outer one.")]
    public required string[] Summary { get; init; }

    /// <summary>What is null above, and why.</summary>
    public required UnknownResponse[] Unknown { get; init; }

    /// <summary>Key of the method page.</summary>
    [Sample("tread-temperatures")]
    public required string Method { get; init; }

    /// <summary>Edition of model and tables.</summary>
    [Sample("2026.11")]
    public required string Edition { get; init; }

    /// <summary>What was used although nobody gave it.</summary>
    public required AssumptionResponse[] Assumptions { get; init; }

    /// <summary>What can hurt somebody.</summary>
    public required CautionResponse[] Cautions { get; init; }
}
