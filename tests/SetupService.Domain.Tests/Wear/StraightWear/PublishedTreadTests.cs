using MathNet.Numerics;
using SetupService.Domain.Tests.TestData;
using SetupService.Domain.Wear.Readings;
using SetupService.Domain.Wear.StraightWear;

namespace SetupService.Domain.Tests.Wear.StraightWear;

/// <summary>The fit on tread data that were published.</summary>
public sealed class PublishedTreadTests
{
    private const double MmPerMil = 0.0254;
    private const double KmPerMile = 1.609344;

    // Tamhane and Dunlop, Statistics and Data Analysis, ch. 10, from memory: y = 360.64 − 7.281 x mil over thousands of miles,
    // 178.62 at 25; the 95 % range of the slope is −8.73 to −5.83 with 7 degrees of freedom.
    [Fact]
    public void A_textbooks_groove_depths_give_its_line()
    {
        var readings = CsvTable.Rows("groove-depth.csv")
            .Select(row => Reading(1000 * KmPerMile * row.Number("thousandMiles"), 0, MmPerMil * row.Number("depthMil"))).ToArray();

        var fit = WearFit.Fit(readings, null)!;

        var milPer1000Miles = 1 / MmPerMil;
        var perThousandMiles = new TyreUse(1000 * KmPerMile, 0);
        var rate = fit.Wear(TreadPlace.Centre, perThousandMiles)!.Value;
        Assert.Equal(7.281, rate.Value * milPer1000Miles, 0.0005);
        Assert.Equal(360.64, At(fit, 0), 0.005);
        Assert.Equal(178.62, At(fit, 25), 0.01);
        // The three zones are alike here, so the pooled scatter is the single one and only the quantile differs from the book's.
        var error = (rate.Upper - rate.Value) / fit.Scatter.Quantile * milPer1000Miles;
        Assert.Equal(8.73, 7.281 + (2.3646 * error), 0.005);
        Assert.Equal(5.83, 7.281 - (2.3646 * error), 0.005);

        double At(WearFit line, double thousandMiles) =>
            line.Design.DepthMm(line.Zones.Centre, Reading(1000 * KmPerMile * thousandMiles, 0, 0)) / MmPerMil;
    }

    // The curve in those data (a new tyre wears faster) is far beyond any gauge's error: the readings at both ends stand out.
    [Fact]
    public void A_bend_in_the_readings_stands_out_from_the_gauges_error()
    {
        var readings = CsvTable.Rows("groove-depth.csv")
            .Select(row => Reading(1000 * KmPerMile * row.Number("thousandMiles"), 0, MmPerMil * row.Number("depthMil"))).ToArray();

        var misfits = Misfit.Find(WearFit.Fit(readings, 0.05)!, readings, 0.05);

        Assert.Contains(misfits, one => one.Reading == 0 && one.AboveLineMm > 0.8);
    }

    // The same data: read so closely, they show that wear slows; the late rate is well below the line's (7.281 mil), near the 4.4 of their last four readings.
    [Fact]
    public void The_bend_of_a_textbooks_groove_is_seen_and_the_late_rate_used()
    {
        var readings = CsvTable.Rows("groove-depth.csv")
            .Select(row => Reading(1000 * KmPerMile * row.Number("thousandMiles"), 0, MmPerMil * row.Number("depthMil"))).ToArray();

        var fit = WearFit.FitLate(readings, 0.05)!;

        Assert.True(fit.Curve!.IsShown);
        var rate = fit.Wear(TreadPlace.Centre, new TyreUse(1000 * KmPerMile, 0))!.Value;
        Assert.InRange(rate.Value / MmPerMil, 3.9, 5.2);
        Assert.True(rate.Upper / MmPerMil < 7.281);
        Assert.False(WearFit.FitLate([.. Enumerable.Range(0, 9).Select(i => Reading(4000 * i, 0, 8 - (0.4 * i) + (0.02 * (i % 2))))], 0.05)!.Curve!.IsShown);
    }

    // fastR2::TireWear (Stichler, Richey and Mandel 1953): weight = 1.3265 + 1.1369 groove.
    [Fact]
    public void Two_ways_of_measuring_give_the_line_between_them()
    {
        var readings = CsvTable.Rows("tread-wear-methods.csv").Select(row => Reading(row.Number("groove"), 0, row.Number("weight"))).ToArray();

        var fit = WearFit.Fit([.. readings.Select(one => Reading(one.RoadKm, 0, -one.DepthMm.Centre))], null)!;

        Assert.Equal(1.1369, fit.Wear(TreadPlace.Centre, new(1, 0))!.Value.Value, 5e-5);
        Assert.Equal(1.3265, -fit.Design.DepthMm(fit.Zones.Centre, Reading(0, 0, 0)), 5e-5);
    }

    // Two clocks that move as somebody drives to track days, against the multiple regression of MathNet.Numerics.
    [Fact]
    public void Road_and_track_are_told_apart_as_a_library_does()
    {
        double[][] clocks = [[0, 0], [420, 18], [1900, 18], [2350, 41], [4100, 47], [4700, 80]];
        double[] depths = [7.9, 7.4, 7.3, 6.5, 6.2, 5.0];
        var expected = Fit.MultiDim(clocks, depths, intercept: true);

        var fit = WearFit.Fit([.. clocks.Zip(depths, (clock, depth) => Reading(clock[0], clock[1], depth))], null)!;

        Assert.Equal(-expected[1], fit.Wear(TreadPlace.Inner, new(1, 0))!.Value.Value, 1e-12);
        Assert.Equal(-expected[2], fit.Wear(TreadPlace.Inner, new(0, 1))!.Value.Value, 1e-12);
        Assert.Equal(expected[0] + (expected[1] * 4700) + (expected[2] * 80), fit.EndDepthMm(TreadPlace.Inner).Value, 1e-11);
    }

    private static DepthReading Reading(double roadKm, double laps, double depth) => new(roadKm, laps, new(depth, depth, depth));
}
