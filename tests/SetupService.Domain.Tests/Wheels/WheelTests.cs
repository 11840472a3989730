using SetupService.Domain.Wheels;

namespace SetupService.Domain.Tests.Wheels;

public class WheelTests
{
    private static Wheel Of(double widthIn, double offsetMm, double spacerMm = 0) =>
        new() { RimDiameterIn = 17, RimWidthIn = widthIn, OffsetMm = offsetMm, SpacerMm = spacerMm };

    [Fact]
    public void A_rim_over_its_flanges_is_wider_by_two_flanges()
    {
        // Worked by hand: 6.5 × 25.4 = 165.1 and 2 × 11.0 mm, the flange width read in JIS D 4218:2021, Table 3.
        var wheel = Of(6.5, 45);

        Assert.Equal(165.1, wheel.RimWidthMm, 1e-9);
        Assert.Equal(187.1, wheel.OverFlangesMm, 1e-9);
        Assert.Equal(138.55, wheel.BackspacingMm, 1e-9);
    }

    [Fact]
    public void A_wider_wheel_of_less_offset_stands_out()
    {
        // Worked by hand with the sign of ISO 3911 (read in JIS D 4102:2007): from 6.5J inset 45 to 8J inset 35 the outer edge
        // moves out 19.05 + 10 = 29.05 mm, the inner edge moves in 19.05 − 10 = 9.05 mm.
        var (narrow, wide) = (Of(6.5, 45), Of(8, 35));

        static double OuterMm(Wheel wheel) => wheel.CentrePlaneMm + (wheel.OverFlangesMm / 2);
        static double InnerMm(Wheel wheel) => wheel.CentrePlaneMm - (wheel.OverFlangesMm / 2);

        Assert.Equal(29.05, OuterMm(wide) - OuterMm(narrow), 1e-9);
        Assert.Equal(-9.05, InnerMm(wide) - InnerMm(narrow), 1e-9);
        Assert.Equal(9.05, wide.BackspacingMm - narrow.BackspacingMm, 1e-9);
    }

    [Theory]
    [InlineData(45, 0, -45)]
    [InlineData(45, 15, -30)]
    [InlineData(-12, 0, 12)]
    [InlineData(0, 5, 5)]
    public void A_spacer_moves_the_centre_plane_out_and_not_the_wheels_own_spacings(double offsetMm, double spacerMm, double centrePlaneMm)
    {
        var wheel = Of(8, offsetMm, spacerMm);

        Assert.Equal(centrePlaneMm, wheel.CentrePlaneMm);
        Assert.Equal(Of(8, offsetMm).BackspacingMm, wheel.BackspacingMm);
    }

    // Worked by hand: an inch is 25.4 mm, so the bead seat of an 18 in rim has the radius 18 × 25.4 / 2 = 228.6 mm; the seat itself is inside.
    [Theory]
    [InlineData(18, 228.6, true)]
    [InlineData(18, 228.6 + 1e-9, false)]
    [InlineData(18, 0, true)]
    [InlineData(20, 254, true)]
    [InlineData(20, 254.1, false)]
    public void The_inside_of_a_wheel_lies_within_its_bead_seat(double rimDiameterIn, double radiusMm, bool isInside) =>
        Assert.Equal(isInside, Wheel.IsInside(rimDiameterIn, radiusMm));
}
