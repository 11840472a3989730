using SetupService.Domain.Fitment.Outlines;
using SetupService.Domain.Wheels;

namespace SetupService.Domain.Tests.Fitment.Outlines;

public sealed class OutlineTests
{
    // A cubic at its middle is (P0 + 3 P1 + 3 P2 + P3) / 8, by the definition of the Bernstein polynomials.
    [Fact]
    public void A_curve_passes_through_its_middle()
    {
        var curve = new Outline(new(0, 0), OutlineStep.Curve(new(0, 8), new(8, 8), new(16, 0)));

        Assert.Equal(new OutlinePoint((3 * 8 + 16) / 8.0, 6), curve.Polygon(2)[1]);
    }

    [Fact]
    public void A_mirrored_outline_comes_back_on_the_other_side()
    {
        var half = new Outline(new(4, 0), OutlineStep.Line(new(4, 2)), OutlineStep.Curve(new(4, 3), new(3, 3), new(1, 3)));

        var whole = half.WithMirrorAcross(1);

        Assert.Equal(new OutlinePoint(-2, 0), whole.End);
        Assert.Equal(new OutlinePoint(-1, 3), whole.Steps[2].FirstControl);
        Assert.Equal(new OutlineExtremes(4, -2, 3, 0), whole.Extremes);
    }

    [Fact]
    public void A_profile_keeps_only_what_lies_within_the_tyre()
    {
        var envelope = Domain.Fitment.Envelope.Compute(DemoCar.Fitting());
        ProfilePoint[] profile = [new(-40, 168), new(18, 165), new(20, 4000), new(4000, 100)];

        var outline = ProfileOutline.Create(profile, 5, envelope);

        Assert.Equal([new(-35, 168), new(23, 165)], outline!.Polygon(1));
        Assert.Null(ProfileOutline.Create([new(0, 100)], 0, envelope));
        Assert.Null(ProfileOutline.Create([], 0, envelope));
    }

    // 225/45R17 on 7.5 in of offset 45: the centre plane stands 45 mm inboard, half the width is 112.5 and the radius 317 mm.
    [Theory]
    [InlineData(0, 0, true)]
    [InlineData(0, -0.001, false)]
    [InlineData(0, 317, true)]
    [InlineData(0, 317.001, false)]
    [InlineData(-45 + 112.5 + 317, 100, true)]
    [InlineData(-45 + 112.5 + 317.001, 100, false)]
    [InlineData(-45 - 112.5 - 317, 100, true)]
    [InlineData(-45 - 112.5 - 317.001, 100, false)]
    public void A_profile_is_kept_up_to_the_ends_themselves(double stationMm, double radiusMm, bool isKept)
    {
        var envelope = Domain.Fitment.Envelope.Compute(DemoCar.Fitting());

        var outline = ProfileOutline.Create([new(-40, 168), new(18, 165), new(stationMm, radiusMm)], 0, envelope);

        Assert.Equal(isKept ? 3 : 2, outline!.Polygon(1).Count);
    }

    [Fact]
    public void The_hub_ends_at_its_face_and_at_its_spigot()
    {
        var hub = HubOutlines.Create(DemoCar.Axle().Hub, DemoCar.Fitting());

        Assert.Contains(hub.Flange.Steps, step => step.End == new OutlinePoint(0, 63.4 / 2));
        Assert.Contains(hub.Flange.Steps, step => step.End == new OutlinePoint(0, hub.FlangeRadiusMm));
        Assert.True(hub.FlangeRadiusMm > 108 / 2.0);
    }

    [Fact]
    public void An_outline_ends_where_its_last_piece_does()
    {
        Assert.Equal(new OutlinePoint(1, 2), new Outline(new(0, 0), OutlineStep.Line(new(1, 2))).End);
        Assert.Equal(new OutlinePoint(3, 4), new Outline(new(3, 4)).End);
    }
}
