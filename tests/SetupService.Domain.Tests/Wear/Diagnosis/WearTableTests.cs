using SetupService.Domain.Wear.Diagnosis;

namespace SetupService.Domain.Tests.Wear.Diagnosis;

/// <summary>The table of causes is whole, and every row of it says where it comes from.</summary>
public sealed class WearTableTests
{
    [Fact]
    public void Every_row_names_its_source()
    {
        string[] sources =
        [
            .. WearTable.Priors.Select(row => row.Source), .. WearTable.Baselines.Select(row => row.Source),
            .. WearTable.Shifts.Select(row => row.Source), .. WearTable.Marks.Select(row => row.Source), .. WearTable.DraggedEdge.Select(row => row.Source),
        ];

        Assert.All(sources, source => Assert.True(source.Length > 5, source));
    }

    [Fact]
    public void Every_cause_has_a_prior_and_something_that_shows_it()
    {
        var causes = Enum.GetValues<WearCause>().Where(cause => cause != WearCause.Normal);

        Assert.All(causes, cause =>
        {
            Assert.Single(WearTable.Priors, row => row.Cause == cause);
            Assert.True(WearTable.Shifts.Any(row => row.Cause == cause) || WearTable.Marks.Any(row => row.Cause == cause), cause.ToString());
        });
    }

    [Fact]
    public void Every_sign_has_one_baseline_and_every_mark_a_chance_without_any_cause()
    {
        Assert.All(Enum.GetValues<WearSign>(), sign => Assert.Single(WearTable.Baselines, row => row.Sign == sign));
        Assert.All(Enum.GetValues<WearMark>(), mark => Assert.Single(WearTable.Marks, row => row.Mark == mark && row.Cause == WearCause.Normal));
    }

    [Fact]
    public void Chances_and_spreads_can_be()
    {
        Assert.All(WearTable.Marks, row => Assert.InRange(row.Probability, 0.001, 0.999));
        Assert.All(WearTable.Baselines, row => Assert.True(row.Spread > 0));
        Assert.All(WearTable.Priors, row => Assert.InRange(Math.Max(row.Front, row.Rear), 0.01, 0.5));
    }

    // Opposite causes pull the signs that tell them apart to opposite sides.
    [Theory]
    [InlineData(WearCause.LowNegativeCamber, WearCause.HighNegativeCamber, WearSign.ShoulderDifference)]
    [InlineData(WearCause.ToeIn, WearCause.ToeOut, WearSign.ShoulderDifference)]
    [InlineData(WearCause.ToeIn, WearCause.ToeOut, WearSign.ToeSet)]
    [InlineData(WearCause.UnderInflation, WearCause.OverInflation, WearSign.CrownDifference)]
    [InlineData(WearCause.UnderInflation, WearCause.OverInflation, WearSign.PressureDeviation)]
    [InlineData(WearCause.BelowTemperatureWindow, WearCause.AboveTemperatureWindow, WearSign.TemperatureInWindow)]
    public void Opposite_causes_pull_to_opposite_sides(WearCause one, WearCause other, WearSign sign) =>
        Assert.True(Mean(one, sign) * Mean(other, sign) < 0);

    private static double Mean(WearCause cause, WearSign sign) => WearTable.Shifts.Where(row => row.Cause == cause && row.Sign == sign).Sum(row => row.Mean);
}
