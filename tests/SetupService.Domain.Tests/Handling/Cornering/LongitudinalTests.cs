using SetupService.Domain.Handling.Cars;
using SetupService.Domain.Handling.Cornering;
using SetupService.Domain.Numerics;
using SetupService.Domain.Suspension;
using SetupService.Domain.Suspension.Points;
using SetupService.Domain.Suspension.Sweep;
using SetupService.Domain.Vehicles;

namespace SetupService.Domain.Tests.Handling.Cornering;

/// <summary>A car braked or driven through a turn: statics by hand, directions of common practice (no source), symmetry, continuity.</summary>
public sealed class LongitudinalTests
{
    private const double G = HandlingCar.StandardGravity;

    private static readonly TurnPath Left80 = TurnPath.AtRadius(TurnDirection.Left, 80);

    // m a h / L: Barton and Fieldhouse, Automotive Chassis Engineering (2018), longitudinal load transfer.
    [Theory]
    [InlineData(-0.6)]
    [InlineData(-0.1)]
    [InlineData(0.25)]
    public void Load_moves_along_the_car_by_mass_times_acceleration_times_height_over_wheelbase(double longitudinalG)
    {
        var car = WorkedCar.Make() with { DriveShareFrontPct = 0 };

        foreach (var lateralG in new[] { 0, 0.4 })
        {
            var at = Solve(car, lateralG, longitudinalG);

            var moved = car.MassKg * longitudinalG * G * car.CentreOfGravityHeightMm / 2600;
            Assert.Equal(car.Front.LoadN - moved, at.FrontLeft.LoadN + at.FrontRight.LoadN, 1e-5);
            Assert.Equal(car.Rear.LoadN + moved, at.RearLeft.LoadN + at.RearRight.LoadN, 1e-5);
        }
    }

    // Springs and tyres in series under each axle; no links take part of it.
    [Fact]
    public void A_car_without_anti_dive_dives_by_what_its_springs_and_tyres_give()
    {
        var car = WorkedCar.Make();
        car = car with { Front = Upright(car.Front) with { SwingArmMm = 1e12 }, Rear = Upright(car.Rear) with { SwingArmMm = 1e12 } };

        var at = Straight(car, -0.5);

        var moved = car.MassKg * 0.5 * G * car.CentreOfGravityHeightMm / 2600;
        var front = moved / 2 * ((1 / 28.0) + (1 / 220.0));
        var rear = moved / 2 * ((1 / 26.0) + (1 / 220.0));
        Assert.Equal(-front, at.Front.HeaveMm, 1e-6);
        Assert.Equal(rear, at.Rear.HeaveMm, 1e-6);
        Assert.Equal(double.RadiansToDegrees(Math.Atan((front + rear) / 2600)), at.PitchDeg, 1e-9);
    }

    [Fact]
    public void Brakes_are_shared_as_stated_and_the_driven_axle_drives()
    {
        var car = WorkedCar.Make() with { BrakeShareFrontPct = 70 };
        var braked = Solve(car, 0, -0.4);
        Assert.Equal(-0.7 * 0.4 * G * car.MassKg, braked.Front.LongitudinalN, 1e-6);
        Assert.Equal(-0.3 * 0.4 * G * car.MassKg, braked.Rear.LongitudinalN, 1e-6);
        Assert.Equal(braked.FrontLeft.LongitudinalN, braked.FrontRight.LongitudinalN, 1e-9);

        Assert.All(((double Share, double Front)[])[(0, 0), (100, 1), (40, 0.4)], one =>
        {
            var driven = Solve(car with { DriveShareFrontPct = one.Share }, 0.3, 0.2);
            Assert.Equal(one.Front * 0.2 * G * car.MassKg, driven.Front.LongitudinalN, 1e-6);
            Assert.Equal((1 - one.Front) * 0.2 * G * car.MassKg, driven.Rear.LongitudinalN, 1e-6);
        });
    }

