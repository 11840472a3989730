namespace SetupService.Domain.Numerics.Smoothing;

/// <summary>
/// How a cubic spline's value or slope at a place is made of the values and second derivatives at the two knots beside it.
/// Beyond the ends the second derivative is zero and the end slope goes on.
/// </summary>
internal readonly record struct SplineWeights
{
    /// <summary>The knot to the left.</summary>
    private int Left { get; init; }

    private double LeftValue { get; init; }

    private double RightValue { get; init; }

    private double LeftCurvature { get; init; }

    private double RightCurvature { get; init; }

    public static SplineWeights OfValue(ReadOnlySpan<double> knots, double place)
    {
        var left = LeftOf(knots, place);
        var gap = knots[left + 1] - knots[left];
        var right = (place - knots[left]) / gap;
        var inside = Math.Clamp(right, 0, 1);
        var perSlope = gap * gap / 6;

        // Inside, the cubic's own terms; outside, the slope it has at the end times the way from there.
        var beyond = right - inside;
        var leftCurvature = (Cube(1 - inside) - (1 - inside)) - (beyond * ((3 * (1 - inside) * (1 - inside)) - 1));
        var rightCurvature = (Cube(inside) - inside) + (beyond * ((3 * inside * inside) - 1));
        return new()
        {
            Left = left,
            LeftValue = 1 - right,
            RightValue = right,
            LeftCurvature = perSlope * leftCurvature,
            RightCurvature = perSlope * rightCurvature,
        };
    }

    public static SplineWeights OfSlope(ReadOnlySpan<double> knots, double place)
    {
        var left = LeftOf(knots, place);
        var gap = knots[left + 1] - knots[left];
        var inside = Math.Clamp((place - knots[left]) / gap, 0, 1);
        return new()
        {
            Left = left,
            LeftValue = -1 / gap,
            RightValue = 1 / gap,
            LeftCurvature = gap / 6 * (1 - (3 * (1 - inside) * (1 - inside))),
            RightCurvature = gap / 6 * ((3 * inside * inside) - 1),
        };
    }

    public double Of(ReadOnlySpan<double> values, ReadOnlySpan<double> curvatures) =>
        (LeftValue * values[Left]) + (RightValue * values[Left + 1])
        + (LeftCurvature * curvatures[Left]) + (RightCurvature * curvatures[Left + 1]);

    public double OnValue(int knot) => knot == Left ? LeftValue : knot == Left + 1 ? RightValue : 0;

    public double OnCurvature(int knot) => knot == Left ? LeftCurvature : knot == Left + 1 ? RightCurvature : 0;

    /// <summary>Takes <paramref name="share"/> times Qᵀ S² of the weights on values off <paramref name="bends"/>.</summary>
    public void TakeBends(SplineBands bands, double share, Span<double> bends)
    {
        for (var row = Math.Max(0, Left - 2); row < Math.Min(bands.RowCount, Left + 2); row++)
        {
            var (before, at, after) = bands.Differences(row);
            bends[row] -= share * (
                (before * bands.Variance(row) * OnValue(row))
                + (at * bands.Variance(row + 1) * OnValue(row + 1))
                + (after * bands.Variance(row + 2) * OnValue(row + 2)));
        }
    }

    private static int LeftOf(ReadOnlySpan<double> knots, double place)
    {
        var (low, high) = (0, knots.Length - 1);
        while (high - low > 1)
        {
            var middle = (low + high) / 2;
            if (knots[middle] <= place) low = middle;
            else high = middle;
        }

        return low;
    }

    private static double Cube(double value) => value * value * value;
}
