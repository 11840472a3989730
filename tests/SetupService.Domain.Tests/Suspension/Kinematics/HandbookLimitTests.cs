using CsCheck;
using SetupService.Domain.Suspension.Kinematics;
using SetupService.Domain.Tests.Suspension.Corners;

namespace SetupService.Domain.Tests.Suspension.Kinematics;

/// <summary>
/// What the exact figures come to where the handbooks' forms hold: the textbook's wording from memory (Reimpell, Milliken, Dixon, none
/// of which could be read), the forms themselves derived anew in docs/methods/travel-sweep.
/// </summary>
public sealed class HandbookLimitTests
{
    // Camber gain = −1 / front-view swing arm. With neither camber nor toe the contact rises as the wheel centre does, and it is exact.
    [Fact]
    public void Without_camber_and_toe_the_camber_gain_is_one_over_the_swing_arm() =>
        PlausibleCorners.Any.Sample(drawn =>
        {
            var figures = Stated(drawn with { CamberDeg = 0, ToeDeg = 0 });

            Assert.Equal(-1 / figures.SwingArmMm ?? 0, double.DegreesToRadians(figures.CamberGainDegPerMm), 1e-12);
        });

    // With camber and toe the contact rises by R sin(camber) and by R sin(toe) of the turns more or less.
    [Fact]
    public void With_the_camber_and_toe_cars_have_it_is_so_within_their_size() =>
        PlausibleCorners.Any.Sample(setting =>
        {
            var figures = Stated(setting);
            var angles = double.DegreesToRadians(Math.Abs(figures.CamberDeg) + Math.Abs(figures.ToeDeg));
            var gain = double.DegreesToRadians(figures.CamberGainDegPerMm);

            // No turn of these corners is above 0.004 rad/mm.
            Assert.Equal(-1 / figures.SwingArmMm ?? 0, gain, (0.004 * angles * 3) + 1e-12);
        });

    // Camber regained per degree of roll = track / (2 × swing arm), the wheel travelling half a track times the roll.
    [Fact]
    public void Without_camber_and_toe_the_gain_per_degree_of_roll_is_half_a_track_over_the_swing_arm() =>
        PlausibleCorners.Any.Sample(drawn =>
        {
            var figures = Stated(drawn with { CamberDeg = 0, ToeDeg = 0 });

            Assert.Equal(-figures.HalfTrackMm / figures.SwingArmMm ?? 0, figures.CamberGainDegPerMm * figures.HalfTrackMm * Math.PI / 180, 1e-9);
        });

    // Roll centre: on the line from the contact through the instant centre, where it meets the centre plane.
    [Fact]
    public void The_roll_centre_lies_on_the_line_from_the_contact_through_the_instant_centre() =>
        Gen.Select(PlausibleCorners.Any, PlausibleCorners.Places).Sample((setting, place) =>
        {
            var corner = MechanismBuilder.Build(setting);
            var figures = WheelKinematics.Compute(corner, Walked.To(corner, place.TravelMm, place.RackMm));
            if (figures.SwingArmMm is not { } armMm || figures.InstantCentreZMm is not { } heightMm) return;
            var slope = (heightMm - figures.ContactHeightMm) / armMm;

            Assert.Equal(figures.HalfTrackMm * slope, figures.RollCentreHeightMm!.Value, 1e-6);
        });

    // Anti-dive: the tangent of the side-view swing arm's angle is the slope dx/dz of the contact.
    [Fact]
    public void The_tangent_of_the_side_view_arms_angle_is_the_slope_of_the_contact() =>
        Gen.Select(PlausibleCorners.Any, PlausibleCorners.Places).Sample((setting, place) =>
        {
            var corner = MechanismBuilder.Build(setting);
            var state = Walked.To(corner, place.TravelMm, place.RackMm);
            var figures = WheelKinematics.Compute(corner, state);
            if (figures.SideInstantCentreXMm is not { } alongMm || figures.SideInstantCentreZMm is not { } heightMm) return;
            var contact = WheelKinematics.Wheel(corner, state).Contact(setting.LoadedRadiusMm);

            Assert.Equal((heightMm - contact.Z) / (contact.X - alongMm), figures.ContactForwardSlope!.Value, 1e-8);
        });

    // Scrub = q − R sin(camber) − R cos(camber) tan(inclination); trail = that at the centre + R cos(camber) tan(caster); no toe.
    [Fact]
    public void Without_toe_scrub_radius_and_trail_meet_their_formulas() =>
        PlausibleCorners.WithTieRod.Sample(drawn =>
        {
            var corner = MechanismBuilder.Build(drawn with { ToeDeg = 0 });
            var state = Walked.To(corner, 0, 0);
            var figures = WheelKinematics.Compute(corner, state);
            var centre = corner.Stated.Centre;
            var onAxis = WheelKinematics.Axis(corner, state)!.Value.AtHeight(centre.Z);
            var (sin, cos) = Math.SinCos(double.DegreesToRadians(drawn.CamberDeg));
            var radiusMm = drawn.LoadedRadiusMm;

            Assert.Equal(
                centre.Y - onAxis.Y - (radiusMm * sin) - (radiusMm * cos * Tan(figures.SteeringAxisInclinationDeg)), figures.ScrubRadiusMm!.Value, 1e-9);
            Assert.Equal(onAxis.X - centre.X + (radiusMm * cos * Tan(figures.CasterDeg)), figures.MechanicalTrailMm!.Value, 1e-9);
        });

    // A trailing arm with its axis across the car: no camber, no toe, no track change, the roll centre on the ground.
    [Fact]
    public void A_trailing_arm_across_the_car_moves_its_wheel_straight_up_and_back() =>
        Gen.Select(PlausibleCorners.Beams, Gen.Double[-PlausibleCorners.TravelMm, PlausibleCorners.TravelMm]).Sample((drawn, travelMm) =>
        {
            var setting = drawn with { Motion = Domain.Suspension.Points.AxleMotion.Parallel, CamberDeg = 0, ToeDeg = 0 };
            var corner = MechanismBuilder.Build(setting);
            var figures = WheelKinematics.Compute(corner, Walked.To(corner, travelMm, 0));

            Assert.Equal(0, figures.CamberDeg, 1e-9);
            Assert.Equal(0, figures.ToeDeg, 1e-9);
            Assert.Equal(0, figures.HalfTrackChangeMm, 1e-9);
            Assert.Null(figures.RollCentreHeightMm);
            Assert.Null(figures.SwingArmMm);
        });

    private static WheelFigures Stated(CornerSetting setting)
    {
        var corner = MechanismBuilder.Build(setting);
        return WheelKinematics.Compute(corner, Walked.To(corner, 0, 0));
    }

    private static double Tan(double? angleDeg) => Math.Tan(double.DegreesToRadians(angleDeg!.Value));
}
