using SetupService.Domain.Vehicles;
using SetupService.Domain.Wear.Diagnosis;

namespace SetupService.Domain.Tests.Wear.Simulation;

/// <summary>The simulated tread against what is published of tread wear, one change at a time.</summary>
public sealed class TreadPhysicsTests
{
    /// <summary>
    /// Work of toe by a tyre of 1027 N/deg, force by scrub: the four-kilonewton coefficient set's stiffness, worked by hand; a brush slides a little
    /// at the larger angles and stays below.
    /// </summary>
    [Theory]
    [InlineData(0.05, 44.8)]
    [InlineData(0.1, 179.3)]
    [InlineData(0.2, 717.2)]
    [InlineData(0.5, 4482.5)]
    [InlineData(1.0, 17929)]
    public void The_work_of_toe_goes_with_its_square(double toeDeg, double joulePerKm)
    {
        const double slidingSlip = 0.17;
        const double frictionForceN = 1027 * 180 / Math.PI * slidingSlip / 3;

        var work = 1000 * frictionForceN * Brush.Work(toeDeg * Math.PI / 180, slidingSlip);

        Assert.InRange(work, joulePerKm * 0.89, joulePerKm * 1.001);
    }

    [Theory]
    [InlineData(0.0)]
    [InlineData(0.4)]
    [InlineData(-0.9)]
    public void The_wheels_of_an_axle_hold_the_turn(double lateralG)
    {
        var car = PlainCar.Of();

        var (left, right) = RollingAxle.Of(car, car.Front, new(1, lateralG, 0, true));

        Assert.Equal(2 * lateralG, Force(right) - Force(left), 1e-6);

        double Force(RollingWheel wheel) => wheel.LoadShare * wheel.Friction * Brush.ForceShare(wheel.SideSlip, car.Front.Tyre.SlidingSlipRad);
    }

    /// <summary>ROSAP5836 (abstract): on cars of controlled alignment outer grooves wore 10 to 50 % more than inner ones; such cars stood nearly upright.</summary>
    [Fact]
    public void An_aligned_upright_car_wears_its_outer_grooves_more_as_convoys_did()
    {
        var (outerMm, _, innerMm) = PlainCar.Of().Fronts(wheel => wheel with { CamberDeg = -0.3 }).LeftFrontLost();

        Assert.InRange(outerMm / innerMm, 1.1, 1.5);
    }

    /// <summary>TPMS: 1.78 % of life per psi below 35 psi; a fifth too little is 7 psi, the worst place lasts 87.5 % as long.</summary>
    [Fact]
    public void Too_little_air_shortens_the_life_of_the_shoulders_as_published()
    {
        var right = PlainCar.Of().LeftFrontLost();
        var low = PlainCar.Of().Fronts(wheel => wheel with { PressureOffShare = -0.2 }).LeftFrontLost();

        var lifeShare = Math.Max(right.OuterMm, right.InnerMm) / Math.Max(low.OuterMm, low.InnerMm);

        Assert.InRange(lifeShare, 0.82, 0.93);
    }

    [Fact]
    public void Too_little_air_wears_both_shoulders_and_too_much_the_middle()
    {
        var right = PlainCar.Of().LeftFrontLost();
        var low = PlainCar.Of().Fronts(wheel => wheel with { PressureOffShare = -0.2 }).LeftFrontLost();
        var high = PlainCar.Of().Fronts(wheel => wheel with { PressureOffShare = 0.2 }).LeftFrontLost();

        Assert.True(low.OuterMm > right.OuterMm * 1.05 && low.InnerMm > right.InnerMm * 1.05 && low.CentreMm < right.CentreMm);
        Assert.True(high.CentreMm > right.CentreMm * 1.1 && high.OuterMm < right.OuterMm && high.InnerMm < right.InnerMm);
    }

    [Fact]
    public void Toe_out_wears_the_inner_shoulder_more_and_toe_in_the_outer()
    {
        var straight = PlainCar.Of().LeftFrontLost();
        var toedOut = PlainCar.Of().Fronts(wheel => wheel with { ToeDeg = -0.3 }).LeftFrontLost();
        var toedIn = PlainCar.Of().Fronts(wheel => wheel with { ToeDeg = 0.3 }).LeftFrontLost();

        Assert.True(toedOut.InnerMm / toedOut.OuterMm > 1.25 * straight.InnerMm / straight.OuterMm);
        Assert.True(toedIn.OuterMm / toedIn.InnerMm > 1.15 * straight.OuterMm / straight.InnerMm);
    }

