using SetupService.Domain.Wear.Readings;

namespace SetupService.Domain.Wear.Forecast;

/// <summary>What a forecast starts from.</summary>
public sealed record ForecastQuestion
{
    /// <summary>The readings of the tyre, in the order they were taken; both clocks run on.</summary>
    public required ReadOnlyMemory<DepthReading> Readings { get; init; }

    /// <summary>Depth at which the tyre is done, mm.</summary>
    public double LimitDepthMm { get; init; } = TreadDepths.LegalLeastMm;

    /// <summary>Stated standard deviation of one reading, mm; null where nobody states it.</summary>
    public double? GaugeErrorMm { get; init; }

    /// <summary>The readings of a tyre this one may change places with; empty where there is none.</summary>
    public ReadOnlyMemory<DepthReading> OtherReadings { get; init; }
}
