using CsCheck;
using SetupService.Domain.Suspension;
using SetupService.Domain.Suspension.Readings;
using SetupService.Domain.Suspension.Search;

namespace SetupService.Domain.Tests.Suspension.Search;

/// <summary>
/// Corners known by readings or by their angles alone, adjusted. The strut of the readings is a rigid triangle over its ball joint: 600 mm high,
/// inclined by 13°, caster 6°; camber −1° less 0.02° per mm of bump, toe 0.1° and 0.002° more per mm.
/// </summary>
public sealed class AdjustedWithoutPointsTests
{
    private const double HeightMm = 600;
    private const double Same = 1e-9;

    private static readonly WheelSetup ToeSetLater = new() { CamberDeg = null, ToeDeg = 0.3, LoadedRadiusMm = 300 };

    private static readonly WheelSetup Angles = new() { CamberDeg = -1.2, ToeDeg = 0.1, LoadedRadiusMm = 310, StatedAxis = (6, 13) };

    private static readonly CornerReadings Strut = new()
    {
        Travel = [.. new double[] { -40, -20, 0, 20, 40 }.Select(mm => new TravelReading(mm, -1 - (0.02 * mm), 0.1 + (0.002 * mm)))],
        TopMount = [.. new double[] { -10, 0, 10 }.Select(mm => new TopMountReading(mm, -1 - LeanDeg(mm)))],
        CasterDeg = 6,
        SteeringAxisInclinationDeg = 13,
        GaugeErrorDeg = 0,
    };

    [Fact]
    public void A_strut_known_by_readings_stands_as_it_was_read_with_toe_as_set_later()
    {
        var told = AsStated(Strut).Told;

        Assert.Equal((-1, 6, 13), (told.CamberDeg, told.CasterDeg!.Value, told.SteeringAxisInclinationDeg!.Value), Near3);
        Assert.Equal(0.3, told.ToeDeg!.Value, Same);
        Assert.Equal(-0.02, told.CamberGainDegPerMm!.Value, 1e-7);
        Assert.Equal(0.002, told.ToeGainDegPerMm!.Value, 1e-7);
        Assert.Equal(-300 * Math.Cos(double.DegreesToRadians(1)), told.ContactHeightMm!.Value, 1e-6);
        Assert.Null(told.TyreTopOutboardMm);
    }

    // Body up is droop: toe keeps its shape and what it was set by, the axis over travel is not told.
    [Fact]
    public void A_body_raised_or_lowered_puts_the_wheel_elsewhere_on_its_curves() =>
        Gen.Double[-38, 38].Sample(raisedMm =>
        {
            var told = AsStated(Strut).With([new(Adjuster.RideHeight, raisedMm)], resetToe: false)!.Told;

            Assert.Equal(-1 + (0.02 * raisedMm), told.CamberDeg, 1e-6);
            Assert.Equal(0.3 - (0.002 * raisedMm), told.ToeDeg!.Value, 1e-6);
            Assert.Equal(-raisedMm - (300 * Math.Cos(double.DegreesToRadians(told.CamberDeg))), told.ContactHeightMm!.Value, 1e-6);
            Assert.Equal(raisedMm == 0, told.CasterDeg is not null);
            Assert.Equal(raisedMm == 0, told.SteeringAxisInclinationDeg is not null);
        });

    [Fact]
    public void A_top_mount_moved_turns_the_strut_about_its_ball_joint() =>
        Gen.Select(Gen.Double[-15, 15], Gen.Double[-15, 15], Gen.Double[0, 1]).Sample((inboardMm, rearwardMm, share) =>
        {
            Adjustment[] moved = [new(Adjuster.StrutTopInboard, share * inboardMm), new(Adjuster.StrutTopRearward, rearwardMm), new(Adjuster.StrutTopInboard, (1 - share) * inboardMm)];
            var start = AsStated(Strut);
            var told = start.With(moved, resetToe: false)!.Told;
            var inTurn = start.With(moved.AsSpan(0, 1), resetToe: false)!.With(moved.AsSpan(1), resetToe: false)!.Told;

            Assert.Equal(-1 - LeanDeg(inboardMm), told.CamberDeg, 1e-6);
            Assert.Equal(13 + LeanDeg(inboardMm), told.SteeringAxisInclinationDeg!.Value, 1e-6);
            Assert.Equal(double.RadiansToDegrees(Math.Atan(Math.Tan(double.DegreesToRadians(6)) + (rearwardMm / HeightMm))), told.CasterDeg!.Value, 1e-6);
            Assert.Equal(inboardMm == 0 && rearwardMm == 0, told.ToeDeg is not null);
            Assert.Equal((told.CamberDeg, told.CasterDeg.Value, told.SteeringAxisInclinationDeg.Value), (inTurn.CamberDeg, inTurn.CasterDeg!.Value, inTurn.SteeringAxisInclinationDeg!.Value), Near3);
        });

