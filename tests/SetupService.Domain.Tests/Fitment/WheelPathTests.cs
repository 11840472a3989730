using CsCheck;
using SetupService.Domain.Fitment;
using SetupService.Domain.Fitment.Checks;
using SetupService.Domain.Numerics;
using SetupService.Domain.Suspension;
using SetupService.Domain.Suspension.Kinematics;
using SetupService.Domain.Suspension.Points;
using SetupService.Domain.Suspension.Readings;
using SetupService.Domain.Tests.Suspension;
using SetupService.Domain.Vehicles;

namespace SetupService.Domain.Tests.Fitment;

/// <summary>Gaps measured at ride height lose what the wheel's own way takes: sideways, by its lean, up through the bump stop.</summary>
public sealed class WheelPathTests
{
    private const double RadiusMm = 317;

    private static readonly string[] Drawn = ["DW1", "ST1", "PL1"];

    /// <summary>The demo car's front strut.</summary>
    private static readonly MacPhersonStrut Strut = new()
    {
        LowerArm = new ControlArm(new(180, 350, 190), new(-170, 355, 195), new(5, 700, 180)),
        StrutTop = new(-35, 580, 790),
        StrutLower = new(-8, 655, 330),
        StrutAxis = (new Vector3(-35, 580, 790) - new Vector3(-8, 655, 330)).Unit(),
        TieRod = new Link(new(-120, 330, 240), new(-130, 690, 235)),
        WheelCentre = new(0, 740, 305),
    };

    // The corner solved anew by Newton's method on its lengths in a script of its own: over 68 mm of bump the wheel centre goes 5.674 mm inboard and
    // camber from −0.7° to −1.3820°; 317 (sin 1.3820° − sin 0.7°) = 3.772.
    [Fact]
    public void A_strut_takes_the_way_of_its_wheel_centre_and_its_lean()
    {
        var sheet = Check(OnStrut());

        Assert.Equal(40 - 5.674 - 3.772, NominalMm(sheet, CheckId.InboardClearance), 0.01);
        Assert.Equal(40, NominalMm(sheet, CheckId.OutboardClearance), 1e-9);
        Assert.Equal(110 - 68, NominalMm(sheet, CheckId.RadialClearance), 1e-9);
        Assert.Equal(20, NominalMm(sheet, CheckId.SpringSeatClearance), 1e-9);
    }

    // Errors drawn for every coordinate at once, 2,000 times, seed fixed: the spread of what travel uses is known to 1.6 %.
    [Fact]
    public void Errors_of_the_points_widen_the_tolerances_as_drawn_errors_do()
    {
        const double ErrorMm = 0.7;
        var exact = Budget(OnStrut());
        var open = Budget(OnStrut() with { Suspension = SuspensionModel.From(Strut, ErrorMm) });
        var random = new Random(20261129);
        var used = new double[2_000];
        for (var trial = 0; trial < used.Length; trial++)
        {
            Hardpoints points = Strut;
            for (var i = 0; i < MovedPoints.List(points).Count; i++) points = MovedPoints.List(points)[i](ErrorMm * Chance.Normal(random));
            used[trial] = Budget(OnStrut() with { Suspension = SuspensionModel.From(points) }).TravelMm;
        }

        var mean = used.Average();
        var deviation = Math.Sqrt(used.Sum(mm => (mm - mean) * (mm - mean)) / (used.Length - 1));

        Assert.Equal(exact.TravelMm, open.TravelMm, 1e-12);
        Assert.Equal(1, exact.MeasuringMm, 1e-12);
        Assert.InRange(Math.Sqrt((open.MeasuringMm * open.MeasuringMm) - 1), 0.92 * 1.645 * deviation, 1.08 * 1.645 * deviation);
        Assert.Contains(FitmentAssumptions.ForCheck(DemoCar.Front(OnStrut() with { Suspension = SuspensionModel.From(Strut, ErrorMm) }), DemoCar.Fitting()), one => one.Input.EndsWith("/pointErrorMm", StringComparison.Ordinal));

        static ClearanceBudget Budget(Axle axle)
        {
            var fitting = DemoCar.Fitting();
            Assert.True(ClearanceChecks.TryBudget(DemoCar.Front(axle), Envelope.Compute(fitting), CheckId.InboardClearance, out var budget, out _));
            return budget;
        }
    }

