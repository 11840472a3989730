using Xunit.Abstractions;

namespace SetupService.Domain.Tests.Wear.SecondSimulation;

/// <summary>
/// What the diagnosis tells of cars of a simulator written apart from the first one. The daily test asks of a few hundred cars; the long one of thousands from other seeds, and
/// prints the figures. Nothing of either simulator is moved to meet them; how signs are weighed was developed on cars of seeds 2,000,000 to 5,002,999.
/// <para>
/// Targets: every statement alike at most 5 points off on average, and no bin of 300 off by more than 12. History of the figures: docs/methods/wear-diagnosis.
/// </para>
/// </summary>
public sealed class SecondCalibrationTests(ITestOutputHelper output)
{
    private const int FirstSeed = 100_000;
    private const int FirstSeedOfLong = 10_000_000;
    private const int Cars = 250;
    private const int CarsOfLong = 3000;
    private const double MeanTargetPoints = 5;

    // A few hundred cars scatter by more than thousands do.
    private const double MeanOfFewPoints = 6.5;

    private const double MostTargetPoints = 12;

    [Fact]
    public void A_few_hundred_cars_are_told_about_as_often_as_true()
    {
        var told = ToldAgainstTrue.Ask(FirstSeed, Cars);
        output.WriteLine(told.Report());
        Assert.True(told.Count > 2000 && told.TrueCount > 200, told.Report());
        Assert.True(told.MeanOffPointsOfStatements() <= MeanOfFewPoints, told.Report());

        // What is told likely is true far more often than what is told unlikely.
        var bins = told.Bins();
        Assert.True(bins[^1].Told > 0.9 && bins[^1].Count >= 30 && bins[0].Told < 0.1, told.Report());
        Assert.True(bins[^1].True > 6 * bins[0].True, told.Report());
    }

    [LongFact]
    [Trait("Category", "Long")]
    public void Of_thousands_of_cars_what_is_told_is_true_as_often_as_told()
    {
        var told = ToldAgainstTrue.Ask(FirstSeedOfLong, CarsOfLong);
        output.WriteLine(told.Report());
        Assert.True(told.MeanOffPointsOfStatements() <= MeanTargetPoints, told.Report());
        Assert.True(told.MostOffPoints() <= MostTargetPoints, told.Report());
    }
}
