namespace SetupService.Api.Drawings.Charts;

/// <summary>One quantity of a chart.</summary>
/// <param name="Name">What is shown, "camber".</param>
/// <param name="Unit">Its unit as it is written, "°" or "mm"; empty for a ratio.</param>
/// <param name="Series">The lines in it.</param>
public sealed record ChartPanel(string Name, string Unit, IReadOnlyList<ChartSeries> Series)
{
    /// <summary>What the sign says, "positive = toe-in"; null where that goes without saying.</summary>
    public string? Signs { get; init; }

    /// <summary>Values that differ by less than this, in the panel's unit, are drawn as a level line.</summary>
    public double LeastSpan { get; init; } = 0.01;
}
