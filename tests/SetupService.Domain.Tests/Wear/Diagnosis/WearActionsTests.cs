using SetupService.Domain.Answers;
using SetupService.Domain.Suspension;
using SetupService.Domain.Vehicles;
using SetupService.Domain.Wear.Diagnosis;
using SetupService.Domain.Wear.Diagnosis.Advice;
using SetupService.Domain.Wear.Readings;
using SetupService.Domain.Wear.TreadWear;
using SetupService.Domain.Wheels;

namespace SetupService.Domain.Tests.Wear.Diagnosis;

/// <summary>Steps and where they are heading, worked by hand.</summary>
public sealed class WearActionsTests
{
    // Absolute pressures scale alike when a tyre warms (ideal gas law at constant volume), so a change hot is (200 + 101.325) / (240 + 101.325)
    // = 0.882810 of it cold; without a cold pressure by the usual rise of 45 °C over 20 °C: 293.15 / 338.15 K = 0.866923. A step is at most 20 kPa.
    [Theory]
    [InlineData(200.0, 240.0, 220.0, -20 * 0.882810, -18, 182.0)]
    [InlineData(200.0, 240.0, 200.0, -40 * 0.882810, -20, 180.0)]
    [InlineData(null, 240.0, 220.0, -20 * 0.866923, -17, null)]
    [InlineData(null, 300.0, 240.0, -60 * 0.866923, -20, null)]
    public void A_hot_aim_changes_the_cold_setting_by_the_warming(double? coldKpa, double hotKpa, double aimHotKpa, double wholeKpa, double stepKpa, double? settingKpa)
    {
        var action = Assert.Single(Pressures(WearCause.OverInflation, new(coldKpa, hotKpa, null, aimHotKpa)));

        Assert.Equal(wholeKpa, action.ColdPressureKpa!.Value.Value, 1e-4);
        Assert.Equal((stepKpa, settingKpa), (action.StepKpa, action.SettingKpa));
        Assert.Contains("Never go below what the load needs", action.Text, StringComparison.Ordinal);
        Assert.NotNull(action.Until);
    }

    // Without the cold pressure the change is open by the warming: by a rise of 20 to 70 °C, 60 kPa times 293.15 / 313.15 less 293.15 / 363.15 K, of which 90 % is the whole width, beside the gauge's 3 kPa.
    [Fact]
    public void A_warming_that_nobody_told_widens_the_change() =>
        Assert.Equal(Math.Sqrt(9 + Math.Pow(60 * 293.15 * ((1 / 313.15) - (1 / 363.15)) / (2 * 1.6448536), 2)), Assert.Single(Pressures(WearCause.OverInflation, new(null, 300, null, 240))).ColdPressureKpa!.Value.StandardError, 1e-5);

    [Fact]
    public void A_cold_aim_counts_before_a_hot_one() =>
        Assert.Equal(15, Assert.Single(Pressures(WearCause.UnderInflation, new(200, 240, 215, 250))).ColdPressureKpa!.Value.Value, 1e-12);

    [Fact]
    public void Without_an_aim_no_amount_is_told() => Assert.Null(Assert.Single(Pressures(WearCause.UnderInflation, new(200, 240, null, null))).ColdPressureKpa);

    // The tread says too little air, the gauge more than the aim: neither is acted on.
    [Fact]
    public void Against_the_gauge_no_pressure_is_set()
    {
        var action = Assert.Single(Pressures(WearCause.UnderInflation, new(240, null, 215, null)));

        Assert.Null(action.StepKpa);
        Assert.StartsWith("Check the gauge", action.Text, StringComparison.Ordinal);
    }

    // 0.40° of toe-in against some 0.05° in front: 0.35° a wheel is 2 · 431.8 mm · tan 0.35° = 5.3 mm across a 17 in rim, of which 2 mm now: 0.13° a wheel.
    [Fact]
    public void Toe_is_set_in_steps_of_two_millimetres()
    {
        var action = Toe(new Axle { Left = new() { ToeDeg = 0.4 }, Right = new() { ToeDeg = 0.4 }, Wheel = new Wheel { RimDiameterIn = 17, RimWidthIn = 7.5, OffsetMm = 45 } }, WearCause.ToeIn);

        Assert.Equal(-0.13, action.StepDeg!.Value, 1e-9);
        Assert.Equal(0.27, action.SettingDeg!.Value, 1e-9);
        Assert.InRange(action.StepMm!.Value, -2, -1.9);
        Assert.Equal(-2 * 431.8 * Math.Tan(0.35 * Math.PI / 180), action.TotalToeMm!.Value.Value, 0.01);
    }

