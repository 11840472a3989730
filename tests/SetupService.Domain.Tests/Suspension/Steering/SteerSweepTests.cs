using System.Numerics;
using CsCheck;
using SetupService.Domain.Suspension.Steering;
using SetupService.Domain.Tests.TestData;

namespace SetupService.Domain.Tests.Suspension.Steering;

public sealed class SteerSweepTests
{
    private static readonly Gen<SteeredWheel> AnyWheel = Gen.Select(
        Gen.Double[-5, 20], Gen.Double[-10, 40], Gen.Double[-15, 15], Gen.Double[-5, 5], Wheel);

    private static readonly Gen<SteeredWheel> UsualWheel = Gen.Select(
        Gen.Double[3, 10], Gen.Double[8, 14], Gen.Double[-3, 0.5], Gen.Const(0.0), Wheel);

    // Derived in a separate program from Rodrigues' formula, its turn checked by bisection: no published table could be read.
    [Fact]
    public void The_derived_table_is_reproduced()
    {
        var rows = CsvTable.Rows("steer-fixed-axis.csv");

        Assert.Equal(55, rows.Count);
        Assert.All(rows, row =>
        {
            var wheel = Wheel(row.Number("caster"), row.Number("inclination"), row.Number("camber_before"), row.Number("toe"));
            var at = SteerSweep.Create(wheel).At(row.Number("steer"))!.Value;

            Assert.Equal(row.Number("rotation"), at.RotationDeg, 1e-6);
            Assert.Equal(row.Number("camber"), at.CamberDeg, 1e-6);
            Assert.Equal(row.Number("small_angle"), at.CamberApproximationDeg, 1e-6);
        });
    }

    // Against the rotation of the base library, which works in single precision: 1e-4 degrees is what it can tell.
    [Fact]
    public void A_rotation_library_turns_the_spin_axis_to_the_same_place() =>
        Gen.Select(AnyWheel, Gen.Double[-60, 60]).Sample((wheel, steerDeg) =>
        {
            if (SteerSweep.Create(wheel).At(steerDeg) is not { } row) return;
            var axis = Single(SteeringAxis.DirectionOf(wheel.CasterDeg, wheel.SteeringAxisInclinationDeg));
            var turn = Quaternion.CreateFromAxisAngle(axis, (float)double.DegreesToRadians(row.RotationDeg));
            var spin = Vector3.Transform(Single(WheelPlane.SpinOf(wheel.CamberDeg, wheel.ToeDeg)), turn);
            var expected = new WheelPlane(default, new(spin.X, spin.Y, spin.Z));

            Assert.Equal(expected.CamberDeg, row.CamberDeg, 1e-4);
            Assert.Equal(expected.SteerDeg, row.SteerDeg, 1e-4);
        });

    // A rigid turn keeps the angle between axis and spin axis, whatever the turn.
    [Fact]
    public void The_angle_between_axis_and_spin_axis_stays() =>
        Gen.Select(AnyWheel, Gen.Double[-60, 60]).Sample((wheel, steerDeg) =>
        {
            if (SteerSweep.Create(wheel).At(steerDeg) is not { } row) return;
            var axis = SteeringAxis.DirectionOf(wheel.CasterDeg, wheel.SteeringAxisInclinationDeg);

            Assert.Equal(
                axis.Dot(WheelPlane.SpinOf(wheel.CamberDeg, wheel.ToeDeg)),
                axis.Dot(WheelPlane.SpinOf(row.CamberDeg, -steerDeg)),
                1e-12);
        });

    [Fact]
    public void Steering_there_and_back_ends_where_it_began() =>
        Gen.Select(AnyWheel, Gen.Double[-45, 45]).Sample((wheel, steerDeg) =>
        {
            if (SteerSweep.Create(wheel).At(steerDeg) is not { } there) return;
            var back = SteerSweep.Create(wheel with { CamberDeg = there.CamberDeg, ToeDeg = -steerDeg }).At(-wheel.ToeDeg)!.Value;

            Assert.Equal(wheel.CamberDeg, back.CamberDeg, 1e-9);
            Assert.Equal(-there.RotationDeg, back.RotationDeg, 1e-9);
        });

    // The right wheel in the mirror turns about the mirrored axis the other way; its spin axis points to the right.
    [Fact]
    public void The_mirrored_corner_steered_the_other_way_has_the_same_camber() =>
        Gen.Select(AnyWheel, Gen.Double[-45, 45]).Sample((wheel, steerDeg) =>
        {
            if (SteerSweep.Create(wheel).At(steerDeg) is not { } row) return;
            var axis = SteeringAxis.DirectionOf(wheel.CasterDeg, wheel.SteeringAxisInclinationDeg).Mirrored;
            var spin = Rotations.About(axis, -row.RotationDeg, WheelPlane.SpinOf(wheel.CamberDeg, wheel.ToeDeg).Mirrored);

            Assert.Equal(row.CamberDeg, -double.RadiansToDegrees(Math.Asin(spin.Z)), 1e-9);
            Assert.Equal(-steerDeg, double.RadiansToDegrees(Math.Atan2(spin.X, -spin.Y)), 1e-9);
        });

