using CsCheck;
using SetupService.Domain.Fitment;
using SetupService.Domain.Fitment.Outlines;

namespace SetupService.Domain.Tests.Fitment.Outlines;

public sealed class FittingOutlinesTests
{
    private const int PiecesPerCurve = 32;

    private static readonly string[] Markings =
        ["225/45R17 91W", "165/70R10 72T", "80/80R8 30J", "335/20R22 100Y", "455/100R26 120Y", "31x10.50R15LT 109Q", "185R14C 102Q"];

    private static readonly Gen<Fitting> AnyFitting = Gen.Select(
        Gen.Int[0, Markings.Length - 1],
        Gen.Double[3, 16],
        Gen.Double[-150, 150],
        Gen.Double[0, 80]).Select((marking, widthIn, offsetMm, spacerMm) => DemoCar.Fitting(widthIn, offsetMm, Markings[marking], spacerMm));

    // Every point of the line itself, not the control points: no curve may bulge past the envelope or stop short of it.
    [Fact]
    public void The_drawn_tyre_and_rim_reach_exactly_as_far_as_the_envelope() => AnyFitting.Sample(fitting =>
    {
        var outlines = FittingOutlines.Create(fitting);
        var envelope = Envelope.Compute(fitting);
        var points = outlines.Tyre.Polygon(PiecesPerCurve).Concat(outlines.Rim.Polygon(PiecesPerCurve)).ToList();

        Assert.Equal(envelope.OutboardMm, points.Max(point => point.StationMm), 9);
        Assert.Equal(envelope.InboardMm, points.Min(point => point.StationMm), 9);
        Assert.Equal(envelope.RadiusMm, points.Max(point => point.HeightMm), 9);
        Assert.Equal(-envelope.RadiusMm, outlines.Extremes.LowestMm, 9);
        Assert.Equal(envelope.OutboardMm, outlines.Extremes.OutermostMm, 9);
        Assert.Equal(envelope.InboardMm, outlines.Extremes.InnermostMm, 9);
    });

    [Fact]
    public void The_tyre_is_as_wide_as_its_section_at_its_widest_radius() => AnyFitting.Sample(fitting =>
    {
        var envelope = Envelope.Compute(fitting);
        var tyre = FittingOutlines.Create(fitting).TyreBody;
        var widest = tyre.Polygon(PiecesPerCurve).Where(point => Math.Abs(point.HeightMm - envelope.WidestRadiusMm) < 1e-9).ToList();

        Assert.Equal(2, widest.Count);
        Assert.Equal(envelope.SectionWidthMm, widest[0].StationMm - widest[1].StationMm, 9);
    });

    // 225/45R17 on its measuring rim of 7.5: 225 wide and 634 across (both from memory of tyre tables, and d + 2H = 432 + 202).
    // JIS D 4218:2021, Table 3: flanges of contour J are 11.0 wide and 17.5 high, so 190.5 + 22 = 212.5 over them.
    [Fact]
    public void A_common_fitting_has_the_dimensions_of_the_tables()
    {
        var outlines = FittingOutlines.Create(DemoCar.Fitting());

        Assert.Equal(new OutlineExtremes(-45 + 112.5, -45 - 112.5, 317, -317), outlines.Extremes);
        Assert.Equal(-45 + 106.25, outlines.Rim.Extremes.OutermostMm, 9);
        Assert.Equal(-45 - 106.25, outlines.Rim.Extremes.InnermostMm, 9);
        Assert.Equal(216 + 17.5, outlines.Rim.Extremes.HighestMm, 9);
        Assert.Equal((216 + 317) / 2.0, outlines.EdgeHeightMm, 9);
        Assert.Equal(new OutlinePoint(-45 + 95.25, 216), outlines.TyreBody.Start);
        Assert.Equal(new OutlinePoint(-45 - 95.25, 216), outlines.TyreBody.End);
    }

    [Fact]
    public void The_disc_lies_on_the_hub_or_on_the_spacer()
    {
        var without = FittingOutlines.Create(DemoCar.Fitting());
        var with = FittingOutlines.Create(DemoCar.Fitting(spacerMm: 12));

        Assert.Null(without.Spacer);
        Assert.Equal(0, without.Disc.Start.StationMm);
        Assert.Equal(12, with.Disc.Start.StationMm);

        // The pad is 12 mm thick.
        Assert.Equal((12, 24), (without.Disc.End.StationMm, with.Disc.End.StationMm));
        Assert.Equal(12, with.Spacer!.Extremes.OutermostMm);
        Assert.Equal(0, with.Spacer.Extremes.InnermostMm);
    }

    [Fact]
    public void A_narrow_tyre_on_a_wide_rim_is_dimensioned_at_the_flange()
    {
        var outlines = FittingOutlines.Create(DemoCar.Fitting(11, 45, "205/45R17 88W"));

        Assert.Equal(216 + 17.5, outlines.EdgeHeightMm, 9);
    }
}
