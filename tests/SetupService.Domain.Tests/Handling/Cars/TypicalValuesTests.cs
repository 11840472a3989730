using SetupService.Domain.Answers;
using SetupService.Domain.Handling.CamberTarget;
using SetupService.Domain.Handling.Cars;
using SetupService.Domain.Suspension;
using SetupService.Domain.Tests.Fitment;
using SetupService.Domain.Tests.Suspension;
using SetupService.Domain.Vehicles;

namespace SetupService.Domain.Tests.Handling.Cars;

/// <summary>What stands in for an input nobody gave. Where no source is named, the values are common practice and this table repeats them, so that none moves unseen.</summary>
public sealed class TypicalValuesTests
{
    [Theory]
    [InlineData(CarAxle.Front, -0.5, -1.5, 0.3)]
    [InlineData(CarAxle.Rear, -1.0, -2.0, 0.0)]
    public void Camber(CarAxle axle, double value, double lower, double upper) => Same(TypicalValues.CamberDeg(axle), value, lower, upper);

    [Theory]
    [InlineData(CarAxle.Front, 0.05, -0.05, 0.15)]
    [InlineData(CarAxle.Rear, 0.1, 0.0, 0.25)]
    public void Toe(CarAxle axle, double value, double lower, double upper) => Same(TypicalValues.ToeDeg(axle), value, lower, upper);

    [Theory]
    [InlineData(SuspensionLayout.MacPhersonStrut, 0.95, 0.88, 1.0)]
    [InlineData(SuspensionLayout.DoubleWishbone, 0.65, 0.50, 0.85)]
    [InlineData(SuspensionLayout.FiveLink, 0.65, 0.50, 0.85)]
    [InlineData(SuspensionLayout.SemiTrailingArm, 0.75, 0.60, 0.95)]
    [InlineData(SuspensionLayout.TwistBeam, 0.90, 0.70, 1.1)]
    [InlineData(SuspensionLayout.Measured, 0.85, 0.55, 1.05)]
    [InlineData(null, 0.85, 0.55, 1.05)]
    public void Motion_ratio(SuspensionLayout? layout, double value, double lower, double upper) => Same(TypicalValues.MotionRatio(layout), value, lower, upper);

    // A strut carries its spring about the damper, so both have one ratio; elsewhere the damper's is some 0.85 to 1.2 of the spring's.
    [Theory]
    [InlineData(SuspensionLayout.MacPhersonStrut, 0.8, 0.78, 0.82)]
    [InlineData(SuspensionLayout.TwistBeam, 0.8, 0.68, 0.96)]
    [InlineData(null, 0.8, 0.68, 0.96)]
    public void Damper_motion_ratio(SuspensionLayout? layout, double value, double lower, double upper) =>
        Same(TypicalValues.DamperMotionRatio(layout, 0.8), value, lower, upper);

    // Tire Science and Technology 33(3), 2005, its coefficients from memory, worked by hand for 205/55R16 at 230 kPa:
    // 9.80665 · (0.00028 · 230 · √((1.03 − 0.22) · 205 · (225.5 + 406)) + 3.45) = 238.342 N/mm; at 250 kPa 256.125.
    [Theory]
    [InlineData(null, 238.3421)]
    [InlineData(230.0, 238.3421)]
    [InlineData(250.0, 256.1255)]
    public void Rate_of_a_tyre(double? pressureKpa, double expectedNPerMm)
    {
        var rate = TypicalValues.TyreRateNPerMm(DemoCar.Tyre("205/55R16 91V", pressureKpa));

        Assert.Equal(expectedNPerMm, rate.Value, 5e-4);
        Assert.Equal(0.8 * expectedNPerMm, rate.Lower, 5e-4);
        Assert.Equal(1.2 * expectedNPerMm, rate.Upper, 5e-4);
        Assert.Equal(pressureKpa is null, rate.Source.Contains("none is given", StringComparison.Ordinal));
    }

    // Static stability factor = track / (2 · height): DOT HS 809 868, mean 1.41 for passenger cars. 1500 / 2.82 = 531.915 mm.
    [Fact]
    public void Height_of_the_centre_of_gravity() => Assert.Equal(531.915, TypicalValues.CentreOfGravityHeightMm(1500, null).Value, 5e-4);