    [Fact]
    public void Where_the_wheel_was_stated_nothing_has_changed() =>
        AnyWheel.Sample(wheel =>
        {
            var row = SteerSweep.Create(wheel).At(-wheel.ToeDeg)!.Value;

            Assert.Equal(0, row.RotationDeg, 1e-12);
            Assert.Equal(0, row.CamberChangeDeg, 1e-12);
        });

    [Fact]
    public void Small_angles_meet_the_handbooks_form() =>
        Gen.Select(Gen.Double[-1, 1], Gen.Double[-1, 1], Gen.Double[-1, 1], Gen.Double[-2, 2]).Sample(
            (casterDeg, inclinationDeg, camberDeg, steerDeg) =>
            {
                var row = SteerSweep.Create(Wheel(casterDeg, inclinationDeg, camberDeg, 0)).At(steerDeg)!.Value;

                // What the form leaves out is of third order: 2° × (1°)² and (2°)³, in radians, are under 0.003°.
                Assert.Equal(row.CamberApproximationDeg, row.CamberDeg, 3e-3);
            });

    // The trade's 1.5 at ±20° (common practice, no source) reads 2.5 to 3.1 % high on the five axes of the derived table, and
    // 1.7 to 4.2 % anywhere between 3° and 10° of caster, 8° and 14° of inclination, −3° and 0.5° of camber.
    [Fact]
    public void The_camber_difference_at_20_degrees_meets_the_workshop_rule_within_its_known_error()
    {
        Assert.All(
            (SteeredWheel[])[Wheel(3, 12, 0.5, 0), Wheel(4, 12, 0, 0), Wheel(6, 13, -1.5, 0), Wheel(8, 14, -2.5, 0), Wheel(10, 8, -3, 0)],
            wheel => Assert.InRange(WorkshopRuleDeg(wheel) / wheel.CasterDeg, 1.025, 1.0315));
        UsualWheel.Sample(wheel => Assert.InRange(WorkshopRuleDeg(wheel) / wheel.CasterDeg, 1.017, 1.042));
    }

    [Fact]
    public void A_heading_the_axis_cannot_give_has_no_row()
    {
        var sweep = SteerSweep.Create(Wheel(20, 40, 15, 0));
        var headings = Enumerable.Range(-1800, 3601).Select(tenth => Heading(Wheel(20, 40, 15, 0), tenth / 10.0)).ToArray();

        // Turned through a whole circle in tenths of a degree, the wheel's heading stays within these.
        Assert.InRange(headings.Max(), 20, 60);
        Assert.Null(sweep.At(headings.Max() + 0.1));
        Assert.NotNull(sweep.At(headings.Max() - 0.1));
        Assert.Null(sweep.At(headings.Min() - 0.1));
        Assert.NotNull(sweep.At(headings.Min() + 0.1));
        Assert.Null(sweep.At(180));
    }

    [Fact]
    public void What_is_no_number_has_no_row()
    {
        Assert.Null(SteerSweep.Create(Wheel(5, 12, -1, 0)).At(double.NaN));
        Assert.Null(SteerSweep.Create(Wheel(double.NaN, 12, -1, 0)).At(10));
        Assert.Null(default(SteerSweep).At(10));
    }

    [Fact]
    public void A_row_costs_no_memory()
    {
        var sweep = SteerSweep.Create(Wheel(5, 12, -1, 0.1) with { LoadedRadiusMm = 305, SpindleOffsetMm = 60, WheelCentreTrailMm = 0 });
        sweep.At(3);

        var before = GC.GetAllocatedBytesForCurrentThread();
        for (var i = -60; i <= 60; i++) sweep.At(i);

        Assert.Equal(0, GC.GetAllocatedBytesForCurrentThread() - before);
    }

    private static double WorkshopRuleDeg(in SteeredWheel wheel)
    {
        var sweep = SteerSweep.Create(wheel);
        return 1.5 * (sweep.At(20)!.Value.CamberDeg - sweep.At(-20)!.Value.CamberDeg);
    }

    private static SteeredWheel Wheel(double casterDeg, double inclinationDeg, double camberDeg, double toeDeg) =>
        new() { CasterDeg = casterDeg, SteeringAxisInclinationDeg = inclinationDeg, CamberDeg = camberDeg, ToeDeg = toeDeg };

    private static Vector3 Single(in SetupService.Domain.Numerics.Vector3 vector) => new((float)vector.X, (float)vector.Y, (float)vector.Z);

    private static double Heading(in SteeredWheel wheel, double rotationDeg) => new WheelPlane(default, Rotations.About(
        SteeringAxis.DirectionOf(wheel.CasterDeg, wheel.SteeringAxisInclinationDeg),
        rotationDeg,
        WheelPlane.SpinOf(wheel.CamberDeg, wheel.ToeDeg))).SteerDeg;
}
