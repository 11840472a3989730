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

    /// <summary>Sentences under the panels: assumptions, cautions, why positions are missing.</summary>
    public IReadOnlyList<string> Notes { get; init; } = [];
}
