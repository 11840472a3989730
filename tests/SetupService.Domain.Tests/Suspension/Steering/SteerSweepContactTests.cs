using CsCheck;
using SetupService.Domain.Suspension.Steering;

namespace SetupService.Domain.Tests.Suspension.Steering;

public sealed class SteerSweepContactTests
{
    private static readonly Gen<SteeredWheel> AnyWheel = Gen.Select(
        Gen.Select(Gen.Double[-5, 20], Gen.Double[-10, 30], Gen.Double[-8, 8], Gen.Double[-5, 5]),
        Gen.Double[200, 400],
        Gen.Double[-50, 100],
        Gen.Double[-30, 30],
        (angles, radiusMm, offsetMm, trailMm) => Wheel(angles.Item1, angles.Item2, angles.Item3, radiusMm, offsetMm, trailMm) with { ToeDeg = angles.Item4 });

    // Derived in a separate program (radius 305, offset 60, no trail at the centre, camber −1.5); printed to 0.001 mm.
    [Theory]
    [InlineData(6, 13, 1.540, 1.562, 1.028, -1.401, -3.005, -4.607)]
    [InlineData(3, 12, -0.143, 0.353, 0.403, -0.811, -1.938, -3.252)]
    [InlineData(0, 13, -1.942, -0.908, -0.234, -0.234, -0.908, -1.942)]
    public void The_derived_heights_of_the_contact_are_reproduced(
        double casterDeg, double inclinationDeg, double at30RightMm, double at20RightMm, double at10RightMm, double at10LeftMm, double at20LeftMm, double at30LeftMm)
    {
        var sweep = SteerSweep.Create(Wheel(casterDeg, inclinationDeg, -1.5, 305, 60, 0));

        Assert.All(
            ((double SteerDeg, double HeightMm)[])
            [
                (-30, at30RightMm), (-20, at20RightMm), (-10, at10RightMm), (10, at10LeftMm), (20, at20LeftMm), (30, at30LeftMm),
            ],
            row => Assert.Equal(row.HeightMm, sweep.At(row.SteerDeg)!.Value.ContactHeightChangeMm!.Value, 6e-4));
    }

    // Derived beside it: scrub = offset − R sin camber − R cos camber tan inclination, trail = that at the centre + R cos camber tan caster, without toe.
    [Fact]
    public void Straight_ahead_without_toe_scrub_and_trail_meet_their_formulas() =>
        AnyWheel.Sample(toed =>
        {
            var wheel = toed with { ToeDeg = 0 };
            var row = SteerSweep.Create(wheel).At(0)!.Value;
            var (sin, cos) = Math.SinCos(double.DegreesToRadians(wheel.CamberDeg));
            var radiusMm = wheel.LoadedRadiusMm!.Value;

            Assert.Equal(
                wheel.SpindleOffsetMm!.Value - (radiusMm * sin) - (radiusMm * cos * Math.Tan(double.DegreesToRadians(wheel.SteeringAxisInclinationDeg))),
                row.ScrubRadiusMm!.Value,
                1e-9);
            Assert.Equal(
                wheel.WheelCentreTrailMm!.Value + (radiusMm * cos * Math.Tan(double.DegreesToRadians(wheel.CasterDeg))),
                row.MechanicalTrailMm!.Value,
                1e-9);
        });

    // The derived closed form for the height, against the rotated wheel.
    [Fact]
    public void The_height_of_the_contact_meets_its_closed_form() =>
        Gen.Select(AnyWheel, Gen.Double[-45, 45]).Sample((wheel, steerDeg) =>
        {
            if (SteerSweep.Create(wheel).At(steerDeg) is not { } row) return;
            var a = Math.Tan(double.DegreesToRadians(wheel.CasterDeg));
            var b = Math.Tan(double.DegreesToRadians(wheel.SteeringAxisInclinationDeg));
            var length = Math.Sqrt(1 + (a * a) + (b * b));
            var (q, t, radiusMm) = (wheel.SpindleOffsetMm!.Value, wheel.WheelCentreTrailMm!.Value, wheel.LoadedRadiusMm!.Value);
            var (sin, cos) = Math.SinCos(double.DegreesToRadians(row.RotationDeg));
            var centreMm = (-((a * q) + (b * t)) / length * sin) + (((a * t) - (b * q)) / (length * length) * (1 - cos));
            var dropMm = radiusMm * (Math.Cos(double.DegreesToRadians(row.CamberDeg)) - Math.Cos(double.DegreesToRadians(wheel.CamberDeg)));

            Assert.Equal(centreMm - dropMm, row.ContactHeightChangeMm!.Value, 1e-9);
        });

    // The contact worked from the turned centre and spin axis by quaternion, offsets by projecting onto the wheel's own heading.
    [Fact]
    public void Scrub_and_trail_follow_the_turned_wheel() =>
        Gen.Select(AnyWheel, Gen.Double[-45, 45]).Sample((wheel, steerDeg) =>
        {
            if (SteerSweep.Create(wheel).At(steerDeg) is not { } row) return;
            var axis = SteeringAxis.DirectionOf(wheel.CasterDeg, wheel.SteeringAxisInclinationDeg);
            var centre = Rotations.About(axis, row.RotationDeg, new(-wheel.WheelCentreTrailMm!.Value, wheel.SpindleOffsetMm!.Value, 0));
            var spin = Rotations.About(axis, row.RotationDeg, WheelPlane.SpinOf(wheel.CamberDeg, wheel.ToeDeg));
            var down = (-1 * (new SetupService.Domain.Numerics.Vector3(0, 0, 1) - (spin.Z * spin))).Unit();
            var contact = centre + (wheel.LoadedRadiusMm!.Value * down);
            var onAxis = contact.Z / axis.Z * axis;
            var (sinSteer, cosSteer) = Math.SinCos(double.DegreesToRadians(steerDeg));

            Assert.Equal(((onAxis.X - contact.X) * cosSteer) + ((onAxis.Y - contact.Y) * sinSteer), row.MechanicalTrailMm!.Value, 1e-8);
            Assert.Equal(((onAxis.X - contact.X) * sinSteer) - ((onAxis.Y - contact.Y) * cosSteer), row.ScrubRadiusMm!.Value, 1e-8);
        });

    [Fact]
    public void Without_the_wheels_place_on_its_axis_there_is_no_contact()
    {
        var wheel = Wheel(5, 12, -1, 305, 60, 2);

        Assert.NotNull(SteerSweep.Create(wheel).At(10)!.Value.ContactHeightChangeMm);
        Assert.Null(SteerSweep.Create(wheel with { LoadedRadiusMm = null }).At(10)!.Value.ContactHeightChangeMm);
        Assert.Null(SteerSweep.Create(wheel with { SpindleOffsetMm = null }).At(10)!.Value.ScrubRadiusMm);
        Assert.Null(SteerSweep.Create(wheel with { WheelCentreTrailMm = null }).At(10)!.Value.MechanicalTrailMm);
    }

    private static SteeredWheel Wheel(double casterDeg, double inclinationDeg, double camberDeg, double radiusMm, double offsetMm, double trailMm) => new()
    {
        CasterDeg = casterDeg,
        SteeringAxisInclinationDeg = inclinationDeg,
        CamberDeg = camberDeg,
        ToeDeg = 0,
        LoadedRadiusMm = radiusMm,
        SpindleOffsetMm = offsetMm,
        WheelCentreTrailMm = trailMm,
    };
}
