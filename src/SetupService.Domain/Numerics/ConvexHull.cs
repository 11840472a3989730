namespace SetupService.Domain.Numerics;

/// <summary>The convex hull of points in a plane.</summary>
public static class ConvexHull
{
    /// <summary>The corners of the outline in order, by the monotone chain of A. M. Andrew (1979).</summary>
    public static IReadOnlyList<(double X, double Y)> Compute(IEnumerable<(double X, double Y)> points)
    {
        ArgumentNullException.ThrowIfNull(points);
        var sorted = points.Distinct().OrderBy(point => point.X).ThenBy(point => point.Y).ToList();
        if (sorted.Count < 3) return sorted;
        var lower = Chain(sorted);
        sorted.Reverse();
        var upper = Chain(sorted);
        return [.. lower.SkipLast(1), .. upper.SkipLast(1)];
    }

    private static List<(double X, double Y)> Chain(List<(double X, double Y)> sorted)
    {
        var chain = new List<(double X, double Y)>();
        foreach (var point in sorted)
        {
            while (chain.Count > 1 && Turn(chain[^2], chain[^1], point) <= 0) chain.RemoveAt(chain.Count - 1);
            chain.Add(point);
        }

        return chain;
    }

    private static double Turn((double X, double Y) a, (double X, double Y) b, (double X, double Y) c) =>
        ((b.X - a.X) * (c.Y - a.Y)) - ((b.Y - a.Y) * (c.X - a.X));
}
