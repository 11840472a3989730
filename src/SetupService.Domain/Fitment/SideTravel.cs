using SetupService.Domain.Answers;

namespace SetupService.Domain.Fitment;

/// <summary>
/// What suspension travel uses of a sideways gap, as a function of the tyre's radius: the maximum of straight lines, one for each place
/// of the wheel's path that governs at some radius. Evaluation allocates nothing.
/// </summary>
internal sealed class SideTravel
{
    private readonly (double FixedMm, double PerRadius)[] _lines;

    private SideTravel((double FixedMm, double PerRadius)[] lines) => _lines = lines;

    /// <summary>Travel uses nothing of the gap.</summary>
    public static SideTravel None { get; } = new([]);

    /// <summary>The most that travel uses of the gap with a tyre of this radius, mm; at least 0, its value at ride height.</summary>
    public double TakesMm(double radiusMm)
    {
        var mostMm = 0.0;
        foreach (var (fixedMm, perRadius) in _lines) mostMm = Math.Max(mostMm, fixedMm + (perRadius * radiusMm));
        return mostMm;
    }

    /// <summary>Scaled by a share, 0 to 1: for a part of the car that moves with the wheel and so comes nearer by that share only.</summary>
    public SideTravel Share(double share) => new(Array.ConvertAll(_lines, line => (share * line.FixedMm, share * line.PerRadius)));

    /// <summary>
    /// The movement inboard at a height above the wheel centre, mm; null = the worst height within one radius of the centre.
    /// Counts also the part of the wheel that passes this height on its way up, where that comes nearer.
    /// </summary>
    public static SideTravel Inboard(IReadOnlyList<PathPlace> path, double? aboveCentreMm)
    {
        var lines = new List<(double, double)>(path.Count);
        foreach (var place in path)
        {
            if (aboveCentreMm is { } aboveMm)
            {
                var atMm = Math.Max(aboveMm * place.LeanPerMm, (aboveMm - place.TravelMm) * place.LeanPerMm);
                lines.Add((place.InboardMm + atMm, 0));
            }
            else
            {
                lines.Add((place.InboardMm, Math.Abs(place.LeanPerMm)));
            }
        }

        return From(lines);
    }

    /// <summary>The movement outboard at the arch, somewhere between the wheel centre and the top of the tyre.</summary>
    public static SideTravel Outboard(IReadOnlyList<PathPlace> path)
    {
        var lines = new List<(double, double)>(path.Count);
        foreach (var place in path) lines.Add((-place.InboardMm, Math.Max(0, -place.LeanPerMm)));
        return From(lines);
    }

    /// <summary>
    /// The movement outboard at the arch with the wheel at one place; negative = inboard. Unlike the others it regards this place only, not the way there.
    /// </summary>
    public static double OutboardAtMm(in PathPlace place, double radiusMm) => -place.InboardMm + (Math.Max(0, -place.LeanPerMm) * radiusMm);

    /// <summary>Keeps the lines that are the greatest at some radius of 0 or more, besides the 0 of ride height.</summary>
    private static SideTravel From(List<(double FixedMm, double PerRadius)> lines)
    {
        var kept = new List<(double FixedMm, double PerRadius)>();
        foreach (var line in lines.OrderByDescending(line => line.FixedMm).ThenByDescending(line => line.PerRadius))
        {
            // A later line is lower at radius 0, so it counts only where it is steeper than all before it.
            if (line is { FixedMm: <= 0, PerRadius: <= 0 } || (kept.Count > 0 && line.PerRadius <= kept[^1].PerRadius)) continue;
            while (kept.Count > 1 && Crossing(kept[^2], line) <= Crossing(kept[^2], kept[^1])) kept.RemoveAt(kept.Count - 1);
            kept.Add(line);
        }

        return new([.. kept]);
    }

    private static double Crossing((double FixedMm, double PerRadius) high, (double FixedMm, double PerRadius) steep) =>
        (high.FixedMm - steep.FixedMm) / (steep.PerRadius - high.PerRadius);
}

/// <summary>
/// What errors of a suspension's points leave open of the sideways way of the wheel: independent errors of every coordinate, each path
/// worked anew with one coordinate moved; to first order. Asking allocates nothing.
/// </summary>
internal sealed class SideTravelError
{
    private readonly (SideTravel More, SideTravel Less)[] _moved;
    private readonly double _share;

    /// <param name="moved">What travel uses with each coordinate a step greater, and smaller.</param>
    /// <param name="share">One standard deviation as a share of the whole way between both.</param>
    public SideTravelError((SideTravel More, SideTravel Less)[] moved, double share) => (_moved, _share) = (moved, share);

    /// <summary>Half width of the 90 % range of what travel uses with a tyre of this radius, mm.</summary>
    public double HalfWidthMm(double radiusMm)
    {
        var square = 0.0;
        foreach (var (more, less) in _moved)
        {
            var mm = _share * (more.TakesMm(radiusMm) - less.TakesMm(radiusMm));
            square += mm * mm;
        }

        return Uncertainty.StandardErrorsAtNinetyPct * Math.Sqrt(square);
    }
}
