namespace SetupService.Api.Drawings.Comparison;

/// <summary>What changes do to a few figures: a block a change, in it two rows of figures, each with how far it moves and a bar.</summary>
public sealed record ComparisonChart
{
    /// <summary>What is shown.</summary>
    public required string Heading { get; init; }

    /// <summary>Lines under the heading.</summary>
    public required IReadOnlyList<string> Lines { get; init; }

    /// <summary>The columns, as headed: two lines each.</summary>
    public required IReadOnlyList<(string Upper, string Lower)> Columns { get; init; }

    /// <summary>The names of the two rows of a block.</summary>
    public required (string Upper, string Lower) Rows { get; init; }

    /// <summary>The blocks, from top to bottom.</summary>
    public required IReadOnlyList<ComparisonBlock> Blocks { get; init; }

    /// <summary>Notes at the foot.</summary>
    public required IReadOnlyList<string> Notes { get; init; }
}

/// <summary>One change.</summary>
/// <param name="Name">What it is called, shown whole.</param>
/// <param name="Upper">Its upper row, a cell a column; empty where it has none.</param>
/// <param name="Lower">Its lower row.</param>
/// <param name="Instead">What is said instead of figures; null where there are some.</param>
/// <param name="StandsApart">Whether a line parts it from the blocks before.</param>
public sealed record ComparisonBlock(string Name, IReadOnlyList<ComparisonCell> Upper, IReadOnlyList<ComparisonCell> Lower, string? Instead = null, bool StandsApart = false);

/// <summary>One figure.</summary>
/// <param name="Text">As shown.</param>
/// <param name="Length">Length and side of its bar, −1 to 1, beyond where it is more than the scale holds; 0 = too little to be noticed, or no bar.</param>
/// <param name="Tone">Whether that is better or worse.</param>
public readonly record struct ComparisonCell(string Text, double Length = 0, ComparisonTone Tone = ComparisonTone.Neutral);

/// <summary>Whether a figure's change is for the better.</summary>
public enum ComparisonTone
{
    /// <summary>Neither: more of it is not better by itself.</summary>
    Neutral,

    /// <summary>Better.</summary>
    Better,

    /// <summary>Worse.</summary>
    Worse,
}