    // Open: the same torque; locked and so far as nothing slips: by what each tyre holds; limited slip: even until the inner tyre holds no more, then at most the bias ratio.
    [Fact]
    public void A_differential_shares_as_its_kind_does()
    {
        Assert.Equal(new(500, 500, 0.5), LongitudinalShare.Compute(1000, 3000, 1000, Differential.Open));
        Assert.Equal(new(1000, 1000, 1), LongitudinalShare.Compute(2000, 3000, 1000, Differential.Open));
        Assert.Equal(new(1500, 1500, 1.5), LongitudinalShare.Compute(3000, 3000, 1000, Differential.Open));
        Assert.Equal(new(-6000, -2000, 2), LongitudinalShare.Compute(-8000, 3000, 1000, Differential.Open));
        Assert.Equal(new(750, 250, 0.25), LongitudinalShare.Compute(1000, 3000, 1000, Differential.Locked));
        Assert.Equal(new(2000, 1000, 1), LongitudinalShare.Compute(3000, 3000, 1000, Differential.LimitedSlip(2)));
        Assert.Equal(new(500, 500, 1.0 / 3), LongitudinalShare.Compute(1000, 3000, 1000, Differential.LimitedSlip(2)));
        Assert.Equal(new(-2000, -1000, 0.75), LongitudinalShare.Compute(-3000, 3000, 1000, Differential.Open));
        Assert.Equal(double.PositiveInfinity, LongitudinalShare.Compute(1000, 3000, 0, Differential.Open).Used);
        Assert.Equal(double.PositiveInfinity, LongitudinalShare.Compute(-1000, 0, 0, Differential.Open).Used);
    }

    // Lifted inner wheel: nothing driven through an open differential, all of the other's with a locked one (common practice, no source).
    [Fact]
    public void What_a_differential_can_have_rises_with_its_bias()
    {
        double[] used = [.. new[] { Differential.Open, Differential.LimitedSlip(1.5), Differential.LimitedSlip(3), Differential.Locked }
            .Select(one => LongitudinalShare.Compute(2000, 3000, 800, one).Used)];

        Assert.True(used.Zip(used[1..]).All(pair => pair.Second < pair.First), string.Join(", ", used));
    }

    [Theory]
    [InlineData(-0.5)]
    [InlineData(0.2)]
    public void A_turn_to_the_right_is_the_mirror_image_of_one_to_the_left(double longitudinalG)
    {
        foreach (var car in (HandlingCar[])[WorkedCar.Make() with { DriveShareFrontPct = 30, Differential = Differential.LimitedSlip(2) }, Drawn(30) with { DriveShareFrontPct = 30 }])
        {
            var left = Solve(car, 0.5, longitudinalG);
            var right = Solve(car, 0.5, longitudinalG, TurnDirection.Right);
            Assert.Equal(left.FrontRight.LoadN, right.FrontLeft.LoadN, 1e-6);
            Assert.Equal(left.RearLeft.LoadN, right.RearRight.LoadN, 1e-6);
            Assert.Equal(left.FrontRight.LongitudinalN, right.FrontLeft.LongitudinalN, 1e-6);
            Assert.Equal(left.FrontRight.InclinationAngleDeg, right.FrontLeft.InclinationAngleDeg, 1e-9);
            Assert.Equal(left.PitchDeg, right.PitchDeg, 1e-9);
            Assert.Equal(left.RollDeg, right.RollDeg, 1e-9);
        }
    }

    // Halving the step at least halves the change (within 10 %), above a floor a figure; through the change from braking to driving too.
    [Theory]
    [InlineData(-0.4)]
    [InlineData(0)]
    [InlineData(0.15)]
    public void Half_the_step_of_longitudinal_acceleration_moves_a_figure_at_most_half_as_far(double longitudinalG)
    {
        var car = Drawn(30) with { DriveShareFrontPct = 20, Differential = Differential.LimitedSlip(2) };
        var here = Figures(0);
        foreach (var step in new[] { 1e-3, -1e-3 })
        {
            var (whole, half) = (Figures(step), Figures(step / 2));
            for (var i = 0; i < here.Length; i++)
                Assert.True(Math.Abs(half[i] - here[i]) <= (0.55 * Math.Abs(whole[i] - here[i])) + 1e-6, $"figure {i}: {here[i]}, {half[i]}, {whole[i]}");
        }

        double[] Figures(double by)
        {
            var path = Left80.WithLongitudinal(longitudinalG + by);
            var solver = CorneringSolver.Create(car, TurnDirection.Left)!;
            Assert.Null(solver.Solve(path.At(0.6)));
            var at = solver.Attitude(path.At(0.6));
            var limits = GripLimits.Solve(solver, path, 0.6);
            return [at.RollDeg, at.PitchDeg, at.SteerDeg, at.Front.GripUsed, at.Rear.GripUsed, at.FrontRight.InclinationAngleDeg, at.RearRight.LoadN, limits.Front.LimitG!.Value, limits.Rear.LimitG!.Value];
        }
    }

