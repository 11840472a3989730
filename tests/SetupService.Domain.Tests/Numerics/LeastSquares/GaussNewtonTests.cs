using SetupService.Domain.Numerics.LeastSquares;
using SetupService.Domain.Tests.TestData;

namespace SetupService.Domain.Tests.Numerics.LeastSquares;

public sealed class GaussNewtonTests
{
    // NIST Statistical Reference Datasets, nonlinear regression, Misra1a: certified values and both prescribed starts, as public
    // test suites of numerical libraries quote them. The certified standard errors go with the residuals' own scatter.
    [Theory]
    [InlineData(500, 0.0001)]
    [InlineData(250, 0.0005)]
    public void The_certified_values_of_a_reference_data_set_are_found(double firstStart, double secondStart)
    {
        var rows = CsvTable.Rows("misra1a.csv");
        Span<double> unknowns = [firstStart, secondStart];
        Span<double> factors = stackalloc double[2];

        var model = new Adsorption([.. rows.Select(row => row.Number("pressure"))], [.. rows.Select(row => row.Number("volume"))]);
        Assert.True(GaussNewton.TryFit(model, unknowns, factors, out var sumOfSquares));

        var scatter = Math.Sqrt(sumOfSquares / 12);
        Assert.Equal(2.3894212918e2, unknowns[0], 1e-6);
        Assert.Equal(5.5015643181e-4, unknowns[1], 1e-12);
        Assert.Equal(1.2455138894e-1, sumOfSquares, 1e-10);
        Assert.Equal(2.7070075241, factors[0] * scatter, 1e-7);
        Assert.Equal(7.2668688436e-6, factors[1] * scatter, 1e-13);
    }

    // The triangle's product with its transpose has the certified standard errors on its diagonal; beside it stands what the inverse of the two normal equations has, worked here by its four entries.
    [Fact]
    public void What_a_fit_leaves_open_of_all_unknowns_together()
    {
        var rows = CsvTable.Rows("misra1a.csv");
        double[] pressures = [.. rows.Select(row => row.Number("pressure"))];
        var model = new Adsorption(pressures, [.. rows.Select(row => row.Number("volume"))]);
        double[] unknowns = [2.3894212918e2, 5.5015643181e-4], gradient = [0, 0], triangle = [1, 1, 1, 1];
        Assert.True(GaussNewton.TryCovarianceFactor(model, unknowns, triangle));

        var (first, both, second) = (0.0, 0.0, 0.0);
        for (var i = 0; i < pressures.Length; i++)
        {
            model.TryEvaluate(i, unknowns, gradient, out _);
            (first, both, second) = (first + (gradient[0] * gradient[0]), both + (gradient[0] * gradient[1]), second + (gradient[1] * gradient[1]));
        }

        var scatter = Math.Sqrt(1.2455138894e-1 / 12);
        Assert.Equal(0, triangle[1]);
        Assert.Equal(2.7070075241, triangle[0] * scatter, 1e-7);
        Assert.Equal(7.2668688436e-6, double.Hypot(triangle[2], triangle[3]) * scatter, 1e-13);
        Assert.Equal(1, triangle[0] * triangle[2] / (-both / ((first * second) - (both * both))), 1e-6);
    }

    [Fact]
    public void Unknowns_that_cannot_be_told_apart_are_no_fit()
    {
        Span<double> unknowns = [250, 0.0005];
        Span<double> factors = stackalloc double[2];

        Assert.False(GaussNewton.TryFit(new Adsorption([100, 100, 100], [13, 13.1, 12.9]), unknowns, factors, out _));
        Assert.False(GaussNewton.TryCovarianceFactor(new Adsorption([100, 100, 100], [13, 13.1, 12.9]), unknowns, new double[4]));
        Assert.False(GaussNewton.TryFit(new Adsorption([100, 200, double.NaN], [13, 25, 36]), unknowns, factors, out _));
    }

    private sealed class Adsorption(double[] pressures, double[] volumes) : IFittedModel
    {
        public int UnknownCount => 2;

        public int ReadingCount => pressures.Length;

        public bool TryEvaluate(int reading, ReadOnlySpan<double> unknowns, Span<double> gradient, out double residual)
        {
            var left = Math.Exp(-unknowns[1] * pressures[reading]);
            gradient[0] = 1 - left;
            gradient[1] = unknowns[0] * pressures[reading] * left;
            residual = volumes[reading] - (unknowns[0] * (1 - left));
            return double.IsFinite(residual);
        }
    }
}
