using SetupService.Domain.Wear.Readings;

namespace SetupService.Domain.Wear.BeforeAfter;

/// <summary>What a comparison of wear before and after a change starts from.</summary>
public sealed record ComparisonQuestion
{
    /// <summary>Further readings where nobody says how many.</summary>
    public const int UsualReadings = 4;

    /// <summary>Readings before the change, in the order they were taken.</summary>
    public required ReadOnlyMemory<DepthReading> Before { get; init; }

    /// <summary>Readings after it; empty where there are none yet. Their clocks may start anew.</summary>
    public ReadOnlyMemory<DepthReading> After { get; init; }

    /// <summary>Stated standard deviation of one reading, mm; null where nobody states it.</summary>
    public double? GaugeErrorMm { get; init; }

    /// <summary>Ratio of the rates the change is hoped to bring; null where the one seen is asked for.</summary>
    public double? ExpectedRatio { get; init; }

    /// <summary>How many further readings are planned.</summary>
    public int PlannedReadings { get; init; } = UsualReadings;

    /// <summary>How many further laps are planned; null where none are, or laps are not compared.</summary>
    public double? PlannedLaps { get; init; }
}
