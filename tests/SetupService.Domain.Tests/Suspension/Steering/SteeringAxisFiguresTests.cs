using CsCheck;
using SetupService.Domain.Numerics;
using SetupService.Domain.Suspension.Steering;

namespace SetupService.Domain.Tests.Suspension.Steering;

public sealed class SteeringAxisFiguresTests
{
    private static readonly Gen<Vector3> Around = Gen.Select(Gen.Double[-60, 60], Gen.Double[-60, 60], Gen.Double[-40, 40], (x, y, z) => new Vector3(x, y, z));

    private static readonly Gen<(SteeringAxis Axis, Vector3 Centre)> Corners = Gen.Select(Around, Around, Around, (lower, upper, centre) =>
        (SteeringAxis.Through(new Vector3(0, 690, 190) + lower, new Vector3(-40, 600, 600) + upper), new Vector3(0, 820, 310) + centre));

    public static TheoryData<string> Corner() => [.. KinematicsCases.Ids];

    // Corners of our own invention, solved by two methods of another making: every position of their sweeps, written to 1e-7.
    [Theory]
    [MemberData(nameof(Corner))]
    public void The_reference_corners_are_reproduced_at_every_position(string id)
    {
        var rows = 0;
        foreach (var row in KinematicsCases.Rows(id))
        {
            double Of(string name) => row.GetProperty(name).GetDouble();
            var wheel = WheelPlane.At(new(Of("wc_x"), Of("wc_y"), Of("wc_z")), Of("camber"), Of("toe_in"));
            var axis = new SteeringAxis(wheel.Centre + new Vector3(Of("wc_trail"), -Of("spindle"), 0), SteeringAxis.DirectionOf(Of("caster"), Of("sai")));

            var figures = SteeringAxisFigures.Compute(axis, wheel, KinematicsCases.Setting(id).LoadedRadiusMm);

            Assert.Equal(Of("scrub"), figures.ScrubRadiusMm, 2e-6);
            Assert.Equal(Of("trail"), figures.MechanicalTrailMm, 2e-6);
            Assert.Equal(Of("spindle"), figures.SpindleOffsetMm, 1e-9);
            Assert.Equal(Of("wc_trail"), figures.WheelCentreTrailMm, 1e-9);
            Assert.Equal(Of("cp_x"), figures.Contact.X, 2e-6);
            Assert.Equal(Of("cp_y"), figures.Contact.Y, 2e-6);
            Assert.Equal(Of("cp_z"), figures.Contact.Z, 2e-6);
            Assert.Equal(Of("sai") + Of("camber"), figures.IncludedAngleDeg, 1e-9);
            rows++;
        }

        Assert.True(rows > 5, $"{rows} rows");
    }

    // Derived: without toe scrub = offset − R sin camber − R cos camber tan inclination, trail = that at the centre + R cos camber tan caster.
    [Fact]
    public void Without_toe_scrub_and_trail_meet_their_formulas() =>
        Gen.Select(Corners, Gen.Double[-15, 15], Gen.Double[150, 600]).Sample((corner, camberDeg, radiusMm) =>
        {
            var figures = SteeringAxisFigures.Compute(corner.Axis, WheelPlane.At(corner.Centre, camberDeg, 0), radiusMm);
            var (sin, cos) = Math.SinCos(double.DegreesToRadians(camberDeg));
            var (caster, inclination) = (Math.Tan(double.DegreesToRadians(figures.CasterDeg)), Math.Tan(double.DegreesToRadians(figures.SteeringAxisInclinationDeg)));

            Assert.Equal(figures.SpindleOffsetMm - (radiusMm * sin) - (radiusMm * cos * inclination), figures.ScrubRadiusMm, 1e-9);
            Assert.Equal(figures.WheelCentreTrailMm + (radiusMm * cos * caster), figures.MechanicalTrailMm, 1e-9);
        });

    [Fact]
    public void Scrub_and_trail_are_the_way_from_axis_to_contact_on_the_ground() =>
        Gen.Select(Corners, Gen.Double[-15, 15], Gen.Double[-5, 5]).Sample((corner, camberDeg, toeDeg) =>
        {
            var figures = SteeringAxisFigures.Compute(corner.Axis, WheelPlane.At(corner.Centre, camberDeg, toeDeg), 310);

            Assert.Equal(figures.Contact.Z, figures.AxisAtGround.Z, 1e-9);
            Assert.Equal((figures.Contact - figures.AxisAtGround).Length, double.Hypot(figures.ScrubRadiusMm, figures.MechanicalTrailMm), 1e-9);
        });

    [Fact]
    public void A_steer_sweep_from_these_figures_has_the_same_scrub_and_trail_where_it_begins() =>
        Gen.Select(Corners, Gen.Double[-15, 15], Gen.Double[-5, 5]).Sample((corner, camberDeg, toeDeg) =>
        {
            var figures = SteeringAxisFigures.Compute(corner.Axis, WheelPlane.At(corner.Centre, camberDeg, toeDeg), 310);
            var row = SteerSweep.Create(new()
            {
                CasterDeg = figures.CasterDeg,
                SteeringAxisInclinationDeg = figures.SteeringAxisInclinationDeg,
                CamberDeg = camberDeg,
                ToeDeg = toeDeg,
                LoadedRadiusMm = 310,
                SpindleOffsetMm = figures.SpindleOffsetMm,
                WheelCentreTrailMm = figures.WheelCentreTrailMm,
            }).At(-toeDeg)!.Value;

            Assert.Equal(figures.ScrubRadiusMm, row.ScrubRadiusMm!.Value, 1e-9);
            Assert.Equal(figures.MechanicalTrailMm, row.MechanicalTrailMm!.Value, 1e-9);
            Assert.Equal(0, row.ContactHeightChangeMm!.Value, 1e-9);
        });
}
