namespace SetupService.Domain.Fitment.Outlines;

/// <summary>A line of straight and curved pieces in a section through the wheel axis. Immutable.</summary>
public sealed class Outline
{
    private readonly OutlineStep[] _steps;

    /// <summary>An outline from a point along pieces in order.</summary>
    public Outline(OutlinePoint start, params OutlineStep[] steps)
    {
        Start = start;
        _steps = [.. steps];
    }

    /// <summary>Where it begins.</summary>
    public OutlinePoint Start { get; }

    /// <summary>The pieces in order.</summary>
    public IReadOnlyList<OutlineStep> Steps => _steps;

    /// <summary>Where it ends.</summary>
    public OutlinePoint End => _steps.Length == 0 ? Start : _steps[^1].End;

    /// <summary>
    /// How far it reaches, by its points and control points. Every outline here turns only at points, so that no curve stays
    /// short of these extremes and none can pass them.
    /// </summary>
    public OutlineExtremes Extremes
    {
        get
        {
            var extremes = OutlineExtremes.None.With(Start);
            foreach (var step in _steps) extremes = extremes.With(step.FirstControl).With(step.SecondControl).With(step.End);
            return extremes;
        }
    }

    /// <summary>The same below the wheel axis.</summary>
    public Outline BelowAxis() => Changed(static point => point with { HeightMm = -point.HeightMm });

    /// <summary>The outline as a polygon, each curve as so many straight pieces.</summary>
    public IReadOnlyList<OutlinePoint> Polygon(int piecesPerCurve)
    {
        var points = new List<OutlinePoint>((_steps.Length * piecesPerCurve) + 1) { Start };
        var from = Start;
        foreach (var step in _steps)
        {
            var pieces = step.IsStraight ? 1 : piecesPerCurve;
            for (var piece = 1; piece <= pieces; piece++) points.Add(step.At(from, (double)piece / pieces));
            from = step.End;
        }

        return points;
    }

    /// <summary>The outline followed by its own mirror image across a plane, run backwards, so that it comes back on the other side.</summary>
    public Outline WithMirrorAcross(double planeMm) =>
        Then(Changed(point => point with { StationMm = (2 * planeMm) - point.StationMm }).Reversed());

    /// <summary>The outline run the other way.</summary>
    internal Outline Reversed()
    {
        var reversed = new OutlineStep[_steps.Length];
        for (var i = 0; i < _steps.Length; i++)
        {
            var step = _steps[i];
            var end = i == 0 ? Start : _steps[i - 1].End;
            reversed[^(i + 1)] = step.IsStraight ? OutlineStep.Line(end) : OutlineStep.Curve(step.SecondControl, step.FirstControl, end);
        }

        return new Outline(End, reversed);
    }

    /// <summary>The outline, then straight to where another begins unless that is here, then the other.</summary>
    internal Outline Then(Outline other) => End == other.Start
        ? new Outline(Start, [.. _steps, .. other._steps])
        : new Outline(Start, [.. _steps, OutlineStep.Line(other.Start), .. other._steps]);

    private Outline Changed(Func<OutlinePoint, OutlinePoint> change) =>
        new(change(Start), Array.ConvertAll(_steps, step => new OutlineStep(change(step.FirstControl), change(step.SecondControl), change(step.End), step.IsStraight)));
}