    [Fact]
    public void An_error_of_the_points_that_does_not_act_is_listed_as_not_used()
    {
        var axle = OnStrut() with { Suspension = SuspensionModel.From(Strut, 1), Clearance = OnStrut().Clearance with { MeasuredAt = ClearanceMeasuredAt.WorstTravel } };

        Assert.Equal("not used", Assert.Single(FitmentAssumptions.ForCheck(DemoCar.Front(axle), DemoCar.Fitting()), one => one.Input.EndsWith("/pointErrorMm", StringComparison.Ordinal)).Text);
    }

    [Fact]
    public void A_gap_to_the_strut_goes_with_the_upright_one_to_the_body_with_the_wheel_and_one_to_an_arm_between()
    {
        var (body, strut, arm, silent) = (To(InboardNeighbour.Body), To(InboardNeighbour.Strut), To(InboardNeighbour.Arm), To(null));

        Assert.Equal(40, strut, 1e-9);
        Assert.InRange(arm, body + 1, strut - 1);
        Assert.Equal(body, silent, 1e-9);

        double To(InboardNeighbour? part) => NominalMm(Check(OnStrut() with { Clearance = OnStrut().Clearance with { InboardTo = part } }), CheckId.InboardClearance);
    }

    // At the height of the wheel centre the lean takes nothing while the wheel is there; the way of the centre stays.
    [Fact]
    public void The_height_of_the_narrowest_place_tells_what_the_lean_takes()
    {
        double At(double? heightMm) => NominalMm(
            Check(OnStrut() with { LoadedRadiusMm = 300, Clearance = OnStrut().Clearance with { InboardHeightMm = heightMm } }), CheckId.InboardClearance);

        Assert.Equal(40 - 5.674, At(300), 0.01);
        Assert.Equal(40 - 5.674 - (100 * (Math.Sin(double.DegreesToRadians(1.382)) - Math.Sin(double.DegreesToRadians(0.7)))), At(400), 0.01);

        // 5.674 + 187 (sin 1.3820° − sin 0.7°) = 7.90: so high above the wheel centre a wheel near this strut's top is nearest.
        Assert.Equal(40 - 7.9, At(487), 0.01);
        foreach (var height in new[] { 0.0, 150, 300, 450, 617 }) Assert.True(At(null) <= At(height) + 1e-9);
    }

    [Fact]
    public void A_height_is_counted_from_the_measured_radius_or_from_a_listed_estimate()
    {
        var axle = OnStrut() with { Clearance = OnStrut().Clearance with { InboardHeightMm = 400 } };

        Assert.Contains(FitmentAssumptions.ForCheck(DemoCar.Front(axle), DemoCar.Fitting()), one => one.Input == "/vehicle/front/loadedRadiusMm" && one.Value is > 290 and < 317);
        Assert.DoesNotContain(FitmentAssumptions.ForCheck(DemoCar.Front(axle with { LoadedRadiusMm = 302 }), DemoCar.Fitting()), one => one.Input == "/vehicle/front/loadedRadiusMm");
    }