    // A shim turns the hub by its own angle; an eccentric the knuckle about its other bolt, 60 mm away.
    [Fact]
    public void What_turns_the_wheel_in_its_upright_leaves_the_axis_and_only_an_eccentric_takes_toe_away() =>
        Gen.Select(Gen.Double[-1, 1], Gen.Double[-1, 1], Gen.Double[-5, 5], Gen.Bool).Sample((camberDeg, toeDeg, throwMm, hasReadings) =>
        {
            var start = hasReadings ? AsStated(Strut) : AsStated(Angles);
            var shimmed = start.With([new(Adjuster.HubShimCamber, camberDeg), new(Adjuster.HubShimToe, toeDeg)], resetToe: false)!;
            var turned = shimmed.With([new(Adjuster.KnuckleEccentric, throwMm) { BoltSpacingMm = 60 }], resetToe: false)!;
            var back = turned.With([new(Adjuster.KnuckleEccentric, -throwMm) { BoltSpacingMm = 60 }], resetToe: false)!;

            Assert.Equal(start.CamberDeg + camberDeg, shimmed.CamberDeg, Same);
            Assert.Equal(start.ToeDeg!.Value + toeDeg, shimmed.ToeDeg!.Value, Same);
            Assert.Equal(shimmed.CamberDeg - double.RadiansToDegrees(Math.Asin(throwMm / 60)), turned.CamberDeg, Same);
            Assert.Equal(throwMm == 0, turned.ToeDeg is not null);
            Assert.Equal(shimmed.CamberDeg, back.CamberDeg, Same);
            Assert.Equal(shimmed.ToeDeg.Value, back.ToeDeg!.Value, Same);
            Assert.Equal((start.CasterDeg, start.Told.SteeringAxisInclinationDeg), (turned.CasterDeg, turned.Told.SteeringAxisInclinationDeg));
        });

    [Theory]
    [InlineData(Adjuster.StrutTopInboard, 10)]
    [InlineData(Adjuster.StrutTopRearward, -8)]
    [InlineData(Adjuster.RideHeight, 15)]
    [InlineData(Adjuster.KnuckleEccentric, 2)]
    [InlineData(Adjuster.HubShimToe, 0.4)]
    public void Toe_set_again_is_what_it_was(Adjuster adjuster, double amount)
    {
        Adjustment made = new(adjuster, amount) { BoltSpacingMm = 60 };

        Assert.Equal(0.3, AsStated(Strut).With([made], resetToe: true)!.ToeDeg!.Value, Same);
        if (AsStated(Angles).With([made], resetToe: true) is { } byAngles) Assert.Equal(0.1, byAngles.ToeDeg!.Value, Same);
        else Assert.True(adjuster is Adjuster.StrutTopInboard or Adjuster.StrutTopRearward or Adjuster.RideHeight);
    }

    // Independent errors add as squares: of the curve and of the moved mount; caster as given has none of its own.
    [Fact]
    public void The_gauges_error_stays_in_what_was_worked_from_it()
    {
        var readings = Strut with { GaugeErrorDeg = 0.1 };
        var corner = MeasuredCorner.From(readings, out _)!;
        var start = AsStated(readings);
        var told = start.With([new(Adjuster.StrutTopInboard, 10), new(Adjuster.StrutTopRearward, 8)], resetToe: false)!.Told;

        Assert.Equal(corner.CamberAt(0)!.Value.AngleDeg.StandardError, start.Told.Camber!.Value.StandardError, Same);
        Assert.True(start.Told.Camber.Value.StandardError > 0.01);
        Assert.Equal(
            double.Hypot(corner.CamberAt(0)!.Value.AngleDeg.StandardError, corner.TopMount!.Value.CamberChangeDeg(10).StandardError), told.Camber!.Value.StandardError, Same);
        Assert.Equal(0, start.Told.Caster!.Value.StandardError);
        Assert.Equal(corner.CasterChangeDeg(8)!.Value.StandardError, told.Caster!.Value.StandardError, Same);
        Assert.True(told.Caster.Value.StandardError > 0.01);
        Assert.Null(AsStated(Angles).Told.Camber);
    }

