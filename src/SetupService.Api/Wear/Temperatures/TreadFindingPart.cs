using SetupService.Api.Http.Contract;
using SetupService.Domain.Wear.Temperatures;

namespace SetupService.Api.Wear.Temperatures;

/// <summary>One figure of a tread held to its range.</summary>
public sealed record TreadFindingPart
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
    public required TemperatureRangePart? RangeC { get; init; }

    /// <summary>Where the range comes from.</summary>
    [Sample("common practice, no source")]
    public required string Source { get; init; }

    /// <summary>The figure and what it says, as a sentence.</summary>
    [Sample("The inner shoulder is 12 °C hotter than the outer one (±2.3 °C for the thermometer).")]
    public required string Text { get; init; }
}
