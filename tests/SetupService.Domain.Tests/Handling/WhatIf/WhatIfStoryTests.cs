using System.Globalization;
using System.Text.RegularExpressions;
using SetupService.Domain.Answers;
using SetupService.Domain.Handling.Cornering;
using SetupService.Domain.Handling.Ride;
using SetupService.Domain.Handling.WhatIf;
using SetupService.Domain.Tyres;
using SetupService.Domain.Vehicles;
using SetupService.Domain.Wheels;

namespace SetupService.Domain.Tests.Handling.WhatIf;

/// <summary>What people do to their cars, and what comes of it. The directions are common practice, no source.</summary>
public sealed partial class WhatIfStoryTests
{
    private static readonly TurnPath Left = TurnPath.AtRadius(TurnDirection.Left, 60);

    [Fact]
    public void A_stiffer_rear_bar_takes_grip_from_the_rear()
    {
        var (change, text) = Told(Car(), car => car with { Rear = car.Rear with { BarRollRateNmPerDeg = 350 } }, ["/rear/antiRollBar/rollRateNmPerDeg"]);

        Assert.True(change.LimitMarginG < -0.01);
        Assert.True(change.RollDeg < 0);
        Assert.Matches("[Tt]he rear [0-9.]+ g \\(−", text);
    }

    [Fact]
    public void Without_its_front_bar_it_rolls_more_and_pushes_less()
    {
        var (change, text) = Told(Car(), car => car with { Front = car.Front with { BarRollRateNmPerDeg = 0 } }, ["/front/antiRollBar/rollRateNmPerDeg"]);

        Assert.True(change.RollDeg > 0.3);
        Assert.True(change.LimitMarginG < -0.01);
        Assert.Contains("the outer front tyre leans", text, StringComparison.OrdinalIgnoreCase);
    }

    [Fact]
    public void Stiffer_front_springs_lift_the_nose_unless_the_seats_are_trimmed()
    {
        static Vehicle Stiffer(Vehicle car) => car with { Front = car.Front with { Spring = car.Front.Spring with { RateNPerMm = 45 } } };
        var (lifted, liftedText) = Told(Car(), Stiffer, ["/front/spring/rateNPerMm"]);
        var (trimmed, trimmedText) = Told(Car(), Stiffer, ["/front/spring/rateNPerMm"], keeps: true);

        Assert.True(lifted.FrontRideHeightMm > 10);
        Assert.Contains("higher in front", liftedText, StringComparison.Ordinal);
        Assert.Equal(0, trimmed.FrontRideHeightMm!.Value, 1e-9);
        Assert.DoesNotContain("higher", trimmedText, StringComparison.Ordinal);
        Assert.True(trimmed.LimitMarginG > 0.005);
        Assert.True(trimmed.FrontRideFrequencyHz > 0.1);
    }

    [Fact]
    public void Wheels_further_out_take_load_transfer_off_both_axles()
    {
        var (change, _) = Told(Car(), car => BothWheels(car, wheel => wheel with { OffsetMm = 35 }), ["/front/wheel/offsetMm", "/rear/wheel/offsetMm", "/front/wheel/massKg", "/rear/wheel/massKg"]);

        Assert.Equal((20, 20), (Math.Round(change.FrontTrackMm!.Value, 6), Math.Round(change.RearTrackMm!.Value, 6)));
        Assert.True(change is { FrontLimitG: > 0, RearLimitG: > 0 });
        Assert.Equal(0, change.FrontUnsprungMassKg!.Value, 1e-9);
    }

    // Lighter wheels help over bumps; in a steady turn on an even road they do next to nothing, and nothing else is claimed.
    [Fact]
    public void Lighter_wheels_do_next_to_nothing_in_a_steady_turn()
    {
        var (change, text) = Told(Car(), car => BothWheels(car, wheel => wheel with { MassKg = 8 }), ["/front/wheel/massKg", "/rear/wheel/massKg"]);

        Assert.Equal(-1.6, change.FrontUnsprungMassKg!.Value, 1e-9);
        Assert.InRange(Math.Abs(change.FrontLimitG!.Value), 0, 0.004);
        Assert.InRange(Math.Abs(change.FrontRideHeightMm!.Value), 0, 0.2);
        Assert.DoesNotContain("more", text, StringComparison.Ordinal);
    }

