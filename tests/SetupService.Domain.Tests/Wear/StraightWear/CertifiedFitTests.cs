using SetupService.Domain.Tests.TestData;
using SetupService.Domain.Wear.Readings;
using SetupService.Domain.Wear.StraightWear;

namespace SetupService.Domain.Tests.Wear.StraightWear;

/// <summary>The fit against certified values of NIST's Statistical Reference Datasets: one clock (Norris) and two (Pontius, x and x²).</summary>
public sealed class CertifiedFitTests
{
    // Norris: y = b0 + b1 x. Depth is its opposite, so that wear is the slope; all zones carry the same data, so the pooled scatter is the certified one.
    [Fact]
    public void One_clock_gives_the_certified_line()
    {
        var readings = CsvTable.Rows("norris.csv").Select(row => Reading(row.Number("x"), 0, -row.Number("y"))).ToArray();

        var fit = WearFit.Fit(readings, null)!;

        Assert.Equal(WearClock.Road, fit.Design.Clock);
        Assert.Equal(1.00211681802045, Rate(fit, new(1, 0)), 1e-13);
        Assert.Equal(0.429796848199937e-3, Error(fit, new(1, 0)), 1e-14);
        Assert.Equal(-0.262323073774029, -AtZero(fit), 1e-11);
        Assert.Equal(0.884796396144373, fit.Scatter.StandardDeviationMm, 1e-12);
        Assert.Equal(3 * 34, fit.Scatter.DegreesOfFreedom);
    }

    // Pontius: y = b0 + b1 x + b2 x², two clocks that run nearly together. Scaled by 1e4, so that the scatter is above the least one.
    [Fact]
    public void Two_clocks_give_the_certified_plane()
    {
        var readings = CsvTable.Rows("pontius.csv")
            .Select(row => Reading(row.Number("x"), row.Number("x") * row.Number("x"), -1e4 * row.Number("y"))).ToArray();

        var fit = WearFit.Fit(readings, null)!;

        Assert.Equal(WearClock.Both, fit.Design.Clock);
        Assert.Equal(0.732059160401003e-6, Rate(fit, new(1, 0)) / 1e4, 1e-17);
        Assert.Equal(0.157817399981659e-9, Error(fit, new(1, 0)) / 1e4, 1e-20);
        Assert.Equal(-0.316081871345029e-14, Rate(fit, new(0, 1)) / 1e4, 1e-25);
        Assert.Equal(0.486652849992036e-16, Error(fit, new(0, 1)) / 1e4, 1e-27);
        Assert.Equal(0.673565789473684e-3, -AtZero(fit) / 1e4, 1e-13);
        Assert.Equal(0.205177424076185e-3, fit.Scatter.StandardDeviationMm / 1e4, 1e-14);
    }

    private static DepthReading Reading(double roadKm, double laps, double depth) => new(roadKm, laps, new(depth, depth, depth));

    // Of the free fit: no rate of a forecast is below zero, and the second of Pontius' is.
    private static double Rate(WearFit fit, TyreUse use) => fit.Zones.Centre.FreeLostOfMixMm.Dot(fit.Design.Share(use)!.Value);

    private static double Error(WearFit fit, TyreUse use) => fit.Scatter.StandardDeviationMm * Math.Sqrt(fit.Design.Variance(fit.Design.Share(use)!.Value));

    private static double AtZero(WearFit fit)
    {
        var (road, track) = fit.Design.Place(Reading(0, 0, 0));
        return fit.Zones.Centre.MeanDepthMm - fit.Zones.Centre.FreeLostOfMixMm.Dot(road, track);
    }
}
