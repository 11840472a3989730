using SetupService.Domain.Numerics.Statistics;
using Normal = MathNet.Numerics.Distributions.Normal;

namespace SetupService.Domain.Tests.Numerics.Statistics;

/// <summary>Normal and Student's t against MathNet.Numerics, and against the tables everybody has.</summary>
public sealed class DistributionTests
{
    [Fact]
    public void The_normal_distribution_is_the_librarys()
    {
        for (var place = -8.0; place <= 8; place += 0.37)
            Assert.Equal(Normal.CDF(0, 1, place), NormalDistribution.Below(place), 1e-13);
        foreach (var share in (double[])[1e-12, 1e-6, 0.01, 0.3, 0.5, 0.7, 0.95, 0.999, 1 - 1e-9])
            Assert.Equal(share, NormalDistribution.Below(NormalDistribution.Quantile(share)), 1e-13);
        Assert.Equal(Normal.InvCDF(0, 1, 0.975), NormalDistribution.Quantile(0.975), 1e-10);
    }

    [Fact]
    public void The_ends_of_the_normal_distribution_are_finite()
    {
        Assert.Equal(8.3, NormalDistribution.Quantile(1));
        Assert.Equal(-8.3, NormalDistribution.Quantile(0));
        Assert.Equal(1, NormalDistribution.Below(1e300));
        Assert.Equal(0, NormalDistribution.Below(double.NegativeInfinity));
    }

    [Theory]
    [InlineData(1)]
    [InlineData(2)]
    [InlineData(3)]
    [InlineData(4)]
    [InlineData(7)]
    [InlineData(30)]
    [InlineData(591)]
    [InlineData(5000)]
    public void Students_t_is_the_librarys(int degreesOfFreedom)
    {
        var closely = degreesOfFreedom > 2000 ? 1e-6 : 1e-12;
        for (var place = -9.0; place <= 9; place += 0.61)
            Assert.Equal(MathNet.Numerics.Distributions.StudentT.CDF(0, 1, degreesOfFreedom, place), StudentT.Below(place, degreesOfFreedom), closely);
        foreach (var share in (double[])[0.5, 0.6, 0.8, 0.95, 0.975, 0.999])
            Assert.Equal(MathNet.Numerics.Distributions.StudentT.InvCDF(0, 1, degreesOfFreedom, share), StudentT.UpperQuantile(share, degreesOfFreedom), 1e-5);
    }

    // 95 % quantiles as every table of Student's t prints them.
    [Theory]
    [InlineData(1, 6.314)]
    [InlineData(3, 2.353)]
    [InlineData(6, 1.943)]
    [InlineData(12, 1.782)]
    [InlineData(120, 1.658)]
    public void The_quantile_of_a_ninety_percent_range_is_the_tables(int degreesOfFreedom, double quantile) =>
        Assert.Equal(quantile, StudentT.UpperQuantile(0.95, degreesOfFreedom), 0.0005);
}
