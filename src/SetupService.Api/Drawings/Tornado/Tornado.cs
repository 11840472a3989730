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

/// <summary>One figure of a tornado.</summary>
/// <param name="Name">The figure's name.</param>
/// <param name="Unit">Its unit; empty for a pure number.</param>
/// <param name="Base">Its value with nothing changed.</param>
/// <param name="Bars">What each change makes of it.</param>
public sealed record TornadoPanel(string Name, string Unit, double Base, IReadOnlyList<TornadoBar> Bars);

/// <summary>One change.</summary>
/// <param name="Name">What the caller calls it.</param>
/// <param name="Change">By how much it moves the figure.</param>
/// <param name="IsTogether">Whether it is all changes together, which stands apart at the foot.</param>
public sealed record TornadoBar(string Name, double Change, bool IsTogether = false);
