namespace SetupService.Api.Drawings.Charts;

/// <summary>
/// One line of a panel. A name has the same line style in every panel, and a legend names the styles as soon as there are two.
/// </summary>
/// <param name="Name">What the line is, "exact"; not shown where the whole chart has one name only.</param>
/// <param name="Points">Its points in the order they are joined. A point without a value leaves the line open there.</param>
public sealed record ChartSeries(string Name, IReadOnlyList<ChartPoint> Points)
{
    /// <summary>Whether this is what the picture is about; false for an approximation or a comparison, drawn thinner.</summary>
    public bool IsMain { get; init; } = true;

    /// <summary>Whether the points are joined; false for readings, which are dots.</summary>
    public bool IsJoined { get; init; } = true;

    /// <summary>What the band between lower and upper is, "90 % band"; null where no point has one.</summary>
    public string? BandName { get; init; }
}