    [Fact]
    public void Tyres_two_sizes_wider_hold_more()
    {
        var (change, _) = Told(Car(), car => car with { Front = car.Front with { Tyre = Tyre("245/40R17 91W") }, Rear = car.Rear with { Tyre = Tyre("245/40R17 91W") } }, ["/front/tyre/marking", "/rear/tyre/marking", "/front/tyre/massKg", "/rear/tyre/massKg"]);

        Assert.True(change is { FrontLimitG: > 0, RearLimitG: > 0 });
    }

    // It was answered "less understeer" without a word of the sunk nose.
    [Fact]
    public void Weight_moved_forward_sinks_the_front_and_lifts_the_rear_and_both_are_told()
    {
        static Vehicle Forward(Vehicle car) => car with { Front = car.Front with { LoadKg = car.Front.LoadKg + 40 }, Rear = car.Rear with { LoadKg = car.Rear.LoadKg - 40 } };
        var (change, text) = Told(Car(), Forward, ["/frontAxleLoadKg", "/rearAxleLoadKg"]);
        var (kept, keptText) = Told(Car(), Forward, ["/frontAxleLoadKg", "/rearAxleLoadKg"], keeps: true);

        Assert.True(change is { FrontRideHeightMm: < -5, RearRideHeightMm: > 5 });
        Assert.Contains("lower in front", text, StringComparison.Ordinal);
        Assert.Contains("higher behind", text, StringComparison.Ordinal);
        Assert.Contains("negative camber at the front", text, StringComparison.Ordinal);
        Assert.True(kept.LimitMarginG > 0);
        Assert.DoesNotContain("lower in front", keptText, StringComparison.Ordinal);
    }

    [Fact]
    public void Lowered_onto_its_stops_it_says_so()
    {
        var (_, text) = Told(Car(), car => car with { Front = car.Front with { RideHeightChangeMm = -55 }, Rear = car.Rear with { RideHeightChangeMm = -72 } }, ["/front/rideHeightChangeMm", "/rear/rideHeightChangeMm"]);

        Assert.Contains("now on the", text.Replace("now on their bump stops", "now on the", StringComparison.Ordinal), StringComparison.Ordinal);
        Assert.Contains("the rear stands on its bump stops", text, StringComparison.OrdinalIgnoreCase);
    }

    // Every figure the words quote is a figure solved, and none is called more where it is less.
    [Fact]
    public void Nothing_is_said_that_the_figures_do_not_show()
    {
        foreach (var (change, states) in Changes)
        {
            var (moved, text) = Told(Car(), change, states);
            if (text.Contains("can hold more", StringComparison.Ordinal)) Assert.True(moved is { FrontLimitG: > 0, RearLimitG: > 0 }, text);
            if (text.Contains("can hold less", StringComparison.Ordinal)) Assert.True(moved is { FrontLimitG: < 0, RearLimitG: < 0 }, text);
            foreach (Match quoted in Quoted().Matches(text))
            {
                var changeG = double.Parse(quoted.Groups[3].Value, CultureInfo.InvariantCulture) * (quoted.Groups[2].Value == "+" ? 1 : -1);
                Assert.Equal(quoted.Groups[1].Value == "front" ? moved.FrontLimitG!.Value : moved.RearLimitG!.Value, changeG, 5.1e-4);
            }

            Assert.InRange(text.Split(". ").Length, 1, 3);
        }
    }