    [Theory]
    [InlineData(-0.2, WearCause.ToeIn)]
    [InlineData(0.3, WearCause.ToeOut)]
    [InlineData(0.05, WearCause.ToeIn)]
    public void Toe_is_never_set_against_the_gauge(double toeDeg, WearCause cause)
    {
        var action = Toe(new Axle { Left = new() { ToeDeg = toeDeg }, Right = new() { ToeDeg = toeDeg } }, cause);

        Assert.Null(action.StepDeg);
        Assert.Contains("measured again", action.Text, StringComparison.Ordinal);
    }

    // However much the treads ask for, a step is a degree and a half; the setting is the present one and the step.
    [Fact]
    public void Camber_is_set_in_steps_of_a_degree_and_a_half()
    {
        var action = Camber(new Axle { Left = Aligned(-0.5), Right = Aligned(-0.5) }, new WearUse(500, 200, 3), 2.5, 5.5);

        Assert.Equal((-1.5, -2), (action.StepDeg, action.SettingDeg));
        Assert.True(action.CamberDeg!.Value.Value < -1.5);
        Assert.Equal([0, -1.5, action.CamberDeg.Value.Value], action.TradeOff.Select(trade => trade.ChangeDeg));
        Assert.NotNull(action.Until);
    }

    // A beam has no adjuster, and an arm none of its own.
    [Theory]
    [InlineData(SuspensionLayout.TwistBeam, "shims")]
    [InlineData(SuspensionLayout.SemiTrailingArm, "eccentric bushes")]
    public void What_cannot_be_set_is_not_and_the_part_that_would_allow_it_is_named(SuspensionLayout layout, string part)
    {
        var action = Camber(new Axle { Left = Aligned(-0.5), Right = Aligned(-0.5), Suspension = SuspensionModel.FromFiguresOf(layout) }, new WearUse(500, 200, 3), 2.5, 5.5);

        Assert.Null(action.StepDeg);
        Assert.Contains(part, action.Text, StringComparison.Ordinal);
    }

    // Between −2° and −1° there is half a degree from −1.5°, however much is wanted.
    [Fact]
    public void The_step_ends_where_the_adjustment_does()
    {
        var axle = new Axle { Left = Aligned(-1.5), Right = Aligned(-1.5), AdjustableAsStated = new() { Camber = AngleReach.Between(-2, -1) } };

        Assert.Equal((-0.5, -2.0), (Camber(axle, new WearUse(500, 200, 3), 2.5, 5.5).StepDeg!.Value, Camber(axle, new WearUse(500, 200, 3), 2.5, 5.5).SettingDeg!.Value));
    }

    // At its end the part that would allow more is named; the road's tread life has nothing to do with it.
    [Fact]
    public void At_the_adjuster_s_end_the_part_that_reaches_further_is_named()
    {
        var axle = new Axle { Left = Aligned(-0.4), Right = Aligned(-0.4), AdjustableAsStated = new() { Camber = AngleReach.Between(-0.4, 0.2) } };
        var action = Camber(axle, new WearUse(500, 200, 3), 2.5, 5.5);

        Assert.Null(action.StepDeg);
        Assert.StartsWith("The front camber's adjuster goes no further that way: eccentric bolts, bushes or an adjustable mount would allow more", action.Text, StringComparison.Ordinal);
    }

    // 215 of 230 kPa cold is set right, however even the treads are; 222 is left alone.
    [Theory]
    [InlineData(215, true)]
    [InlineData(222, false)]
    public void A_tyre_below_its_stated_pressure_is_set_to_it(double coldKpa, bool isSet)
    {
        TyreReading[] tyres = [.. new[] { WheelPosition.FrontLeft, WheelPosition.FrontRight }.Select(at => Tyre(at, 5, 5) with { Pressure = new(coldKpa, null, 230, null) })];
        var advice = WearAdvice.Create(WearStudy.Compute(new WearCase { Use = new WearUse(9000, 0, null), Tyres = tyres }, null), [], UnitSystem.Metric).Axles[0];

        Assert.Equal(!isSet, advice.IsDone);
        Assert.Equal(isSet, advice.Text.StartsWith("Set both front tyres to 230 kPa cold, 15 kPa more than now", StringComparison.Ordinal));
    }