    [Fact]
    public void Little_camber_wears_the_outer_shoulder_on_a_track_and_much_the_inner_on_the_road()
    {
        var car = PlainCar.Of(trackLaps: 60, roadKm: 500);
        var needed = car.Front.NeededNegativeCamberDeg(car.Use.CorneringG);
        var flat = car.Fronts(wheel => wheel with { CamberDeg = -needed }).LeftFrontLost();
        var upright = car.Fronts(wheel => wheel with { CamberDeg = -needed + 2 }).LeftFrontLost();
        var onRoad = PlainCar.Of().Fronts(wheel => wheel with { CamberDeg = -3.5 }).LeftFrontLost();

        Assert.True(upright.OuterMm / upright.InnerMm > 1.3 * flat.OuterMm / flat.InnerMm);
        Assert.True(onRoad.InnerMm > 1.2 * onRoad.OuterMm);
    }

    [Fact]
    public void Camber_that_stands_the_tread_flat_presses_it_evenly_in_the_turn()
    {
        var plain = PlainCar.Of(trackLaps: 60);
        var camberDeg = -plain.Front.NeededNegativeCamberDeg(plain.Use.TrackG);
        var car = plain.Fronts(wheel => wheel with { CamberDeg = camberDeg });

        var outside = RollingAxle.Of(car, car.Front, new(1, car.Use.TrackG, 0, true)).Right;
        var press = new TreadPress(car.Front.Tyre, car.Front.Right, 1, outside, true);

        Assert.InRange(Strips.At(press.Pressure, 15) / Strips.At(press.Pressure, 85), 0.9, 1.1);
    }

    [Fact]
    public void A_locked_wheel_leaves_one_flat_place()
    {
        var wheel = PlainCar.Of().Front.Left with { FlatMm = 1.2, RunOutMm = 0 };
        var round = new RoundTheTyre(wheel, 0, 140, 5);

        Assert.InRange(round.ExtraMm(140, 0), 1.1, 1.3);
        Assert.InRange(round.ExtraMm(190, 0), 0, 0.01);
        Assert.InRange(round.ExtraMm(320, 0), 0, 0.01);
    }

    [Fact]
    public void Spinning_wears_the_middle_of_the_driven_axle()
    {
        var plain = PlainCar.Of();
        var spun = plain with { Rear = plain.Rear with { SpunRoadShare = 0.002 } };

        var (plainMm, spunMm) = (TyreWear.Of(plain), TyreWear.Of(spun));

        Assert.InRange(spunMm[0].LostMm[15] / plainMm[0].LostMm[15], 0.995, 1.005);
        Assert.True(spunMm[2].LostMm[15] > 1.2 * plainMm[2].LostMm[15]);
        Assert.True(spunMm[2].LostMm[15] / spunMm[2].LostMm[4] > plainMm[2].LostMm[15] / plainMm[2].LostMm[4]);
    }

    [Fact]
    public void An_axle_that_finds_its_own_way_runs_straight_and_one_that_drags_does_not()
    {
        var plain = PlainCar.Of();
        var askew = plain.Rear with { Left = plain.Rear.Left with { ToeDeg = -0.3 }, Right = plain.Rear.Right with { ToeDeg = 0.36 } };

        var free = TyreWear.Of(plain with { Rear = askew });
        var drags = TyreWear.Of(plain with { Rear = askew with { DragShare = 0.6 } });

        Assert.Equal(free[2].StraightSlipDeg, free[3].StraightSlipDeg, 1e-6);
        Assert.True(drags[2].StraightSlipDeg < -0.1 && drags[3].StraightSlipDeg > 0.1);
    }

    [Fact]
    public void A_front_steered_too_far_is_named_and_wears_itself()
    {
        var plain = PlainCar.Of(trackLaps: 40, roadKm: 1000).Fronts(wheel => wheel with { CamberDeg = -3.2 });
        var overdriven = plain with { Use = plain.Use with { OverdrivenShare = 0.6, OverdrivenSlip = 1.3 } };

        var (plainTyres, tyres) = (TyreWear.Of(plain), TyreWear.Of(overdriven));

        Assert.DoesNotContain((WearCause.FrontOverdriven, CarAxle.Front), TrueFaults.Of(plain, plainTyres));
        Assert.Contains((WearCause.FrontOverdriven, CarAxle.Front), TrueFaults.Of(overdriven, tyres));
        Assert.True(Strips.Mean(tyres[0].LostMm) > 1.3 * Strips.Mean(plainTyres[0].LostMm));
        Assert.InRange(Strips.Mean(tyres[2].LostMm) / Strips.Mean(plainTyres[2].LostMm), 0.995, 1.005);
    }
}