    [Fact]
    public void A_car_the_same_on_both_sides_is_judged_alike_in_either_turn()
    {
        var given = StandingCar.AsGiven(Car())!;
        foreach (var (change, states) in Changes)
        {
            var changed = given.Changed(change(given.Stated), Change(states), out _)!;
            var (left, right) = (Study(given, Left).Changed(changed).Figures, Study(given, TurnPath.AtRadius(TurnDirection.Right, 60)).Changed(changed).Figures);
            Assert.Equal(left.FrontLimitG!.Value, right.FrontLimitG!.Value, 1e-7);
            Assert.Equal(left.RearLimitG!.Value, right.RearLimitG!.Value, 1e-7);
            Assert.Equal(left.RollDeg!.Value, right.RollDeg!.Value, 1e-7);
        }
    }

    // What the tyres have in common leaves a difference alone: the grip of the road moves both states, and hardly their difference.
    [Fact]
    public void A_difference_is_known_better_than_what_it_is_between()
    {
        var given = StandingCar.AsGiven(Car())!;
        var outcome = Study(given, Left).Changed(given.Changed(given.Stated with { Front = given.Stated.Front with { BarRollRateNmPerDeg = 500 } }, Change("/front/antiRollBar"), out _)!);
        var limits = Limits(given);

        var (difference, whole) = (outcome.LimitChange!.Front, limits.Front!.Value);
        Assert.True(difference.Upper - difference.Lower < 0.25 * (whole.Upper - whole.Lower));
        Assert.InRange(outcome.Figures.FrontLimitG!.Value - limits.Limits.Front.LimitG!.Value, difference.Lower, difference.Upper);
    }

    // Other tyres may be 3 % better or worse than the ones before, whatever their size: what both axles hold on them is less sure than on the same.
    [Fact]
    public void Other_tyres_leave_more_open_than_other_springs()
    {
        var given = StandingCar.AsGiven(Car())!;
        var tyres = Study(given, Left).Changed(given.Changed(given.Stated with { Front = given.Stated.Front with { Tyre = Tyre("235/45R17 94W") } }, Change("/front/tyre/marking"), out _)!).LimitChange!.Front;

        Assert.True(tyres.Upper - tyres.Lower > 0.03);
        Assert.True(tyres is { Lower: < 0, Upper: > 0 });
    }

    // 1.5° were set, the height brings some tenths: only these come "with it".
    [Fact]
    public void Camber_that_was_set_is_not_told_as_what_lowering_brings()
    {
        var (change, text) = Told(
            Car(),
            car => car with { Front = car.Front with { RideHeightChangeMm = -20, Left = new() { CamberDeg = -2.5 }, Right = new() { CamberDeg = -2.5 } } },
            ["/front/rideHeightChangeMm", "/front/alignment/camberDeg"]);

        Assert.True(change.FrontCamberDeg < -1.5);
        Assert.Matches(@"lower in front \(with it 0\.\d° more negative camber at the front", text);
    }

    // "As before" is said only where both figures read alike.
    [Fact]
    public void What_is_as_before_reads_as_before()
    {
        var limits = Study(StandingCar.AsGiven(Car())!, Left).Given.Figures;
        var said = 0;
        foreach (var (change, states) in Changes)
        {
            foreach (Match same in AsBefore().Matches(Told(Car(), change, states).Text))
            {
                said++;
                Assert.Equal(string.Create(CultureInfo.InvariantCulture, $"{(same.Groups[1].Value == "front" ? limits.FrontLimitG : limits.RearLimitG):0.00}"), same.Groups[2].Value);
            }
        }

        Assert.True(said > 0);
    }

    [GeneratedRegex("(front|rear)(?: can hold)? about ([0-9.]+) g as before")]
    private static partial Regex AsBefore();

    [GeneratedRegex("(front|rear)(?: can hold)? [0-9.]+ g \\(([+−])([0-9.]+)\\)")]
    private static partial Regex Quoted();

