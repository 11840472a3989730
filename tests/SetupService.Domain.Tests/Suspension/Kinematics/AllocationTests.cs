using SetupService.Domain.Suspension.Kinematics;
using SetupService.Domain.Suspension.Sweep;
using SetupService.Domain.Tests.Oracle;

namespace SetupService.Domain.Tests.Suspension.Kinematics;

/// <summary>A position of a warm sweep costs no memory; the corners are the second working's.</summary>
public sealed class AllocationTests
{
    private const int Positions = 1000;

    public static TheoryData<string> Corners() => new("ST1", "DW1", "FL1", "SA1", "TB1 opposite");

    [Theory]
    [MemberData(nameof(Corners))]
    public void Solving_a_position_and_reading_its_angles_allocates_nothing(string name)
    {
        var corner = MechanismBuilder.Build(Setting(name));
        var sum = 0.0;
        AssertAllocatesNothing(corner, (state, positions) =>
        {
            for (var i = 0; i < positions; i++)
            {
                Move(corner, i, ref state);
                var wheel = WheelKinematics.Wheel(corner, state);
                sum += wheel.CamberDeg + wheel.ToeDeg + (WheelKinematics.Axis(corner, state)?.CasterDeg ?? 0);
            }
        });
        Assert.True(double.IsFinite(sum));
    }

    [Theory]
    [MemberData(nameof(Corners))]
    public void Solving_a_position_with_all_its_figures_allocates_nothing(string name)
    {
        var corner = MechanismBuilder.Build(Setting(name));
        var sum = 0.0;
        AssertAllocatesNothing(corner, (state, positions) =>
        {
            for (var i = 0; i < positions; i++)
            {
                Move(corner, i, ref state);
                var figures = WheelKinematics.Compute(corner, state);
                sum += figures.CamberDeg + (figures.SpringMotionRatio ?? 0) + (figures.RollCentreHeightMm ?? 0);
            }
        });
        Assert.True(double.IsFinite(sum));
    }

    // The spring of DW1 stands on its lower arm, which turns about an axis of its own; without that the second case above is hollow.
    [Fact]
    public void The_wishbone_measured_has_its_spring_on_an_arm() =>
        Assert.Equal(Domain.Suspension.Points.SuspensionMember.LowerArm, Setting("DW1").Suspension.Spring!.On);

    [Fact]
    public void A_position_of_a_sweep_with_both_wheels_and_the_axles_figures_allocates_nothing()
    {
        var request = GeometryCases.Named("corners", "DW1").GetProperty("request");
        var sweep = TravelSweep.Start(
            MechanismBuilder.Build(OracleCorner.Setting(request)), new SweepRange(-50, 50, 1), new SweepRange(-20, 20, 1), OracleCorner.Axle(request))!;
        for (var i = 0; i < Positions; i++) Assert.True(sweep.TryNext(out _, out _));

        var reached = 0;
        var before = GC.GetAllocatedBytesForCurrentThread();
        for (var i = 0; i < Positions; i++)
        {
            sweep.TryNext(out var row, out _);
            reached += row is { Pair: not null } ? 1 : 0;
        }

        Assert.Equal(0, GC.GetAllocatedBytesForCurrentThread() - before);
        Assert.Equal(Positions, reached);
    }

    private static void AssertAllocatesNothing(CornerMechanism corner, Action<SuspensionPose, int> run)
    {
        Assert.True(PoseContinuation.TryStart(corner, out var stated));
        run(stated, Positions);

        // The runtime, compiling a method anew meanwhile, may charge this thread once; what a position costs it would cost every time.
        var least = long.MaxValue;
        for (var tries = 0; tries < 3 && least > 0; tries++)
        {
            var before = GC.GetAllocatedBytesForCurrentThread();
            run(stated, Positions);
            least = Math.Min(least, GC.GetAllocatedBytesForCurrentThread() - before);
        }

        Assert.Equal(0, least);
    }

    private static void Move(CornerMechanism corner, int index, ref SuspensionPose state)
    {
        if (!PoseContinuation.TryMove(corner, 50 * Math.Sin(0.1 * index), 10 * Math.Cos(0.1 * index), ref state)) throw new InvalidOperationException("Not reached.");
    }

    private static CornerSetting Setting(string name) => OracleCorner.Setting(GeometryCases.Named("corners", name).GetProperty("request"));
}
