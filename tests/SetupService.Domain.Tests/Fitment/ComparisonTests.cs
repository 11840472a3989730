using SetupService.Domain.Fitment;

namespace SetupService.Domain.Tests.Fitment;

public sealed class ComparisonTests
{
    // ISO 3911:2004 (as JIS D 4102:2007) defines inset; the movement of the edges follows by arithmetic:
    // from 6.5 in at inset 45 to 8 in at inset 35 the outer edge moves (8 − 6.5)/2 · 25.4 + 10 = 29.05 mm out.
    // A tyre narrower than either rim leaves the rims' own edges to be compared.
    [Fact]
    public void Rim_edges_move_by_half_the_width_and_the_offset()
    {
        var comparison = Comparison.Between(DemoCar.Fitting(6.5, 45, "155/65R14 75T"), DemoCar.Fitting(8, 35, "155/65R14 75T"), null);

        Assert.Equal(29.05, comparison.OutboardChangeMm, 9);
        Assert.Equal(9.05, comparison.InboardChangeMm, 9);
        Assert.Equal(20, comparison.TrackChangeMm, 9);
        Assert.Equal(10, comparison.ScrubRadiusChangeMm!.Value, 9);
    }

    // ISO 8855 takes the scrub radius positive with the axis inboard of the contact. 9 mm lower ground under 12°
    // of inclination: 9 · tan 12° = 1.91 mm further outboard (worked by hand).
    [Fact]
    public void A_larger_diameter_takes_from_the_scrub_radius_through_the_inclination()
    {
        var smaller = DemoCar.Fitting(7.5, 45, "205/55R16 91V");
        var larger = DemoCar.Fitting(7.5, 45, "205/60R16 92V");
        var comparison = Comparison.Between(smaller, larger, 12);
        var halfChange = comparison.OverallDiameterChangeMm / 2;

        Assert.Equal(10, halfChange, 9);
        Assert.Equal(-halfChange * 0.21255656, comparison.ScrubRadiusChangeMm!.Value, 6);
        Assert.Null(Comparison.Between(smaller, larger, null).ScrubRadiusChangeMm);
    }

    // Worked example of the rolling-circumference rule (CR = 3.05 D): 205/55R16 (632 mm) to 225/45R17 (634 mm)
    // is +0.32 %, so 100 km/h shown is 100.32 km/h true.
    [Fact]
    public void The_speedometer_follows_the_rolling_circumference()
    {
        var comparison = Comparison.Between(DemoCar.Fitting(6.5, 45, "205/55R16 91V"), DemoCar.Fitting(7.5, 45, "225/45R17 91W"), null);

        Assert.Equal(2, comparison.OverallDiameterChangeMm, 9);
        Assert.Equal(1, comparison.RideHeightChangeMm, 9);
        Assert.Equal(0.316, comparison.GearingChangePct, 3);
        Assert.Equal(100.316, comparison.TrueKmh, 3);
    }

    [Fact]
    public void A_spacer_moves_both_edges_outboard_by_its_thickness()
    {
        var comparison = Comparison.Between(DemoCar.Fitting(), DemoCar.Fitting(spacerMm: 12), 13);

        Assert.Equal(12, comparison.OutboardChangeMm, 9);
        Assert.Equal(-12, comparison.InboardChangeMm, 9);
        Assert.Equal(24, comparison.TrackChangeMm, 9);
    }

    // The clause on section width gives 0.4 mm per mm of rim: half an inch of rim is 5.08 mm of section.
    [Fact]
    public void A_wider_rim_spreads_the_section_by_four_tenths()
    {
        var comparison = Comparison.Between(DemoCar.Fitting(7.5), DemoCar.Fitting(8), null);

        Assert.Equal(5.08 / 2, comparison.OutboardChangeMm, 9);
        Assert.Equal(5.08 / 2, comparison.InboardChangeMm, 9);
    }

    [Fact]
    public void Mass_is_unknown_where_one_of_four_is()
    {
        var present = DemoCar.Fitting();
        var lighter = present with { Wheel = present.Wheel with { MassKg = 8.1 } };
        var unweighed = present with { Tyre = present.Tyre with { MassKg = null } };

        Assert.Equal(-1.5, Comparison.Between(present, lighter, null).MassChangeKg!.Value, 9);
        Assert.Null(Comparison.Between(present, unweighed, null).MassChangeKg);
    }
}