    private static readonly (Func<Vehicle, Vehicle> Change, string[] States)[] Changes =
    [
        (car => car with { Rear = car.Rear with { BarRollRateNmPerDeg = 350 } }, ["/rear/antiRollBar"]),
        (car => car with { Rear = car.Rear with { BarRollRateNmPerDeg = 0 } }, ["/rear/antiRollBar"]),
        (car => car with { Front = car.Front with { BarRollRateNmPerDeg = 0 } }, ["/front/antiRollBar"]),
        (car => car with { Front = car.Front with { Spring = car.Front.Spring with { RateNPerMm = 45 } } }, ["/front/spring/rateNPerMm"]),
        (car => car with { CentreOfGravityHeightMm = 470 }, ["/centreOfGravityHeightMm"]),
        (car => car with { CentreOfGravityHeightMm = 600 }, ["/centreOfGravityHeightMm"]),
        (car => car with { Front = car.Front with { Left = new() { CamberDeg = -3 }, Right = new() { CamberDeg = -3 } } }, ["/front/alignment/camberDeg"]),
        (car => BothWheels(car, wheel => wheel with { OffsetMm = 25 }), ["/front/wheel/offsetMm", "/rear/wheel/offsetMm"]),
    ];

    private static (WhatIfFigures Change, string Text) Told(Vehicle car, Func<Vehicle, Vehicle> change, string[] states, bool keeps = false)
    {
        var given = StandingCar.AsGiven(car)!;
        var study = Study(given, Left);
        var changed = given.Changed(change(given.Stated), Change(states) with { KeepsRideHeight = keeps }, out _)!;
        var after = study.Changed(changed);
        return (after.Figures.Less(study.Given.Figures), WhatIfWords.Describe(given, study.Given, Limits(given), changed, after, UnitSystem.Metric));
    }

    private static LimitStudy Limits(StandingCar given) => LimitStudy.Compute(given.Reading, CorneringSolver.Create(given.Reading.Car, TurnDirection.Left)!, Left, 0.8, null)!;

    private static WhatIfStudy Study(StandingCar given, TurnPath path) => WhatIfStudy.Compute(given, path, 0.75, GripScale.ByTyres);

    private static CarChange Change(params string[] states) => new()
    {
        States = place => Array.Exists(states, one => one == place || one.StartsWith(place + "/", StringComparison.Ordinal) || place.StartsWith(one + "/", StringComparison.Ordinal)),
    };

    private static Vehicle BothWheels(Vehicle car, Func<Wheel, Wheel> change) => car with
    {
        Front = car.Front with { Wheel = change(car.Front.Wheel!) },
        Rear = car.Rear with { Wheel = change(car.Rear.Wheel!) },
    };

    private static Tyre Tyre(string marking) => new(TyreMarkingReader.Read(marking).Value!) { PressureKpa = 230, MassKg = 9.9, Category = TyreCategory.Summer };

    internal static Vehicle Car() => new()
    {
        WheelbaseMm = 2570,
        CentreOfGravityHeightMm = 505,
        Front = Axle(690, 1510, 30, 310, -1, 60),
        Rear = Axle(640, 1500, 32, 110, -1.4, 95),
    };

    private static Axle Axle(double loadKg, double trackMm, double rateNPerMm, double barNmPerDeg, double camberDeg, double rollCentreMm) => new()
    {
        LoadKg = loadKg,
        TrackMm = trackMm,
        UnsprungMassKg = 38,
        Wheel = new Wheel { RimDiameterIn = 17, RimWidthIn = 7.5, OffsetMm = 45, MassKg = 9.6 },
        Tyre = Tyre("225/45R17 91W"),
        Spring = new Spring { RateNPerMm = rateNPerMm, MotionRatio = 0.94, FreeLengthMm = 320 },
        Damper = new Damper { MotionRatio = 0.94 },
        BarRollRateNmPerDeg = barNmPerDeg,
        RollCentreHeightMm = rollCentreMm,
        Left = new() { CamberDeg = camberDeg },
        Right = new() { CamberDeg = camberDeg },
        Compliance = new Compliance { CamberDegPerKn = 0.12, ToeDegPerKn = 0.02 },
        BumpTravelMm = 70,
        ReboundTravelMm = 85,
    };
}
