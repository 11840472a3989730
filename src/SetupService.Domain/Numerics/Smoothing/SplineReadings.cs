namespace SetupService.Domain.Numerics.Smoothing;

/// <summary>Readings in ascending order of place; what was read at exactly one place is one mean with its count.</summary>
internal sealed class SplineReadings
{
    // Places closer than this share of the whole range are one: no curve could tell them apart.
    private const double SamePlaceShare = 1e-5;

    private SplineReadings(double[] places, double[] values, int[] counts, int[] of)
    {
        Places = places;
        Values = values;
        Counts = counts;
        PlaceOf = of;
    }

    /// <summary>Different places, ascending; at least two.</summary>
    public double[] Places { get; }

    /// <summary>Mean of what was read at each place.</summary>
    public double[] Values { get; }

    /// <summary>How many readings each mean has.</summary>
    public int[] Counts { get; }

    /// <summary>For every reading, in the caller's order, the index of its place.</summary>
    public int[] PlaceOf { get; }

    /// <summary>Null where a number is not finite or fewer than two different places were read.</summary>
    public static SplineReadings? From(ReadOnlySpan<double> places, ReadOnlySpan<double> values)
    {
        var order = new int[places.Length];
        for (var i = 0; i < order.Length; i++)
        {
            if (!double.IsFinite(places[i]) || !double.IsFinite(values[i])) return null;
            order[i] = i;
        }

        if (order.Length < 2) return null;
        Array.Sort(places.ToArray(), order);
        var samePlace = SamePlaceShare * (places[order[^1]] - places[order[0]]);
        var (count, first) = (0, double.NaN);
        var (means, heights, counts, of) = (new double[order.Length], new double[order.Length], new int[order.Length], new int[order.Length]);
        foreach (var i in order)
        {
            if (count == 0 || places[i] - first > samePlace) (count, first) = (count + 1, places[i]);

            // A running mean: equal readings stay exactly what they are.
            var at = count - 1;
            counts[at]++;
            heights[at] += (places[i] - heights[at]) / counts[at];
            means[at] += (values[i] - means[at]) / counts[at];
            of[i] = at;
        }

        return count < 2 ? null : new(heights[..count], means[..count], counts[..count], of);
    }
}
