namespace SetupService.Domain.Numerics.Smoothing;

/// <summary>
/// How much to smooth: as much as leaves a sum of squared standardised residuals of no more than the number of knots, what
/// readings with these errors would leave about the truth (Reinsch 1967). A share of 1 goes through every reading, 0 is the straight line.
/// </summary>
internal static class Discrepancy
{
    private const int MostSteps = 100;
    private const double Close = 1e-12;

    /// <summary>The shares of R and B and the sum of squares they leave.</summary>
    public static (double TentShare, double ErrorShare, double SumOfSquares) Solve(SplineBands bands, ReadOnlySpan<double> values)
    {
        var aim = values.Length;
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