    [Fact]
    public void Without_longitudinal_acceleration_and_air_the_turn_is_the_steady_one_to_the_last_bit()
    {
        var car = Drawn(30);
        var (one, other) = (CorneringSolver.Create(car, TurnDirection.Left)!, CorneringSolver.Create(car with { DriveShareFrontPct = 30, BrakeShareFrontPct = 55, Differential = Differential.Locked }, TurnDirection.Left)!);
        Assert.Null(one.Solve(0.8, 80));
        Assert.Null(other.Solve(Left80.At(0.8)));
        Assert.Equal(one.Attitude(Left80.At(0.8)), other.Attitude(Left80.At(0.8)));
    }

    // Common practice, no source: a car that brakes in a bend loads its front.
    [Fact]
    public void Braking_in_a_bend_loads_the_front_and_unloads_the_rear()
    {
        var (steady, braked) = (Solve(WorkedCar.Make(), 0.5, 0), Solve(WorkedCar.Make(), 0.5, -0.4));
        Assert.True(braked.FrontRight.LoadN > steady.FrontRight.LoadN && braked.FrontLeft.LoadN > steady.FrontLeft.LoadN);
        Assert.True(braked.RearRight.LoadN < steady.RearRight.LoadN && braked.RearLeft.LoadN < steady.RearLeft.LoadN);
        Assert.True(braked.PitchDeg > 0.5);
        Assert.True(braked.FrontRight.TravelMm > steady.FrontRight.TravelMm + 5);
    }

    // Common practice, no source: power takes grip from the driven axle, brakes from the axle that brakes more.
    [Fact]
    public void Power_and_brakes_take_side_force_from_the_axle_that_gives_them()
    {
        var car = WorkedCar.Make() with { Differential = Differential.Locked };
        Assert.True(Limit(car with { DriveShareFrontPct = 0 }, 0.3).Rear < Limit(car, 0).Rear - 0.02);
        Assert.True(Limit(car with { DriveShareFrontPct = 100 }, 0.3).Front < Limit(car with { DriveShareFrontPct = 0 }, 0.3).Front - 0.02);
        var (front, rear) = (Limit(car with { BrakeShareFrontPct = 80 }, -0.5), Limit(car with { BrakeShareFrontPct = 60 }, -0.5));
        Assert.True(front.Front < rear.Front - 0.02, $"{front} {rear}");
        Assert.True(front.Rear > rear.Rear + 0.02, $"{front} {rear}");
    }

    // The percentages of travel-sweep: anti-dive of brakes at the wheel, anti-lift of a front axle driven through half-shafts. The unsprung mass, which they leave out, is made small.
    [Theory]
    [InlineData(-60, -0.02)]
    [InlineData(60, -0.02)]
    [InlineData(60, 0.02)]
    public void Links_take_the_share_of_the_load_transfer_that_the_anti_figures_say(double antiMm, double longitudinalG)
    {
        var car = Drawn(antiMm) with { DriveShareFrontPct = 100 };
        car = car with { Front = Upright(car.Front) with { UnsprungMassKg = 0.01 } };
        var motion = car.Front.Suspension.MotionOf(car.Front.SetupOf(CarAxle.Front, Domain.Suspension.Steering.WheelSide.Left))!;
        var state = motion.Origin;
        Assert.True(motion.TryAt(0, 0, ref state, out var rest));
        var axle = new AxleInputs { IsFront = true, WheelbaseMm = 2600, CentreOfGravityHeightMm = car.CentreOfGravityHeightMm, BrakeShareFrontPct = car.BrakeShareFrontPct, Drive = AxleDrive.Alone };
        var anti = AntiFigures.Compute(rest.ContactForwardPerTravel / rest.RisePerTravel, rest.CentreForwardPerTravel, axle);

        // The downforce that presses the front wheels as far: what the links do not take.
        var travelMm = Straight(car, longitudinalG).FrontLeft.TravelMm;
        var (low, high) = (-1500.0, 1500.0);
        for (var i = 0; i < 60; i++)
        {
            var middle = (low + high) / 2;
            if (PressedMm(middle) < travelMm) low = middle;
            else high = middle;
        }

        var moved = -car.MassKg * longitudinalG * G * car.CentreOfGravityHeightMm / 2600;
        Assert.Equal((longitudinalG < 0 ? anti.AntiDivePct : anti.AntiLiftPct)!.Value, 100 * (moved - low) / moved, 0.5);

        double PressedMm(double downforceN)
        {
            return Straight(car with { Aero = new Aero(100, downforceN, 0, 0) }, 0).FrontLeft.TravelMm;
        }
    }