    [Theory]
    [InlineData(45.0, 18.0, 0.9, 0.94, 68 + (27 / 0.9), 0)]
    [InlineData(45.0, 18.0, null, 0.94, 68 + (27 / 0.94), 1)]
    [InlineData(45.0, null, 0.9, null, 68 + (27 / 0.9), 1)]
    [InlineData(60.0, null, null, null, 68 + (36 / 0.95), 2)]
    [InlineData(null, null, null, null, 68 + (27 / 0.95), 3)]
    [InlineData(20.0, 30.0, 0.9, null, 68, 0)]
    public void Upward_travel_runs_through_the_stop_as_far_as_it_can_be_compressed(
        double? lengthMm, double? compressedMm, double? stopRatio, double? damperRatio, double travelMm, int assumedCount)
    {
        var axle = OnStrut() with
        {
            BumpStop = new BumpStop { LengthMm = lengthMm, CompressedLengthMm = compressedMm, MotionRatio = stopRatio },
            Damper = new Damper { MotionRatio = damperRatio },
        };

        Assert.Equal(110 - travelMm, NominalMm(Check(axle), CheckId.RadialClearance), 1e-9);
        Assert.Equal(assumedCount, FitmentAssumptions.ForCheck(DemoCar.Front(axle), DemoCar.Fitting()).Count(one => one.Input.Contains("/bumpStop/", StringComparison.Ordinal)));
    }

    // Brute force over random drawn corners, travels, radii and heights: the wheel walked in steps of its own, every height of the tyre looked at in tenths of the
    // radius. What the check takes is no less than any of them and no more than the worst, but for what the walk's steps can miss.
    [Fact]
    public void The_room_taken_is_the_worst_over_500_walks() =>
        Gen.Select(Gen.Int[0, 2].Select(which => Drawn[which]), Gen.Double[5, 90], Maybe(-280, 280), Gen.OneOf(Gen.Const("205/45R17 88W"), Gen.Const("225/45R17 91W"), Gen.Const("235/50R17 96W"))).Sample(
            (id, travelMm, aboveMm, marking) =>
            {
                var axle = ByPoints(id, travelMm) with { LoadedRadiusMm = 300 };
                axle = axle with { Clearance = axle.Clearance with { InboardHeightMm = 300 + aboveMm, InboardTo = InboardNeighbour.Body } };
                var candidate = DemoCar.Fitting(marking: marking);
                var radiusMm = candidate.Tyre.Marking.Dimensions.OverallDiameterMm / 2;
                var car = DemoCar.Front(axle);
                var (inboard, outboard) = Walked(id, travelMm, aboveMm, radiusMm);
                var takes = car.Travel.Inboard!.TakesMm(radiusMm);
                return takes >= inboard - 1e-6 && takes <= inboard + 1e-6
                    && Math.Abs(car.Travel.Outboard!.TakesMm(radiusMm) - outboard) < 1e-6;
            },
            iter: 500);

    // Half as long steps elsewhere find hardly more: a place turns within a step by less than this.
    [Fact]
    public void Shorter_steps_find_hardly_more() =>
        Gen.Select(Gen.Int[0, 2].Select(which => Drawn[which]), Gen.Double[5, 90]).Sample((id, travelMm) =>
        {
            var takes = DemoCar.Front(ByPoints(id, travelMm)).Travel.Inboard!.TakesMm(RadiusMm);
            return Math.Abs(Walked(id, travelMm, null, RadiusMm, 0.5).Inboard - takes) < 0.02;
        });

    [Fact]
    public void More_bump_travel_or_stop_never_raises_a_margin() =>
        Gen.Select(Gen.Int[0, 2].Select(which => Drawn[which]), Gen.Double[0, 70], Gen.Double[0, 20], Gen.Double[0, 20], Maybe(200, 500)).Sample((id, bumpMm, more, stop, height) =>
        {
            Axle With(double travelMm, double stopMm)
            {
                var axle = ByPoints(id, travelMm);
                return axle with
                {
                    BumpStop = new BumpStop { LengthMm = 20 + stopMm, CompressedLengthMm = 20, MotionRatio = 1 },
                    Clearance = axle.Clearance with { InboardHeightMm = height, RadialMm = 200 },
                };
            }

            var (near, far) = (Check(With(bumpMm, 0)), Check(With(bumpMm + more, stop)));
            return Enumerable.Range(0, CheckIdSet.ClearanceCount).All(place => IsNotRaised(far[(CheckId)place], near[(CheckId)place]));
        });

