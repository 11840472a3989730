using SetupService.Domain.Answers;
using SetupService.Domain.Handling.Ride;
using SetupService.Domain.Suspension;
using SetupService.Domain.Suspension.Readings;
using SetupService.Domain.Tyres;
using SetupService.Domain.Vehicles;
using SetupService.Domain.Wheels;

namespace SetupService.Domain.Tests.Handling.Ride;

/// <summary>What follows a change of parts, and how the car then stands. Worked by hand where no source is named.</summary>
public sealed class StandingCarTests
{
    private const double G = 9.80665;

    // 60 kg more on the axle press springs of 28 N/mm at the wheel by 30 · 9.80665 / 28 = 10.507 mm further; the tail stays.
    [Fact]
    public void A_heavier_front_sinks_by_its_springs()
    {
        var car = Changed(Car(), car => car with { Front = car.Front with { LoadKg = car.Front.LoadKg + 60 } }, "/frontAxleLoadKg");

        Assert.Equal(-30 * G / 28, car.Stands.Front.RideHeightChangeMm, 1e-6);

        // The tyres are pressed a little flatter too: some 30 · 9.80665 N by 220 N/mm.
        Assert.InRange(car.HeightMm.Front!.Value, (-30 * G / 28) - 1.8, (-30 * G / 28) - 1);
        Assert.Equal(0, car.HeightMm.Rear);
    }

    [Fact]
    public void Kept_at_its_height_it_stands_as_before()
    {
        var given = Given(Car());
        var car = given.Changed(
            given.Stated with { Front = given.Stated.Front with { LoadKg = given.Stated.Front.LoadKg + 60, Spring = given.Stated.Front.Spring with { RateNPerMm = 40 } } },
            Change("/frontAxleLoadKg", "/front/spring/rateNPerMm") with { KeepsRideHeight = true },
            out _)!;

        Assert.Equal(0, car.HeightMm.Front!.Value, 1e-9);
        Assert.Equal(0, car.HeightMm.Rear);

        // The seats make good for what the tyres are pressed flatter.
        Assert.Equal(-(car.Stands.Front.LoadedRadiusMm - given.Stands.Front.LoadedRadiusMm), car.Stands.Front.RideHeightChangeMm, 1e-9);
    }

    // Of the same length, 28 N/mm at the wheel are pressed by weight / 28 and 56 N/mm by weight / 56.
    [Fact]
    public void A_stiffer_spring_of_the_same_length_lifts_the_car()
    {
        var car = Changed(Car(), car => car with { Front = car.Front with { Spring = car.Front.Spring with { RateNPerMm = 56 / 0.81 } } }, "/front/spring/rateNPerMm");

        var forceN = (700 - 80) * G / 2;
        Assert.Equal((forceN / 28) - (forceN / 56), car.HeightMm.Front!.Value, 1e-6);
    }

    // 3040 N by 28 N/mm are 109 mm, by 200 N/mm 15: 93 mm, more than the 60 left to droop.
    [Fact]
    public void A_spring_that_lifts_it_beyond_droop_is_told_with_its_amount_and_a_remedy()
    {
        var given = Given(Car());
        var car = given.Changed(given.Stated with { Front = given.Stated.Front with { Spring = given.Stated.Front.Spring with { RateNPerMm = 200 / 0.81 } } }, Change("/front/spring/rateNPerMm"), out var fault);

        Assert.Null(car);
        Assert.Equal((CarAxle.Front, StandingReason.BeyondDroop), (fault!.At, fault.Reason));
        var text = fault.Describe(UnitSystem.Metric);
        Assert.Contains("93.4 mm higher", text, StringComparison.Ordinal);
        Assert.Contains("60 mm of travel", text, StringComparison.Ordinal);
        Assert.Contains("keepRideHeight", text, StringComparison.Ordinal);
    }

    // Offset lower by 10 mm: both wheels 10 mm further out, the track 20 mm wider.
    [Theory]
    [InlineData(35, 0, 1520)]
    [InlineData(45, 10, 1520)]
    [InlineData(50, 0, 1490)]
    public void Offset_and_spacer_move_the_track(double offsetMm, double spacerMm, double trackMm)
    {
        var car = Changed(Car(), car => WithWheel(car, car.Front.Wheel! with { OffsetMm = offsetMm, SpacerMm = spacerMm }), "/front/wheel/offsetMm");

        Assert.Equal(trackMm, car.Stands.Front.TrackMm, 1e-9);
        Assert.Equal(1500, car.Stands.Rear.TrackMm, 1e-9);
    }

    [Fact]
    public void A_track_the_change_states_holds()
    {
        var car = Changed(Car(), car => WithWheel(car with { Front = car.Front with { TrackMm = 1530 } }, car.Front.Wheel! with { OffsetMm = 35 }), "/front/wheel/offsetMm", "/front/trackMm");

        Assert.Equal(1530, car.Stands.Front.TrackMm);
    }