    // 300 and 298 kPa hot where 240 is wanted: the same step for both tyres, so it is told once, by the one that needs less.
    [Theory]
    [InlineData(298, 1)]
    [InlineData(285, 2)]
    public void Both_tyres_that_get_the_same_step_are_told_at_once(double rightHotKpa, int actions)
    {
        TyreReading[] tyres = [Tyre(WheelPosition.FrontLeft, 5, 5) with { Pressure = new(null, 300, null, 240) }, Tyre(WheelPosition.FrontRight, 5, 5) with { Pressure = new(null, rightHotKpa, null, 240) }];
        var study = WearStudy.Compute(new WearCase { Use = new WearUse(1000, 10, 3), Tyres = tyres }, null);
        var told = WearActions.Build(study, new CauseFinding(WearCause.OverInflation, CarAxle.Front, 0.9, [WheelPosition.FrontLeft, WheelPosition.FrontRight], []), UnitSystem.Metric);

        Assert.Equal(actions, told.Count);
        Assert.Equal(-20, told[0].StepKpa);
        Assert.Equal(actions == 1, told[0].Text.StartsWith("Lower the cold setting of both front tyres by 20 kPa", StringComparison.Ordinal));
    }

    // One shoulder worn on the road: alignment first, no camber before toe is known.
    [Fact]
    public void On_the_road_toe_is_measured_before_camber_is_set()
    {
        var action = Camber(new Axle { Left = new() { CamberDeg = -0.3 }, Right = new() { CamberDeg = -0.3 } }, new WearUse(15_000, 0, null), 4.2, 5.5);

        Assert.Null(action.StepDeg);
        Assert.StartsWith("Have the front toe measured", action.Text, StringComparison.Ordinal);
    }

    // 2.4 mm left of 8 after 38,000 km: 0.8 mm to the legal limit are 5429 km. The gauge errs by 0.41 mm of it, the rate by a quarter, together 57 %: 2330 km, so no reading later than
    // 2000 km. From 2.0 mm nothing is surely left. New tyres lead.
    [Theory]
    [InlineData(2.4, "in 2000 km")]
    [InlineData(2.0, "before the next drive")]
    public void No_interval_reaches_beyond_what_the_tread_has_left(double leastMm, string again)
    {
        TyreReading[] tyres = [.. Enum.GetValues<WheelPosition>().Select(at => new TyreReading { Position = at, NewDepthMm = 8, GaugeErrorMm = 0.25, Zones = TreadZone.FromDepths(new AcrossTread<double>(leastMm + 0.1, leastMm, leastMm + 0.1)) })];
        var study = WearStudy.Compute(new WearCase { Use = new WearUse(38_000, 0, null), Tyres = tyres }, null);
        var advice = WearAdvice.Create(study, [], UnitSystem.Metric);

        Assert.StartsWith(FormattableString.Invariant($"Plan new tyres before changing anything: {leastMm:0.0} mm is left"), DiagnosisWords.Summary(advice), StringComparison.Ordinal);
        Assert.StartsWith($"Nothing to change. Read again {again}. Plan new tyres", advice.Axles[0].Text, StringComparison.Ordinal);
    }

    // Rears 6.2, 5.6 and 3.9 mm on track at −3.6°: no cause need stand out for the treads to ask for less, one step; without toe, toe first.
    [Theory]
    [InlineData(0.1, true)]
    [InlineData(null, false)]
    public void Uneven_shoulders_are_acted_on_by_what_they_ask_for(double? toeDeg, bool isSet)
    {
        TyreReading[] tyres =
        [
            .. new[] { WheelPosition.FrontLeft, WheelPosition.FrontRight }.Select(at => Tyre(at, 5, 5)),
            .. new[] { WheelPosition.RearLeft, WheelPosition.RearRight }.Select(at => Tyre(at, 6.2, 3.9) with { Zones = TreadZone.FromDepths(new AcrossTread<double>(6.2, 5.6, 3.9)) }),
        ];
        var aligned = new WheelAlignment { CamberDeg = -3.6, ToeDeg = toeDeg };
        var study = WearStudy.Compute(new WearCase { Vehicle = new Vehicle { Rear = new Axle { Left = aligned, Right = aligned } }, Use = new WearUse(2000, 75, 3), Tyres = tyres }, null);
        var action = Assert.Single(WearAdvice.Create(study, [], UnitSystem.Metric).Axles[1].Actions);

        Assert.Equal(isSet, action.StepDeg > 0);
        Assert.Equal(!isSet, action.Text.StartsWith("Have the rear toe measured", StringComparison.Ordinal));
    }

    // Evenly worn: nothing is set, whatever the cause is taken to be.
    [Fact]
    public void Even_treads_are_left_alone() =>
        Assert.Null(Camber(new Axle { Left = Aligned(-0.5), Right = Aligned(-0.5) }, new WearUse(500, 200, 3), 5, 5).StepDeg);