    // A pass becomes a contradiction or less room, never more, and the window follows: inside it nothing fails, outside something does.
    [Fact]
    public void An_offset_inside_the_window_fails_no_room_and_one_outside_fails_one() =>
        Gen.Select(
            Gen.Select(Gen.Int[0, 2].Select(which => Drawn[which]), Gen.Double[5, 80], Maybe(200, 500), Gen.Int[-1, 2].Select(part => part < 0 ? null : (InboardNeighbour?)part)),
            Gen.Select(Gen.Double[-5, 50], Gen.Double[-5, 50], Gen.Double[40, 130], Gen.Double[0, 40]),
            Gen.OneOf(Gen.Const("205/45R17 88W"), Gen.Const("225/45R17 91W"), Gen.Const("235/45R17 94W XL")),
            Gen.OneOf(Gen.Const(7.0), Gen.Const(7.5), Gen.Const(8.5))).Sample((corner, gaps, marking, widthIn) =>
        {
            var axle = ByPoints(corner.Item1, corner.Item2);
            axle = axle with
            {
                Clearance = axle.Clearance with
                {
                    InboardMm = gaps.Item1,
                    OutboardMm = gaps.Item2,
                    RadialMm = gaps.Item3,
                    InboardAtFullLockMm = gaps.Item1 + 10,
                    SpringSeatMm = gaps.Item4,
                    InboardHeightMm = corner.Item3,
                    InboardTo = corner.Item4,
                },
            };
            var car = DemoCar.Front(axle);
            var window = OffsetWindow.Compute(car, DemoCar.Tyre(marking), widthIn);
            bool Fails(double offsetMm)
            {
                var failed = DemoCar.Check(car, DemoCar.Fitting(widthIn, offsetMm, marking)).Failed;
                return Enumerable.Range(0, CheckIdSet.ClearanceCount).Any(place => failed.Contains((CheckId)place));
            }

            const double Step = 0.01;
            if (window.BlockedBy is not null) return Fails(0) && Fails(45) && Fails(90);
            if (window.FromOffsetMm > window.ToOffsetMm) return window.Status == WindowStatus.Fail && Fails((window.FromOffsetMm.Value + window.ToOffsetMm!.Value) / 2);
            return (window.FromOffsetMm is not { } from || (Fails(from - Step) && (from + Step > window.ToOffsetMm || !Fails(from + Step))))
                && (window.ToOffsetMm is not { } to || (Fails(to + Step) && (to - Step < window.FromOffsetMm || !Fails(to - Step))))
                && (window.Status != WindowStatus.Unknown || !Fails(45));
        });

    // Lowered by 40 mm the demo strut's wheel stands 2.020 mm further inboard and leans inward (the script's corner at 40 mm): the arch covers it by so much more. Over the
    // travel nothing changes, for the stop is where it was.
    [Fact]
    public void A_lowered_car_stands_under_its_arch_as_it_is_lowered()
    {
        var (high, low) = (Check(OnStrut()), Check(OnStrut() with { RideHeightChangeMm = -40 }));

        Assert.Equal(high[CheckId.ArchCover].Value!.Value + 2.020, low[CheckId.ArchCover].Value!.Value, 0.002);
        for (var place = CheckId.InboardClearance; place <= CheckId.SpringSeatClearance; place++) Assert.Equal(high[place], low[place]);
        Assert.Contains(FitmentAssumptions.ForCheck(DemoCar.Front(OnStrut() with { RideHeightChangeMm = -40 }), DemoCar.Fitting()), one => one.Input == "/vehicle/front/rideHeightChangeMm");
    }