    // The swing arm of 2000 mm is 10 mm longer at the wheel's new place: 0.9 · 2000 / 2010.
    [Fact]
    public void Further_out_a_spring_has_less_leverage()
    {
        var given = Given(Car());
        var arm = given.Reading.Car.Front.SwingArmMm;
        var car = Changed(Car(), car => WithWheel(car, car.Front.Wheel! with { OffsetMm = 35 }), "/front/wheel/offsetMm");

        Assert.Equal(given.Stands.Front.MotionRatio * arm / (arm + 10), car.Stands.Front.MotionRatio, 1e-9);
        Assert.Equal(given.Stands.Front.BumpTravelMm!.Value * (arm + 10) / arm, car.Stands.Front.BumpTravelMm!.Value, 1e-9);
    }

    // 9.6 to 7.6 kg: 2 kg less unsprung a wheel, 4 kg less on the axle; the springs carry what they did, so the car stands as it did.
    [Fact]
    public void A_lighter_wheel_takes_its_mass_off_the_axle_and_leaves_the_springs_alone()
    {
        var car = Changed(Car(), car => WithWheel(car, car.Front.Wheel! with { MassKg = 7.6 }), "/front/wheel/massKg");

        Assert.Equal(38, car.Stands.Front.UnsprungMassKg, 1e-9);
        Assert.Equal(696, car.Stands.Front.LoadN / G, 1e-9);
        Assert.Equal(0, car.Stands.Front.RideHeightChangeMm, 1e-9);
        Assert.Empty(car.Unknown);
    }

    [Fact]
    public void Another_wheel_without_its_mass_leaves_the_unsprung_mass_open()
    {
        var car = Changed(Car(), car => WithWheel(car, car.Front.Wheel! with { OffsetMm = 40 }), "/front/wheel/offsetMm");

        var gap = Assert.Single(car.Unknown);
        Assert.Equal((CarAxle.Front, FollowingFigure.UnsprungMass), (gap.At, gap.Figure));
        Assert.Equal(["/front/wheel/massKg"], gap.Needs);
        Assert.Equal(40, car.Stands.Front.UnsprungMassKg, 1e-9);
    }

    // 225 · 0.05 = 11.25 mm more of sidewall, less what a softer one is pressed flatter or more what a stiffer one is not.
    [Fact]
    public void A_tyre_of_another_size_stands_the_body_where_its_radius_does()
    {
        var given = Given(Car());
        var car = Changed(Car(), car => car with { Front = car.Front with { Tyre = Tyre("225/50R17 94W") } }, "/front/tyre/marking", "/front/tyre/massKg");

        var raisedMm = car.Stands.Front.LoadedRadiusMm - given.Stands.Front.LoadedRadiusMm;
        Assert.InRange(raisedMm, 10, 12.5);
        Assert.Equal(raisedMm, car.HeightMm.Front!.Value, 1e-9);
        Assert.Equal(0, car.Stands.Front.RideHeightChangeMm);
        Assert.Equal(given.Stands.CentreOfGravityHeightMm + (raisedMm * given.Stands.ShareFront), car.Stands.CentreOfGravityHeightMm, 1e-6);
    }

    // What was measured of the old tyre is scaled to the new one, not kept.
    [Fact]
    public void A_measured_loaded_radius_and_rate_follow_the_tyre()
    {
        var measured = Car() with { Front = Car().Front with { LoadedRadiusMm = 300, Tyre = Tyre("225/45R17 91W") with { VerticalRateNPerMm = 230 } } };
        var car = Changed(measured, car => car with { Front = car.Front with { Tyre = car.Front.Tyre! with { PressureKpa = 180 } } }, "/front/tyre/pressureKpa");

        Assert.True(car.Stands.Front.TyreRateNPerMm < 220);
        Assert.True(car.Stands.Front.LoadedRadiusMm < 300);
        Assert.True(car.HeightMm.Front < 0);
        Assert.Contains(car.Followed, one => one.Input == "/vehicle/front/loadedRadiusMm");
    }

    // Readings were taken at the camber before: set 1.5° further in, the whole curve is 1.5° further in and contradicts nothing.
    [Fact]
    public void Setting_camber_moves_what_was_read()
    {
        var readings = new CornerReadings { Travel = [new(-50, 0.2), new(-25, -0.35), new(0, -0.95), new(25, -1.5), new(50, -2.1)], StatedCamberDeg = -0.95 };
        var measured = Car() with { Front = Car().Front with { Suspension = SuspensionModel.From(readings), Left = new() { CamberDeg = -0.95 }, Right = new() { CamberDeg = -0.95 } } };
        var car = Changed(
            measured,
            car => car with
            {
                Front = car.Front with { Suspension = SuspensionModel.From(readings with { StatedCamberDeg = -2.45 }), Left = new() { CamberDeg = -2.45 }, Right = new() { CamberDeg = -2.45 } },
            },
            "/front/alignment/camberDeg");

        Assert.Empty(car.Stated.SuspensionCautions());
        Assert.Equal(Given(measured).Stands.Front.LeftCamberDeg - 1.5, car.Stands.Front.LeftCamberDeg, 1e-6);
    }