    // Worn evenly but for the convoys' 10 % the difference is 0.112; a degree moves it by 2 · 0.7 · 1.5 · lean, where the lean of 3500 N on 210 N/mm over 185 mm is
    // 92.5 mm · tan 1° · 210 / 3500 = 0.0969: 0.2034 a degree on the road.
    [Fact]
    public void A_degree_of_camber_moves_the_shoulders_by_the_lean_of_a_bed()
    {
        var perDeg = EvenWear.DifferencePerDeg(AxleUse.Typical(CarAxle.Front), 0);

        Assert.Equal(2 * 0.7 * 1.5 * 92.5 * Math.Tan(Math.PI / 180) * 210 / 3500, perDeg, 1e-9);
        var askedDeg = EvenWear.CamberShortDeg(new(0.112 + (2 * perDeg), 0.1), perDeg);
        Assert.Equal(2, askedDeg.Value, 1e-9);
        Assert.Equal(Math.Sqrt(Math.Pow(0.1 / perDeg, 2) + Math.Pow(1.4 * 0.11 / perDeg, 2) + Math.Pow(2 * 0.5, 2)), askedDeg.StandardError, 1e-9);
    }

    // Shoulders 1.3 and 0.7 of the mean, centre 1; a degree of 0.2 makes them 1.2 and 0.8: the worst lasts 1.3 / 1.2 as long. Beyond even it turns.
    [Theory]
    [InlineData(-1, 1.3 / 1.2)]
    [InlineData(-3, 1.3)]
    [InlineData(-6, 1.0)]
    [InlineData(1, 1.3 / 1.4)]
    public void The_life_is_that_of_the_worst_place(double changeDeg, double ratio) => Assert.Equal(ratio, EvenWear.LifeRatio(0.6, 0, 0.2, changeDeg), 1e-12);

    // Weighted by 1 / σ²; the treads' alone where two joint errors part them: √(1 + 1) · 2 = 2.83.
    [Theory]
    [InlineData(1, 2.0, 1.5, false)]
    [InlineData(1, 3.8, 2.4, false)]
    [InlineData(1, 3.9, 1.0, true)]
    [InlineData(1, null, 1.0, false)]
    public void Two_voices_are_joined_or_the_treads_are_heard_alone(double byTreads, double? byModel, double together, bool disagree)
    {
        var voices = new CamberVoices(null, 0.2, new(byTreads, 1), byModel is { } model ? new Estimate(model, 1) : null);

        Assert.Equal(together, voices.Together!.Value.Value, 1e-12);
        Assert.Equal(disagree, voices.Disagree);
    }

    private static WheelAlignment Aligned(double camberDeg) => new() { CamberDeg = camberDeg, ToeDeg = 0.05 };

    private static WearAction Camber(Axle front, WearUse use, double outerMm, double innerMm)
    {
        TyreReading[] tyres = [.. new[] { WheelPosition.FrontLeft, WheelPosition.FrontRight }.Select(at => Tyre(at, outerMm, innerMm))];
        var study = WearStudy.Compute(new WearCase { Vehicle = new Vehicle { Front = front }, Use = use, Tyres = tyres }, null);
        return Assert.Single(WearActions.Build(study, new CauseFinding(WearCause.LowNegativeCamber, CarAxle.Front, 0.9, [], []), UnitSystem.Metric));
    }

    private static WearAction Toe(Axle front, WearCause cause)
    {
        var study = WearStudy.Compute(new WearCase { Vehicle = new Vehicle { Front = front }, Tyres = [] }, null);
        return Assert.Single(WearActions.Build(study, new CauseFinding(cause, CarAxle.Front, 0.9, [], []), UnitSystem.Metric));
    }

    private static IReadOnlyList<WearAction> Pressures(WearCause cause, TyrePressures pressures)
    {
        var study = WearStudy.Compute(new WearCase { Use = new WearUse(1000, 10, 3), Tyres = [Tyre(WheelPosition.FrontLeft, 5, 5) with { Pressure = pressures }] }, null);
        return WearActions.Build(study, new CauseFinding(cause, CarAxle.Front, 0.6, [WheelPosition.FrontLeft], []), UnitSystem.Metric);
    }

    private static TyreReading Tyre(WheelPosition at, double outerMm, double innerMm) =>
        new() { Position = at, NewDepthMm = 8, GaugeErrorMm = 0.15, Zones = TreadZone.FromDepths(new AcrossTread<double>(outerMm, 5, innerMm)) };
}