    // Medians of 1270 public measurements by body, cars from 2001 to 2021 (an open study, 2022): height at the median of mean track, mm. Half a median track over a median factor
    // is not the median height, but close.
    [Theory]
    [InlineData(CarBody.Sedan, 1553, 545)]
    [InlineData(CarBody.Coupe, 1511, 532)]
    [InlineData(CarBody.Hatchback, 1494, 565)]
    [InlineData(CarBody.Wagon, 1496, 578)]
    [InlineData(CarBody.Convertible, 1494, 507)]
    [InlineData(CarBody.Suv, 1593, 662)]
    [InlineData(CarBody.Pickup, 1669, 716)]
    public void Height_of_the_centre_of_gravity_by_body(CarBody body, double trackMm, double heightMm)
    {
        var typical = TypicalValues.CentreOfGravityHeightMm(trackMm, body);

        Assert.Equal(heightMm, typical.Value, 15.0);
        Assert.InRange(heightMm, typical.Lower, typical.Upper);
    }

    // Vans' median is 803 mm and minivans' 647 mm; they are one body here, and both lie in its range.
    [Theory]
    [InlineData(1730, 803)]
    [InlineData(1657, 647)]
    public void Vans_and_minivans_share_a_range(double trackMm, double heightMm)
    {
        var typical = TypicalValues.CentreOfGravityHeightMm(trackMm, CarBody.Van);

        Assert.InRange(heightMm, typical.Lower, typical.Upper);
    }

    // Front bars of three cars published with DOT HS 807 956 (1992) have 38, 23 and 45 % of their axle's roll stiffness, rear bars 0, 13 and 14 %; one coupe's 23 and 47 %.
    [Theory]
    [InlineData(CarAxle.Front, 0.23, 0.45)]
    [InlineData(CarAxle.Rear, 0.0, 0.45)]
    public void A_bar_nobody_gave_has_the_share_bars_have(CarAxle axle, double least, double most)
    {
        var ofSprings = double.DegreesToRadians(1) * 30 * 0.81 * 1500 * 1500 / 2000;
        var bar = TypicalValues.BarRollRateNmPerDeg(axle, 30, 0.9, 1500);

        Assert.InRange(bar.Value / (bar.Value + ofSprings), least, most);
        Assert.Equal(0.45, bar.Upper / (bar.Upper + ofSprings), 1e-9);
    }

    // What nobody gave is listed with its range: bars of both axles, and give by the kind of suspension.
    [Fact]
    public void Bars_and_give_nobody_gave_are_assumed_with_their_ranges()
    {
        var axle = new Axle { LoadKg = 600, TrackMm = 1500, Spring = new Spring { RateNPerMm = 30, MotionRatio = 0.9 }, Suspension = SuspensionModel.FromFiguresOf(SuspensionLayout.FiveLink) };
        var car = HandlingCarBuilder.Build(new Domain.Vehicles.Vehicle { Front = axle, Rear = axle })!;

        foreach (var at in Enum.GetValues<CarAxle>())
        {
            var (bar, give) = (car.AssumedFor(HandlingInputs.For(at).BarRollRate)!, car.AssumedFor(HandlingInputs.For(at).CamberCompliance)!);
            Assert.Equal(TypicalValues.BarRollRateNmPerDeg(at, 30, 0.9, 1500), new TypicalValue(bar.Value, bar.Lower, bar.Upper, bar.Source));
            Assert.Equal((0.1, 0.03, 0.3), (give.Value, give.Lower, give.Upper));
        }
    }