    // A stop of 45 mm at a damper's ratio of 0.9 gives the wheel 50 mm more until metal meets metal.
    [Fact]
    public void Without_a_bump_stop_the_wheel_goes_on_to_the_metal()
    {
        var given = Given(Car());
        var car = given.Changed(given.Stated, Change() with { Removed = new HashSet<string> { CarChange.FrontBumpStop } }, out _)!;

        Assert.Equal(70 + 50, car.Stands.Front.BumpTravelMm!.Value, 1e-9);
        Assert.Equal(0, car.Stands.Front.StopLengthMm);
        Assert.Equal(given.Stands.Rear.BumpTravelMm, car.Stands.Rear.BumpTravelMm);
    }

    // A bar, a mass and a height that were assumed as typical stay what they were assumed to be, whatever else changes.
    [Fact]
    public void What_was_assumed_is_not_assumed_anew()
    {
        var bare = Car() with { CentreOfGravityHeightMm = null, Front = Car().Front with { BarRollRateNmPerDeg = null, UnsprungMassKg = null } };
        var given = Given(bare);
        var car = Changed(bare, car => car with { Front = car.Front with { Spring = car.Front.Spring with { RateNPerMm = 35 }, TrackMm = 1560 } }, "/front/spring/rateNPerMm", "/front/trackMm");

        Assert.Equal(given.Stands.Front.BarRollRateNmPerDeg, car.Stands.Front.BarRollRateNmPerDeg);
        Assert.Equal(given.Stands.Front.UnsprungMassKg, car.Stands.Front.UnsprungMassKg);
        Assert.Equal(given.Stands.CentreOfGravityHeightMm, car.Stands.CentreOfGravityHeightMm, 1e-9);
    }

    // 10 mm longer springs, then 5 mm of preload more, one after the other: the sum of both.
    [Fact]
    public void Changes_one_after_the_other_add_up_in_height()
    {
        var given = Given(Car());
        var longer = given.Stated with { Front = given.Stated.Front with { Spring = given.Stated.Front.Spring with { FreeLengthMm = 309 } } };
        var both = longer with { Rear = longer.Rear with { Spring = longer.Rear.Spring with { FreeLengthMm = 291 } }, Front = longer.Front with { Spring = longer.Front.Spring with { FreeLengthMm = 304.5 } } };
        var (first, second) = (Change("/front/spring/freeLengthMm"), Change("/front/spring/freeLengthMm", "/rear/spring/freeLengthMm"));
        var one = given.Changed(longer, first, out _)!;

        var two = given.Changed(both, first.And(second), second, one, out _)!;

        Assert.Equal(10, one.HeightMm.Front!.Value, 1e-9);
        Assert.Equal(5, two.HeightMm.Front!.Value, 1e-9);
        Assert.Equal(-10, two.HeightMm.Rear!.Value, 1e-9);
    }

    private static StandingCar Given(Vehicle car) => StandingCar.AsGiven(car)!;

    private static StandingCar Changed(Vehicle car, Func<Vehicle, Vehicle> change, params string[] states) => Given(car).Changed(change(car), Change(states), out _)!;

    private static CarChange Change(params string[] states) => new()
    {
        States = place => Array.Exists(states, one => one == place || one.StartsWith(place + "/", StringComparison.Ordinal)),
    };

    private static Vehicle WithWheel(Vehicle car, Wheel wheel) => car with { Front = car.Front with { Wheel = wheel } };

    private static Tyre Tyre(string marking) => new(TyreMarkingReader.Read(marking).Value!) { PressureKpa = 230, MassKg = 9.9 };

    // Motion ratio 1 at the spring in front would hide it: 0.9, so that 28 N/mm at the wheel are 34.57 at the spring.
    private static Vehicle Car() => new()
    {
        WheelbaseMm = 2600,
        CentreOfGravityHeightMm = 520,
        Front = Axle(700, 28 / 0.81) with { Wheel = new Wheel { RimDiameterIn = 17, RimWidthIn = 7.5, OffsetMm = 45, MassKg = 9.6 } },
        Rear = Axle(600, 28 / 0.81),
    };

    private static Axle Axle(double loadKg, double rateNPerMm) => new()
    {
        LoadKg = loadKg,
        TrackMm = 1500,
        UnsprungMassKg = 40,
        Tyre = Tyre("225/45R17 91W"),
        Spring = new Spring { RateNPerMm = rateNPerMm, MotionRatio = 0.9, FreeLengthMm = 300 },
        Damper = new Damper { MotionRatio = 0.9 },
        BumpStop = new BumpStop { LengthMm = 45 },
        BarRollRateNmPerDeg = 300,
        RollCentreHeightMm = 60,
        BumpTravelMm = 70,
        ReboundTravelMm = 60,
    };
}