    // Common practice, no source.
    [Fact]
    public void Anti_dive_reduces_dive()
    {
        CorneringAttitude[] dives = [Solve(Drawn(-60), 0, -0.5), Solve(Drawn(0), 0, -0.5), Solve(Drawn(60), 0, -0.5)];

        Assert.True(dives[0].PitchDeg > dives[1].PitchDeg + 0.02 && dives[1].PitchDeg > dives[2].PitchDeg + 0.02, string.Join(", ", dives.Select(one => one.PitchDeg)));
    }

    [Fact]
    public void Downforce_adds_load_with_the_square_of_speed_and_raises_both_limits()
    {
        var car = WorkedCar.Make() with { Aero = new Aero(100, 300, 500, 0) };
        var path = TurnPath.AtSpeed(TurnDirection.Left, 200);
        var solver = CorneringSolver.Create(car, TurnDirection.Left)!;

        foreach (var lateralG in new[] { 0, 0.5 })
        {
            Assert.Null(solver.Solve(path.At(lateralG)));
            var at = solver.Attitude(path.At(lateralG));
            Assert.Equal(car.Front.LoadN + 1200, at.FrontLeft.LoadN + at.FrontRight.LoadN, 1e-5);
            Assert.Equal(car.Rear.LoadN + 2000, at.RearLeft.LoadN + at.RearRight.LoadN, 1e-5);
        }

        var (with, without) = (GripLimits.Solve(solver, path, 0.9), GripLimits.Solve(CorneringSolver.Create(car with { Aero = null }, TurnDirection.Left)!, path, 0.9));
        Assert.True(with.Front.LimitG > without.Front.LimitG + 0.05 && with.Rear.LimitG > without.Rear.LimitG + 0.05);
    }

    [Fact]
    public void Drag_is_driven_against_and_brakes_with_the_brakes()
    {
        var car = WorkedCar.Make() with { DriveShareFrontPct = 0, Aero = new Aero(100, 0, 0, 400) };
        var path = TurnPath.AtSpeed(TurnDirection.Left, 200);
        var solver = CorneringSolver.Create(car, TurnDirection.Left)!;

        Assert.Null(solver.Solve(path.At(0.4)));
        Assert.Equal(1600, solver.Attitude(path.At(0.4)).Rear.LongitudinalN, 1e-6);
        Assert.Null(solver.Solve(path.WithLongitudinal(-0.3).At(0.4)));
        var braked = solver.Attitude(path.WithLongitudinal(-0.3).At(0.4));
        Assert.Equal(1600 - (0.3 * G * car.MassKg), braked.Front.LongitudinalN + braked.Rear.LongitudinalN, 1e-6);
    }

    [Theory]
    [InlineData(40, 0)]
    [InlineData(40, 0.15)]
    [InlineData(68, 0.15)]
    [InlineData(85, 0)]
    public void Beyond_what_the_tyres_hold_lengthwise_there_is_an_equilibrium_and_it_says_so(double brakeSharePct, double toeDeg)
    {
        var car = WorkedCar.Make() with { BrakeShareFrontPct = brakeSharePct, DriveShareFrontPct = 0 };
        car = car with { Rear = car.Rear with { LeftToeDeg = toeDeg, RightToeDeg = toeDeg } };
        var last = 0.0;
        foreach (var longitudinalG in new[] { -0.7, -0.8, -0.9, -1.0, -1.1, -1.2, -1.4 })
        {
            foreach (var lateralG in new[] { 0, 0.1, 0.3, 0.5, 0.8, 1.1 })
            {
                var at = Solve(car, lateralG, longitudinalG);
                var used = Math.Max(at.Front.LongitudinalUsed, at.Rear.LongitudinalUsed);
                if (lateralG == 0) Assert.True(used > last);
                if (lateralG == 0) last = used;
            }
        }

        Assert.True(last > 1);
        foreach (var longitudinalG in new[] { 0.5, 0.7, 1.0, 1.4 }) Solve(car, 0.8, longitudinalG);
    }

    [Fact]
    public void An_axle_that_would_carry_nothing_is_named()
    {
        var car = WorkedCar.Make() with { CentreOfGravityHeightMm = 800 };

        Assert.Equal(CorneringFailure.AxleUnloaded, CorneringSolver.Create(car, TurnDirection.Left)!.Solve(Left80.WithLongitudinal(-1.8).At(0.1)));
    }