    [Fact]
    public void Each_value_lies_in_its_range()
    {
        foreach (var axle in Enum.GetValues<CarAxle>())
        {
            foreach (var layout in Enum.GetValues<SuspensionLayout>().Select(one => (SuspensionLayout?)one).Append(null))
            {
                TypicalValue[] all =
                [
                    TypicalValues.CamberDeg(axle), TypicalValues.ToeDeg(axle), TypicalValues.CasterDeg, TypicalValues.LoadedRadiusMm, TypicalValues.StopRateNPerMm,
                    TypicalValues.StopLengthMm, TypicalValues.CamberComplianceDegPerKn(layout), TypicalValues.ToeComplianceDegPerKn(axle), TypicalValues.TyreRateNPerMm(null),
                    TypicalValues.CentreOfGravityHeightMm(1500, null), TypicalValues.UnsprungMassKg(1300, layout), TypicalValues.RollCentreHeightMm(layout, axle),
                    TypicalValues.MotionRatio(layout), TypicalValues.DamperMotionRatio(layout, 0.9), TypicalValues.SteeringAxisInclinationDeg(layout),
                    TypicalValues.SwingArmMm(layout, axle), TypicalValues.BarRollRateNmPerDeg(axle, 30, 0.9, 1500),
                ];
                Assert.All(all, one => Assert.InRange(one.Value, one.Lower, one.Upper));
                Assert.All(all, one => Assert.True(one.Lower < one.Upper));
            }
        }
    }

    // Common practice: of the design section width, 214 mm for a 205/55R16.
    [Fact]
    public void Width_of_a_tread() => Same(TreadWidth.Mm(DemoCar.Tyre("205/55R16 91V")), 0.85 * 214, 0.78 * 214, 0.92 * 214);

    [Theory]
    [InlineData(CarAxle.Front, "/vehicle/front/bumpTravelMm")]
    [InlineData(CarAxle.Rear, "/vehicle/rear/bumpTravelMm")]
    public void An_assumption_names_its_own_axle(CarAxle axle, string place)
    {
        var notes = new List<Assumption>();

        new HandlingAxleAssumptions(axle, [], notes, UnitSystem.Metric).NoBumpStop();

        Assert.Equal(place, Assert.Single(notes).Input);
    }

    // Common practice: the errors a workshop's readings carry, as a share of the reading and in its own unit.
    [Fact]
    public void Errors_of_what_is_given()
    {
        var inputs = HandlingInputs.For(CarAxle.Front);
        (HandlingInput Input, double Share, double Least)[] all =
        [
            (inputs.Load, 0.01, 0), (inputs.Track, 0, 3), (inputs.UnsprungMass, 0.05, 0), (inputs.TyreRate, 0.07, 0), (inputs.SpringRate, 0.03, 0),
            (inputs.MotionRatio, 0, 0.01), (inputs.DamperMotionRatio, 0, 0.01), (inputs.BarRollRate, 0.1, 0), (inputs.RollCentreHeight, 0, 10),
            (inputs.StopRate, 0.2, 0), (inputs.StopLength, 0, 2), (inputs.Camber, 0, 0.1), (inputs.Toe, 0, 0.03), (inputs.Caster, 0, 0.25),
            (inputs.Inclination, 0, 0.5), (inputs.SwingArm, 0, 0), (inputs.CamberCompliance, 0.2, 0), (inputs.ToeCompliance, 0.2, 0),
            (inputs.TyreNominalLoad, 0.05, 0), (inputs.TyreFriction, 0.02, 0),
        ];

        Assert.Equal(inputs.All.Count, all.Length);
        Assert.All(all, one =>
        {
            Assert.Equal(one.Least, one.Input.ErrorOf(0), 1e-12);
            Assert.Equal((100 * one.Share) + one.Least, one.Input.ErrorOf(-100), 1e-9);
        });
    }

    [Fact]
    public void Stops_and_wheels()
    {
        Same(TypicalValues.StopRateNPerMm, 60, 20, 150);
        Same(TypicalValues.StopLengthMm, 45, 25, 70);
        Same(TypicalValues.LoadedRadiusMm, 300, 275, 335);
        Same(TypicalValues.CasterDeg, 5, 2, 8.5);

        // Front toe compliance of four axles is 0.004 to 0.032 °/kN (Table 3 of a paper of 2024).
        Same(TypicalValues.ToeComplianceDegPerKn(CarAxle.Front), 0.02, 0, 0.1);
        Same(TypicalValues.ToeComplianceDegPerKn(CarAxle.Rear), 0, -0.08, 0.08);
    }