    [Fact]
    public void What_readings_do_not_reach_is_refused_with_the_travel_it_needs()
    {
        var start = AsStated(Strut);
        Adjustment[] lowered = [new(Adjuster.RideHeight, -30), new(Adjuster.HubShimCamber, 1), new(Adjuster.RideHeight, -40)];

        Assert.Null(start.With(lowered, resetToe: false));
        Assert.Equal((MeasuredWords.BeyondReadings(70, -40, 40), 0), start.WhyNot(lowered, resetToe: false));
        Assert.NotNull(start.With(lowered.AsSpan(0, 2), resetToe: false));
        Assert.Null(AdjustableCorner.AsStated(SuspensionModel.From(Strut), ToeSetLater with { RideHeightChangeMm = -61 }));
    }

    [Fact]
    public void What_needs_points_is_refused_by_its_reason()
    {
        var (readings, noMount, angles) = (AsStated(Strut), AsStated(Strut with { TopMount = [] }), AsStated(Angles));
        var noAxis = AsStated(Strut with { CasterDeg = null, SteeringAxisInclinationDeg = null });
        var noToe = AsStated(Strut with { Travel = [.. Strut.Travel.Select(one => one with { ToeDeg = null })] }, ToeSetLater with { ToeDeg = null });
        Adjustment[] rod = [new(Adjuster.HubShimToe, 1), new(Adjuster.TieRodLength, 1)];
        Adjustment[] top = [new(Adjuster.StrutTopInboard, 3)];
        Adjustment[] shim = [new(Adjuster.HubShimCamber, 1)];
        var camber = new AngleTarget(-2, null);

        foreach (var corner in (AdjustableCorner[])[readings, angles])
        {
            Assert.Null(corner.With(rod, resetToe: false));
            Assert.Contains("points", corner.NotTold(rod, camber, keepsArchGap: false), StringComparison.Ordinal);
            Assert.Contains("arch", corner.NotTold(shim, camber, keepsArchGap: true), StringComparison.Ordinal);
            Assert.Null(corner.NotTold(shim, new(-2, null, 0.2), keepsArchGap: false));
        }

        Assert.Null(readings.NotTold(top, new(-2, 7, 0.2), keepsArchGap: false));
        Assert.Null(noMount.With(top, resetToe: false));
        Assert.Equal(MeasuredWords.Reason(MeasuredGap.TopMountNotRead) + ".", noMount.NotTold(top, camber, keepsArchGap: false));
        Assert.Null(noMount.NotTold([top[0] with { Amount = 0 }], camber, keepsArchGap: false));
        Assert.Equal(MeasuredWords.Reason(MeasuredGap.TopMountNotRead) + ".", noMount.NotTold(shim, new(null, 7), keepsArchGap: false));
        Assert.Equal(MeasuredWords.Reason(MeasuredGap.InclinationNotKnown) + ".", noAxis.NotTold(shim, new(null, 7), keepsArchGap: false));
        Assert.Contains("toe", noToe.NotTold(shim, new(null, null, 0.2), keepsArchGap: false), StringComparison.Ordinal);
        Assert.Null(noToe.NotTold(shim, camber, keepsArchGap: false));

        Assert.Null(angles.With(top, resetToe: false));
        Assert.Contains("caster", angles.NotTold(shim, new(null, 7), keepsArchGap: false), StringComparison.Ordinal);
        Assert.Contains("toe", AsStated(Angles with { ToeDeg = null }).NotTold(shim, new(null, null, 0), keepsArchGap: false), StringComparison.Ordinal);
        Assert.Contains("points", angles.WhyNot(rod, resetToe: false).Reason, StringComparison.Ordinal);
        Assert.Null(AdjustableCorner.AsStated(SuspensionModel.FromFigures, Angles with { CamberDeg = null }));
        Assert.Null(AdjustableCorner.AsStated(SuspensionModel.FromFigures, Angles with { RideHeightChangeMm = 1 }));
    }