    [Fact]
    public void Readings_do_not_tell_the_sideways_way_and_the_answer_says_so()
    {
        var axle = Base(60) with { Left = new WheelAlignment(), Suspension = SuspensionModel.From(new CornerReadings { Travel = [new TravelReading(0, -1, null), new TravelReading(60, -2, null)] }) };

        Assert.Equal(40 - (RadiusMm * (Math.Sin(double.DegreesToRadians(2)) - Math.Sin(double.DegreesToRadians(1)))), NominalMm(Check(axle), CheckId.InboardClearance), 1e-9);
        Assert.Contains(FitmentAssumptions.ForCheck(DemoCar.Front(axle), DemoCar.Fitting()), one => one.Input == "/vehicle/front/suspension/readings");
    }

    /// <summary>The most that the walked wheel takes inboard at a height over its centre (null = any height of the tyre), and outboard between centre and top.</summary>
    private static (double Inboard, double Outboard) Walked(string id, double travelMm, double? aboveMm, double radiusMm, double longestStepMm = 4)
    {
        var corner = MechanismBuilder.Build(KinematicsCases.Setting(id));
        Assert.True(PoseContinuation.TryStart(corner, out var state));
        var at = WheelKinematics.Wheel(corner, state);
        var (stated, statedSin) = (at.Centre, -at.Spin.Z);
        var (inboard, outboard) = (0.0, 0.0);
        var steps = Math.Ceiling(travelMm / longestStepMm);
        for (var step = 1; step <= steps; step++)
        {
            Assert.True(PoseContinuation.TryMove(corner, travelMm * step / steps, 0, ref state));
            var wheel = WheelKinematics.Wheel(corner, state);
            double Inward(double above) => stated.Y - wheel.Centre.Y - (above * (-wheel.Spin.Z - statedSin));
            for (var tenth = -10; tenth <= 10; tenth++)
            {
                var here = tenth / 10.0 * radiusMm;
                if (aboveMm is null) inboard = Math.Max(inboard, Inward(here));
                if (tenth >= 0) outboard = Math.Max(outboard, -Inward(here));
            }

            if (aboveMm is not { } known) continue;
            for (var part = 0; part <= 10; part++) inboard = Math.Max(inboard, Inward(known - (part / 10.0 * state.TravelMm)));
        }

        return (inboard, outboard);
    }

    private static Gen<double?> Maybe(double low, double high) =>
        Gen.Select(Gen.Double[low, high], Gen.Bool, (value, isGiven) => isGiven ? value : (double?)null);

    private static Axle Base(double bumpMm)
    {
        var axle = DemoCar.Axle();
        return axle with
        {
            BumpTravelMm = bumpMm,
            BumpStop = new BumpStop { LengthMm = 18, CompressedLengthMm = 18, MotionRatio = 1 },
            Clearance = axle.Clearance with { InboardMm = 40, OutboardMm = 40, RadialMm = 110, InboardAtFullLockMm = 40, MeasuredAt = ClearanceMeasuredAt.RideHeight },
        };
    }

    private static Axle OnStrut() => Base(68) with { Suspension = SuspensionModel.From(Strut), Left = new WheelAlignment { CamberDeg = -0.7, ToeDeg = 0.08 } };

    private static Axle ByPoints(string id, double bumpMm)
    {
        var setting = KinematicsCases.Setting(id);
        return Base(bumpMm) with
        {
            Suspension = SuspensionModel.From(setting.Suspension),
            Left = new WheelAlignment { CamberDeg = setting.CamberDeg, ToeDeg = setting.ToeDeg },
        };
    }

    private static CheckSheet Check(Axle axle) => DemoCar.Check(DemoCar.Front(axle), DemoCar.Fitting());

    // With more travel the gap may contradict it, or the suspension's parts not reach it: then the room is unknown, and says so.
    private static bool IsNotRaised(in CheckResult far, in CheckResult near) => (far.Margin, near.Margin) switch
    {
        ({ } less, { } more) => less.NominalMm <= more.NominalMm + 0.02,
        (null, _) => far.Reason is UnknownReason.MeasurementsContradict or UnknownReason.TravelNotReached,
        _ => false,
    };

    private static double NominalMm(CheckSheet sheet, CheckId place) => sheet[place].Margin!.Value.NominalMm;
}
