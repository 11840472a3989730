namespace SetupService.Domain.Numerics.Smoothing;

/// <summary>
/// How much to smooth. Readings with these errors leave a sum of squared standardised residuals of n ± √(2 n) about the truth, n the
/// number of knots (Reinsch 1967); the lower end is taken, since up to n all of a gentle curvature may hide in the errors. A share of 1
/// goes through every reading, 0 is the straight line.
/// </summary>
internal static class Discrepancy
{
    private const int MostSteps = 100;
    private const double Close = 1e-12;

    /// <summary>The sum of squares that may be left; 0 for two knots, which always lie on a line.</summary>
    public static double Allowed(int knotCount) => knotCount - Math.Sqrt(2.0 * knotCount);

    /// <summary>The shares of R and B and the sum of squares they leave.</summary>
    public static (double TentShare, double ErrorShare, double SumOfSquares) Solve(SplineBands bands, ReadOnlySpan<double> values)
    {
        var aim = Allowed(values.Length);
        Span<double> curvatures = new double[bands.RowCount];
        Span<double> turned = new double[bands.RowCount];
        var tension = 0.0;
        var sum = 0.0;
        for (var step = 0; step < MostSteps; step++)
        {
            // (tension R + B) c = Qᵀ y; the residuals are S² Q c.
            var factors = bands.Factor(tension, 1);
            bands.Bends(values, curvatures);
            factors.Solve(curvatures);
            sum = Product(bands, curvatures, curvatures);
            if (sum <= aim * (1 + Close)) break;

            // Newton on 1 / √sum, which is concave in the tension and nearly straight: from the straight line up it never oversteps.
            bands.Tents(curvatures, turned);
            factors.Solve(turned);
            tension += sum * (Math.Sqrt(sum / aim) - 1) / Product(bands, curvatures, turned);
            if (!double.IsFinite(tension)) return (1, 0, 0);
        }

        return (tension / (1 + tension), 1 / (1 + tension), sum);
    }

    // aᵀ B b, as a sum over knots so that nothing cancels.
    private static double Product(SplineBands bands, ReadOnlySpan<double> a, ReadOnlySpan<double> b)
    {
        var sum = 0.0;
        for (var knot = 0; knot < bands.RowCount + 2; knot++) sum += bands.Variance(knot) * bands.Spread(a, knot) * bands.Spread(b, knot);
        return sum;
    }
}