    [Fact]
    public void What_is_left_out_names_the_input_that_would_settle_it()
    {
        var start = AsStated(Strut);
        Assert.Equal(8, start.Gaps(start).Count);
        Assert.All(start.Gaps(start), gap => Assert.Equal(["/suspension/points"], gap.Needs));

        Has(start, start.With([new(Adjuster.RideHeight, 5)], resetToe: false)!, ("casterDeg", "/suspension/points"), ("steeringAxisInclinationDeg", "/suspension/points"), ("includedAngleDeg", "/suspension/points"));
        Has(start, start.With([new(Adjuster.StrutTopInboard, 5)], resetToe: false)!, ("toeDeg", "/suspension/points"));
        var plain = AsStated(Strut with { CasterDeg = null, SteeringAxisInclinationDeg = null, Travel = [.. Strut.Travel.Select(one => one with { ToeDeg = null })] }, ToeSetLater with { ToeDeg = null });
        Has(
            plain, plain, ("toeDeg", "/suspension/readings"), ("bumpSteerDegPer10Mm", "/suspension/readings"), ("casterDeg", "/alignment/casterDeg"),
            ("steeringAxisInclinationDeg", "/alignment/steeringAxisInclinationDeg"), ("includedAngleDeg", "/alignment/steeringAxisInclinationDeg"));
        var noMount = AsStated(Strut with { TopMount = [] });
        Has(noMount, noMount.With([new(Adjuster.StrutTopRearward, 5)], resetToe: true)!, ("casterDeg", "/suspension/topMountReadings"));

        var angles = AsStated(Angles);
        Assert.Equal(11, angles.Gaps(angles).Count);
        Has(angles, angles, ("ranges", "/suspension/readings"), ("scrubRadiusMm", "/suspension"));
        Has(angles, angles.With([new(Adjuster.KnuckleEccentric, 1) { BoltSpacingMm = 60 }], resetToe: false)!, ("toeDeg", "/suspension/points"));
        var bare = AsStated(Angles with { ToeDeg = null, StatedAxis = null });
        Has(
            bare, bare, ("toeDeg", "/alignment/toeDeg"), ("casterDeg", "/alignment/casterDeg"),
            ("steeringAxisInclinationDeg", "/alignment/steeringAxisInclinationDeg"), ("includedAngleDeg", "/alignment/steeringAxisInclinationDeg"));

        static void Has(AdjustableCorner before, AdjustableCorner after, params (string Output, string Need)[] expected) => Assert.All(
            expected, one => Assert.Equal(one.Need, Assert.Single(before.Gaps(after), gap => gap.Output == one.Output).Needs[0]));
    }

    [Fact]
    public void Angles_alone_stand_as_stated()
    {
        var told = AsStated(Angles).Told;

        Assert.Equal((-1.2, 6, 13, 0.1), (told.CamberDeg, told.CasterDeg, told.SteeringAxisInclinationDeg, told.ToeDeg));
        Assert.Equal(-310 * Math.Cos(double.DegreesToRadians(1.2)), told.ContactHeightMm!.Value, Same);
    }

    private static readonly Func<(double, double, double), (double, double, double), bool> Near3 =
        (one, other) => Math.Abs(one.Item1 - other.Item1) < 1e-6 && Math.Abs(one.Item2 - other.Item2) < 1e-6 && Math.Abs(one.Item3 - other.Item3) < 1e-6;

    private static AdjustableCorner AsStated(CornerReadings readings, WheelSetup? setup = null) => AdjustableCorner.AsStated(SuspensionModel.From(readings), setup ?? ToeSetLater)!;

    private static AdjustableCorner AsStated(WheelSetup setup) => AdjustableCorner.AsStated(SuspensionModel.FromFigures, setup)!;

    // How much more the triangle leans inboard with its top moved inboard.
    private static double LeanDeg(double inboardMm) =>
        double.RadiansToDegrees(Math.Atan2((HeightMm * Math.Tan(double.DegreesToRadians(13))) + inboardMm, HeightMm)) - 13;
}
