using System.Globalization;
using SetupService.Domain.Tests.Wear.Simulation;

namespace SetupService.Domain.Tests.Wear.Diagnosis;

/// <summary>
/// Probabilities told are held to how often causes are there, over simulated cars the diagnosis knows nothing of. The daily run takes the
/// first 2,000 of the 20,000 cars the long run takes, and allows for what so few cannot tell.
/// </summary>
public sealed class CalibrationTests
{
    private const int Seed = 20261129;
    private const int ManyCars = 20_000;
    private const int FewCars = 2_000;

    /// <summary>How far told and found may lie apart in a tenth of probability: what docs/methods/wear-diagnosis promises.</summary>
    private const double Points = 0.05;

    /// <summary>Standard errors of the sample the daily run adds to it: 95 % of samples of a model that keeps the promise lie within two.</summary>
    private const double Errors = 2;

    /// <summary>A tenth with fewer diagnoses would pass by its own noise: two standard errors of a half are then ±0.1.</summary>
    private const int Enough = 100;

    [LongFact]
    [Trait("Category", "Long")]
    public void Causes_told_with_a_probability_are_there_so_often_over_many_cars()
    {
        var reliability = Reliability.Of(SimulatedCars.Make(Seed, ManyCars));
        Write(reliability);

        foreach (var bin in reliability.Bins)
            AssertTold(bin, 4 * Enough, Points);
    }

    [Fact]
    public void Causes_told_with_a_probability_are_there_so_often_over_a_few_cars()
    {
        foreach (var bin in Reliability.Of(SimulatedCars.Make(Seed, FewCars)).Bins)
            AssertTold(bin, Enough, Points + (Errors * bin.StandardError));
    }

    // The rule must be able to fail: the same cars with their faults dealt round by one are not as told.
    [Fact]
    public void Faults_of_another_car_are_not_as_told()
    {
        var cars = SimulatedCars.Make(Seed, 300);
        var reliability = Reliability.Of([.. cars.Select((car, index) => new SimulatedCar { Case = car.Case, Faults = cars[(index + 1) % cars.Count].Faults })]);

        Assert.Contains(reliability.Bins, bin => bin.Count > 0 && Math.Abs(bin.Told - bin.Found) > Points + (Errors * bin.StandardError));
    }

    private static void AssertTold(Reliability.Bin bin, int least, double points)
    {
        var told = string.Create(CultureInfo.InvariantCulture, $"told {bin.Told:0.000}, found {bin.Found:0.000} of {bin.Count}, allowed {points:0.000}");
        Assert.True(bin.Count >= least, $"too few to tell: {told}");
        Assert.True(Math.Abs(bin.Told - bin.Found) <= points, told);
    }

    /// <summary>Where asked, the picture of docs/methods/wear-diagnosis, and the figures behind it by bin and by cause.</summary>
    private static void Write(Reliability reliability)
    {
        if (Environment.GetEnvironmentVariable("SETUP_SERVICE_WRITE_CALIBRATION") is not { Length: > 0 } folder) return;
        File.WriteAllText(Path.Combine(folder, "wear-calibration.svg"), ReliabilityPicture.Draw(reliability.Bins, ManyCars));
        File.WriteAllLines(Path.Combine(folder, "wear-calibration.txt"),
        [
            "told    found   of      by probability told",
            .. reliability.Bins.Select(Line),
            "",
            "told    found   of      by cause",
            .. reliability.ByCause.Select(one => $"{Line(one.Bin)}{one.Cause}"),
        ]);

        static string Line(Reliability.Bin bin) => string.Create(CultureInfo.InvariantCulture, $"{bin.Told:0.000}   {bin.Found:0.000}   {bin.Count,-8}");
    }
}
