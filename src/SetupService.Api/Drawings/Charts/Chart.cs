namespace SetupService.Api.Drawings.Charts;

/// <summary>Curves to be drawn as one picture: panels one under another over the same axis.</summary>
public sealed record Chart
{
    /// <summary>What the picture shows, in a few words.</summary>
    public required string Heading { get; init; }

    /// <summary>Lines under the heading: of what, at which setting. Broken where they do not fit.</summary>
    public IReadOnlyList<string> Lines { get; init; } = [];

    /// <summary>The axis all panels share.</summary>
    public required ChartAxis Across { get; init; }

    /// <summary>The panels from above. One without a single known value is not drawn but named in a note.</summary>
    public required IReadOnlyList<ChartPanel> Panels { get; init; }

    /// <summary>Stretches of the shared axis, each with its own words, under the panels.</summary>
    public IReadOnlyList<ChartSpan> Spans { get; init; } = [];

    /// <summary>Sentences under the panels: assumptions, cautions, why positions are missing.</summary>
    public IReadOnlyList<string> Notes { get; init; } = [];
}

/// <summary>The axis across the picture.</summary>
/// <param name="Name">What runs along it, "wheel travel".</param>
/// <param name="Unit">Its unit, "mm".</param>
public sealed record ChartAxis(string Name, string Unit)
{
    /// <summary>What zero is, "stated position"; null where that goes without saying.</summary>
    public string? Zero { get; init; }

    /// <summary>A word or two for the negative side, "rebound"; null for none.</summary>
    public string? Low { get; init; }

    /// <summary>A word or two for the positive side, "bump"; null for none.</summary>
    public string? High { get; init; }
}

/// <summary>One quantity of a chart.</summary>
/// <param name="Name">What is shown, "camber".</param>
/// <param name="Unit">Its unit as it is written, "°" or "mm"; empty for a ratio.</param>
/// <param name="Series">The lines in it.</param>
public sealed record ChartPanel(string Name, string Unit, IReadOnlyList<ChartSeries> Series)
{
    /// <summary>What the sign says, "positive = toe-in", or what the line comes to, "70 laps left"; null where that goes without saying.</summary>
    public string? Signs { get; init; }

    /// <summary>Whether the value at zero of the shared axis stands over the panel.</summary>
    public bool TellsZero { get; init; } = true;

    /// <summary>Values that differ by less than this, in the panel's unit, are drawn as a level line.</summary>
    public double LeastSpan { get; init; } = 0.01;
}

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

/// <summary>A point of a line. A number that is not finite, or larger than 1e9, counts as not known.</summary>
/// <param name="X">Where it stands on the shared axis, in the axis' unit.</param>
/// <param name="Y">The value in the panel's unit; null where there is none.</param>
public readonly record struct ChartPoint(double X, double? Y)
{
    private const double Largest = 1e9;

    /// <summary>Lower end of the uncertainty; null where there is none.</summary>
    public double? Lower { get; init; }

    /// <summary>Upper end of the uncertainty; null where there is none.</summary>
    public double? Upper { get; init; }

    internal bool HasPlace => IsKnown(X);

    internal bool HasValue => HasPlace && Y is { } value && IsKnown(value);

    internal bool HasBand => HasPlace && Lower is { } lower && Upper is { } upper && IsKnown(lower) && IsKnown(upper);

    private static bool IsKnown(double value) => Math.Abs(value) <= Largest;
}