    // Three cars published with DOT HS 807 956: front arms of 1604 and 2540 mm, one strut's rear of 4763, one semi-trailing arm's of 1104 mm lie in these ranges.
    [Theory]
    [InlineData(SuspensionLayout.MacPhersonStrut, CarAxle.Front, 1200, 4000, 1604.0)]
    [InlineData(SuspensionLayout.MacPhersonStrut, CarAxle.Front, 1200, 4000, 2540.0)]
    [InlineData(SuspensionLayout.MacPhersonStrut, CarAxle.Rear, 1900, 9000, 4763.0)]
    [InlineData(SuspensionLayout.DoubleWishbone, CarAxle.Front, 1100, 3500, null)]
    [InlineData(SuspensionLayout.FiveLink, CarAxle.Rear, 1100, 3500, null)]
    [InlineData(SuspensionLayout.SemiTrailingArm, CarAxle.Rear, 800, 2000, 1104.0)]
    [InlineData(SuspensionLayout.TwistBeam, CarAxle.Rear, 1100, 4000, null)]
    [InlineData(null, CarAxle.Front, 1100, 6000, 1104.0)]
    [InlineData(null, CarAxle.Rear, 1100, 6000, 4763.0)]
    public void A_swing_arm_nobody_gave_is_the_middle_of_its_range_in_one_over_its_length(SuspensionLayout? layout, CarAxle axle, double lower, double upper, double? published)
    {
        var arm = TypicalValues.SwingArmMm(layout, axle);

        Same(arm, 2 * lower * upper / (lower + upper), lower, upper);
        Assert.Equal((1 / arm.Lower) - (1 / arm.Value), (1 / arm.Value) - (1 / arm.Upper), 1e-12);
        if (published is { } lengthMm) Assert.InRange(lengthMm, arm.Lower, arm.Upper);
    }

    // 0 to 0.3 °/kN is usual: four axles' median is 0.17 (Trans. JSME 89(919), 2023, Table 2, quoted), a large car's model data have 0.04 and 0.06. Which kind gives more is common practice.
    [Theory]
    [InlineData(SuspensionLayout.MacPhersonStrut, 0.18, 0.06)]
    [InlineData(SuspensionLayout.DoubleWishbone, 0.12, 0.03)]
    [InlineData(SuspensionLayout.FiveLink, 0.1, 0.03)]
    [InlineData(SuspensionLayout.SemiTrailingArm, 0.1, 0.02)]
    [InlineData(SuspensionLayout.TwistBeam, 0.1, 0.02)]
    [InlineData(SuspensionLayout.Measured, 0.15, 0.02)]
    [InlineData(null, 0.15, 0.02)]
    public void Camber_gives_by_kind_and_by_a_range_skewed_upward(SuspensionLayout? layout, double value, double lower)
    {
        var give = TypicalValues.CamberComplianceDegPerKn(layout);

        Same(give, value, lower, 0.3);
        Assert.True(give.Upper - give.Value >= give.Value - give.Lower);
    }

    [Theory]
    [InlineData(SuspensionLayout.TwistBeam, CarAxle.Rear, 160, 80, 260)]
    [InlineData(SuspensionLayout.SemiTrailingArm, CarAxle.Rear, 110, 40, 180)]
    [InlineData(SuspensionLayout.DoubleWishbone, CarAxle.Front, 50, 0, 100)]
    [InlineData(SuspensionLayout.FiveLink, CarAxle.Front, 50, 0, 100)]
    [InlineData(SuspensionLayout.MacPhersonStrut, CarAxle.Front, 60, 10, 110)]
    [InlineData(null, CarAxle.Front, 60, 0, 130)]
    [InlineData(null, CarAxle.Rear, 100, 20, 220)]
    [InlineData(SuspensionLayout.FiveLink, CarAxle.Rear, 100, 40, 150)]
    public void Roll_centre(SuspensionLayout? layout, CarAxle axle, double value, double lower, double upper) =>
        Same(TypicalValues.RollCentreHeightMm(layout, axle), value, lower, upper);

    [Theory]
    [InlineData(SuspensionLayout.MacPhersonStrut, 13.5, 11, 16)]
    [InlineData(SuspensionLayout.DoubleWishbone, 10.5, 7, 14)]
    [InlineData(null, 12.5, 8, 16)]
    public void Steering_axis(SuspensionLayout? layout, double value, double lower, double upper) =>
        Same(TypicalValues.SteeringAxisInclinationDeg(layout), value, lower, upper);

