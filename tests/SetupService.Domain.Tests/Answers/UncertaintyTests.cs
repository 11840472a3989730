using SetupService.Domain.Answers;

namespace SetupService.Domain.Tests.Answers;

public sealed class UncertaintyTests
{
    // The 95 % quantile of the normal distribution as every printed table has it, 1.645; its further digits by the error
    // function's series, worked here.
    [Fact]
    public void The_90_percent_range_leaves_out_5_percent_at_either_end()
    {
        Assert.Equal(1.645, Uncertainty.StandardErrorsAtNinetyPct, 3e-4);
        Assert.Equal(0.95, NormalShareBelow(Uncertainty.StandardErrorsAtNinetyPct), 1e-14);

        var range = Uncertainty.Ninety(6, 0.2);
        Assert.Equal((6.0, 90.0), (range.Value, range.LevelPct));
        Assert.Equal(6 - (0.2 * Uncertainty.StandardErrorsAtNinetyPct), range.Lower, 1e-15);
        Assert.Equal(12, range.Lower + range.Upper, 1e-14);
    }

    private static double NormalShareBelow(double quantile)
    {
        var (sum, term) = (0.0, quantile);
        for (var n = 1; n < 100; n++)
        {
            sum += term;
            term *= quantile * quantile / ((2 * n) + 1);
        }

        return 0.5 + (sum * Math.Exp(-quantile * quantile / 2) / Math.Sqrt(2 * Math.PI));
    }
}
