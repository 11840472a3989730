using System.Globalization;
using SetupService.Domain.Tests.Wear.Simulation;

namespace SetupService.Domain.Tests.Wear.Diagnosis;

/// <summary>Probabilities told are held to how often causes are there, over simulated cars the diagnosis knows nothing of.</summary>
public sealed class CalibrationTests
{
    private const int Seed = 20261129;
    private const int Cars = 20_000;
    private const int Enough = 400;
    private const double Points = 0.05;

    [Fact]
    public void Causes_told_with_a_probability_are_there_so_often()
    {
        var reliability = Reliability.Of(SimulatedCars.Make(Seed, Cars));
        Write(reliability);

        Assert.All(reliability.Bins.Where(bin => bin.Count >= Enough), bin => Assert.True(
            Math.Abs(bin.Told - bin.Found) <= Points,
            string.Create(CultureInfo.InvariantCulture, $"told {bin.Told:0.000}, found {bin.Found:0.000} of {bin.Count}")));
    }

    /// <summary>Where asked, the picture and the table of docs/methods/wear-diagnosis.</summary>
    private static void Write(Reliability reliability)
    {
        if (Environment.GetEnvironmentVariable("SETUP_SERVICE_WRITE_CALIBRATION") is not { Length: > 0 } folder) return;
        File.WriteAllText(Path.Combine(folder, "wear-calibration.svg"), ReliabilityPicture.Draw(reliability.Bins, Cars));
    }
}