    // Worked by hand: springs of 30 N/mm at a ratio of 0.9 on 1500 mm roll with (π/180) · 30 · 0.81 · 1500² / 2000 = 477.129 N m/deg; a bar that has 45 % of an
    // axle's roll stiffness has 0.45 / 0.55 of the springs' = 390.3786, one of 30 % 0.3 / 0.7 = 204.4840, of 15 % 0.15 / 0.85 = 84.1993, of 12 % 0.12 / 0.88 = 65.0631.
    [Theory]
    [InlineData(CarAxle.Front, 204.4840, 84.1993)]
    [InlineData(CarAxle.Rear, 65.0631, 0)]
    public void Anti_roll_bar(CarAxle axle, double value, double lower)
    {
        var bar = TypicalValues.BarRollRateNmPerDeg(axle, 30, 0.9, 1500);

        Assert.Equal(value, bar.Value, 5e-4);
        Assert.Equal(lower, bar.Lower, 5e-4);
        Assert.Equal(390.3786, bar.Upper, 5e-4);
    }

    // Mean track 1520 mm: 1520 / 2.82 = 539.007 mm.
    [Fact]
    public void A_centre_of_gravity_nobody_gave_follows_from_the_mean_track()
    {
        var car = HandlingCarBuilder.Build(new Domain.Vehicles.Vehicle { Front = Axle(600, 1500), Rear = Axle(500, 1540) })!;

        Assert.Equal(539.007, car.Car.CentreOfGravityHeightMm, 5e-4);
        Assert.Equal(539.007, car.AssumedFor(HandlingInputs.CentreOfGravityHeight)!.Value, 5e-4);

        static Axle Axle(double loadKg, double trackMm) => new() { LoadKg = loadKg, TrackMm = trackMm, Spring = new Spring { RateNPerMm = 30 } };
    }

    // A 205/55R16 is 632 mm across; 300 kg press 200 N/mm by 300 · 9.80665 / 200 = 14.710 mm: the centre stands 316 − 14.710 = 301.290 mm high.
    [Fact]
    public void A_wheel_stands_as_high_as_its_tyre_lets_it()
    {
        var axle = new Axle { LoadKg = 600, TrackMm = 1500, Spring = new Spring { RateNPerMm = 30 } };
        var tyre = DemoCar.Tyre("205/55R16 91V") with { VerticalRateNPerMm = 200 };

        var car = HandlingCarBuilder.Build(new Domain.Vehicles.Vehicle { Front = axle with { Tyre = tyre }, Rear = axle })!.Car;

        Assert.Equal(301.290, car.Front.LoadedRadiusMm, 5e-4);
        Assert.Equal(300, car.Rear.LoadedRadiusMm);
    }

    // The contact of a wheel leaning inboard by 1° on a radius of 300 mm, is 300 · sin 1° further out than its centre.
    [Fact]
    public void An_axle_known_by_points_stands_as_wide_as_they_say_where_nobody_does()
    {
        var setting = KinematicsCases.Setting("ST1");
        var axle = new Axle { LoadKg = 600, LoadedRadiusMm = 300, Left = new() { CamberDeg = -1, ToeDeg = 0 }, Suspension = SuspensionModel.From(setting.Suspension), Spring = new Spring { RateNPerMm = 30 } };
        var byPoints = 2 * (setting.Suspension.WheelCentre.Y + (300 * Math.Sin(double.DegreesToRadians(1))));

        var car = HandlingCarBuilder.Build(new Domain.Vehicles.Vehicle { Front = axle, Rear = axle with { TrackMm = 1500 } })!.Car;

        Assert.Equal(byPoints, car.Front.TrackMm, 1e-6);
        Assert.Equal(1500, car.Rear.TrackMm);
    }

    private static void Same(TypicalValue typical, double value, double lower, double upper)
    {
        Assert.Equal(value, typical.Value, 1e-9);
        Assert.Equal(lower, typical.Lower, 1e-9);
        Assert.Equal(upper, typical.Upper, 1e-9);
    }
}
