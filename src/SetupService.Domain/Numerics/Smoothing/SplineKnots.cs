namespace SetupService.Domain.Numerics.Smoothing;

/// <summary>Readings put in order for a spline: every place once, with the mean of what was read there weighted by the inverse variance.</summary>
internal sealed class SplineKnots
{
    // Places closer than this share of the whole range are one: their distance is lost in rounding.
    private const double SamePlaceShare = 1e-9;

    private SplineKnots(double[] places, double[] values, double[] standardErrors)
    {
        Places = places;
        Values = values;
        StandardErrors = standardErrors;
    }

    public double[] Places { get; }

    public double[] Values { get; }

    public double[] StandardErrors { get; }

    /// <summary>Null where a number is not finite, an error not above zero, or fewer than two places remain.</summary>
    public static SplineKnots? From(
        ReadOnlySpan<double> places, ReadOnlySpan<double> values, ReadOnlySpan<double> standardErrors, double mergeWithin)
    {
        var order = new int[places.Length];
        for (var i = 0; i < order.Length; i++)
        {
            if (!double.IsFinite(places[i]) || !double.IsFinite(values[i])) return null;
            if (!double.IsFinite(standardErrors[i]) || standardErrors[i] <= 0) return null;
            order[i] = i;
        }

        if (order.Length < 2) return null;
        Array.Sort(places.ToArray(), order);
        var samePlace = Math.Max(mergeWithin, SamePlaceShare * (places[order[^1]] - places[order[0]]));
        return Merge(places, values, standardErrors, order, samePlace);
    }

    private static SplineKnots? Merge(
        ReadOnlySpan<double> places, ReadOnlySpan<double> values, ReadOnlySpan<double> standardErrors, int[] order, double samePlace)
    {
        var (count, first) = (0, double.NaN);
        var (mergedPlaces, mergedValues, weights) = (new double[order.Length], new double[order.Length], new double[order.Length]);
        foreach (var i in order)
        {
            if (count == 0 || (places[i] > first && places[i] - first >= samePlace))
            {
                first = places[i];
                count++;
            }

            // A running mean: equal readings stay exactly what they are.
            var weight = 1 / (standardErrors[i] * standardErrors[i]);
            weights[count - 1] += weight;
            var share = weight / weights[count - 1];
            mergedPlaces[count - 1] += share * (places[i] - mergedPlaces[count - 1]);
            mergedValues[count - 1] += share * (values[i] - mergedValues[count - 1]);
        }

        if (count < 2) return null;
        var mergedErrors = new double[count];
        for (var i = 0; i < count; i++) mergedErrors[i] = 1 / Math.Sqrt(weights[i]);
        return new(mergedPlaces[..count], mergedValues[..count], mergedErrors);
    }
}
