using System.Runtime.CompilerServices;

namespace SetupService.Domain.Wear.Forecast;

/// <summary>Even steps along a logarithm, and how the weight lies on them.</summary>
/// <param name="From">The first node.</param>
/// <param name="Step">From node to node.</param>
internal readonly record struct GridAxis(double From, double Step)
{
    // Standard deviations of the weight that the steps reach over to each side when they are laid again.
    private const double Reach = 4.2;

    // Nodes further apart than this, in standard deviations, are laid again.
    private const double WidestStep = 0.9;

    private readonly double _perStep = 1 / Step;

    /// <summary>Mean of the weight, as a logarithm.</summary>
    public double Mean { get; private init; }

    /// <summary>Standard deviation of the weight, as a logarithm.</summary>
    public double Deviation { get; private init; }

    /// <summary>True where the steps are short beside the standard deviation.</summary>
    public bool IsFine => Step <= WidestStep * Deviation;

    /// <summary>Steps from end to end.</summary>
    public static GridAxis Over(double from, double to, int count) => new(from, (to - from) / (count - 1));

    /// <summary>The logarithm at a node.</summary>
    public double At(int node) => From + (node * Step);

    /// <summary>Where a logarithm is, in nodes.</summary>
    public double Place(double log) => (log - From) * _perStep;

    /// <summary>The same with the weight on its nodes: their sum, and the sums of their number and its square.</summary>
    public GridAxis Weighed(double sum, double byNode, double bySquare)
    {
        var mean = byNode / sum;
        return this with { Mean = From + (mean * Step), Deviation = Step * Math.Sqrt(Math.Max(0, (bySquare / sum) - (mean * mean))) };
    }

    /// <summary>Steps over where the weight is. Weight on a single node says no more than that it is narrower than the steps.</summary>
    public GridAxis Nearer(int count)
    {
        var half = Reach * Math.Max(Deviation, Step / 2);
        return Over(Mean - half, Mean + half, count);
    }
}

/// <summary>Weights on evenly spaced nodes, summed up to a place.</summary>
internal static class CumulativeWeights
{
    /// <summary>Cumulative weight at each node: half of its own, and what Euler and Maclaurin's formula adds for the slope there.</summary>
    public static void Fill(ReadOnlySpan<double> weights, Span<double> below)
    {
        var sum = 0.0;
        for (var i = 0; i < weights.Length; i++)
        {
            var slope = (i + 1 < weights.Length ? weights[i + 1] : 0) - (i > 0 ? weights[i - 1] : 0);
            below[i] = Math.Max(0, sum + (weights[i] / 2) - (slope / 24));
            sum += weights[i];
        }
    }

    /// <summary>Cumulative weight between nodes: the cubic that has the weights as its slopes.</summary>
    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    public static double At(ReadOnlySpan<double> weights, ReadOnlySpan<double> below, double place)
    {
        if (!(place > 0)) return 0;
        var last = weights.Length - 1;
        if (place >= last) return below[last] + (weights[last] / 2);
        var i = (int)place;
        var (t, rise, from, to) = (place - i, below[i + 1] - below[i], weights[i], weights[i + 1]);
        return below[i] + (t * (from + (t * ((3 * rise) - (2 * from) - to + (t * (from + to - (2 * rise)))))));
    }
}
