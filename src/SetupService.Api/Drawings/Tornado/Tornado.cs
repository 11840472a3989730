namespace SetupService.Api.Drawings.Tornado;

/// <summary>What changes do to some figures: a panel a figure, a bar a change, the longest bar first.</summary>
public sealed record Tornado
{
    /// <summary>What is shown.</summary>
    public required string Heading { get; init; }

    /// <summary>Lines under the heading.</summary>
    public required IReadOnlyList<string> Lines { get; init; }

    /// <summary>The panels, from top to bottom.</summary>
    public required IReadOnlyList<TornadoPanel> Panels { get; init; }

    /// <summary>Notes at the foot.</summary>
    public required IReadOnlyList<string> Notes { get; init; }
}