    [Fact]
    public void A_stop_follows_its_force_curve_and_is_solid_beyond_it()
    {
        // Published curve of a large sport-utility's front stop, first five points; the last stands in for its end.
        StopForce[] curve = [new(5.5, 250), new(10.5, 500), new(15.5, 800), new(17.5, 1150), new(25.5, 2200)];
        var car = WorkedCar.Make();
        car = car with { Front = car.Front with { BumpTravelMm = 20, StopCurve = curve }, Rear = car.Rear with { BumpTravelMm = 200 } };

        foreach (var lateralG in new[] { 0.75, 1.0 })
        {
            var at = Solve(car, lateralG, 0);
            var pressed = -at.FrontRight.BumpLeftMm!.Value;
            Assert.InRange(pressed, 0.5, 25);
            var before = curve.LastOrDefault(point => point.CompressionMm < pressed);
            var after = curve.First(point => point.CompressionMm >= pressed);
            var force = before.ForceN + ((after.ForceN - before.ForceN) * (pressed - before.CompressionMm) / (after.CompressionMm - before.CompressionMm));

            // What the outer wheel carries beyond spring and bar is the stop's.
            var bar = double.RadiansToDegrees(1000 * car.Front.BarRollRateNmPerDeg) / (1520.0 * 1520) * (at.FrontRight.TravelMm - at.FrontLeft.TravelMm);
            var spring = ((car.Front.LoadN / 2) - (40 * G)) + (28 * at.FrontRight.TravelMm);
            var links = (at.Front.GeometricN * 2 * (at.FrontRight.SideForceN - (40 * G * lateralG))) / (at.FrontRight.SideForceN + at.FrontLeft.SideForceN - (80 * G * lateralG));
            Assert.Equal(force, at.FrontRight.LoadN - (40 * G) - at.Front.UnsprungN - links - spring - bar, 0.01);
        }

        // One straight line of a curve is one rate over a length: the same attitude.
        var (curved, rated) = (Solve(WithFront(car.Front with { StopCurve = [new(25.5, 2200)] }), 0.9, 0), Solve(WithFront(car.Front with { StopCurve = [], StopRateNPerMm = 2200 / 25.5, StopLengthMm = 25.5 }), 0.9, 0));
        Assert.True(curved.FrontRight.BumpLeftMm < -1);
        Assert.Equal(rated.RollDeg, curved.RollDeg, 1e-9);
        Assert.Equal(rated.FrontRight.LoadN, curved.FrontRight.LoadN, 1e-6);

        HandlingCar WithFront(HandlingAxle front) => car with { Front = front };
    }

    // The lower arm's rear point raised turns its axis, so that the upright swings about a point behind: anti-dive.
    private static HandlingCar Drawn(double antiMm)
    {
        var car = WorkedCar.Make();
        Vector3 top = new(-67, 561, 843), lower = new(-14, 628, 405);
        var strut = new MacPhersonStrut
        {
            LowerArm = new(new(12, 378, 192), new(-312, 388, 196 + antiMm), new(8, 716, 178)),
            StrutTop = top,
            StrutLower = lower,
            StrutAxis = (top - lower).Unit(),
            TieRod = new(new(-148, 335, 232), new(-138, 697, 224)),
            WheelCentre = new(0, 751, 305),
        };
        return car with { Front = car.Front with { Suspension = SuspensionModel.From(strut), TrackMm = 1502 } };
    }

    // Leaning tyres, or ones on unlike paths, push against each other, and the links lift the body with it.
    private static HandlingAxle Upright(HandlingAxle axle) => axle with { LeftCamberDeg = 0, RightCamberDeg = 0 };

    private static CorneringAttitude Straight(HandlingCar car, double longitudinalG)
    {
        var demand = TurnPath.AtSpeed(TurnDirection.Left, 100).WithLongitudinal(longitudinalG).At(0);
        var solver = CorneringSolver.Create(car, TurnDirection.Left)!;
        Assert.Null(solver.Solve(demand));
        return solver.Attitude(demand);
    }

    private static CorneringAttitude Solve(HandlingCar car, double lateralG, double longitudinalG, TurnDirection turn = TurnDirection.Left)
    {
        var demand = TurnPath.AtRadius(turn, 80).WithLongitudinal(longitudinalG).At(lateralG);
        var solver = CorneringSolver.Create(car, turn)!;
        Assert.Null(solver.Solve(demand));
        return solver.Attitude(demand);
    }

    private static (double Front, double Rear) Limit(HandlingCar car, double longitudinalG)
    {
        var limits = GripLimits.Solve(CorneringSolver.Create(car, TurnDirection.Left)!, Left80.WithLongitudinal(longitudinalG), 0.8);
        return (limits.Front.LimitG!.Value, limits.Rear.LimitG!.Value);
    }
}
