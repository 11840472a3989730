using CsCheck;
using SetupService.Domain.Answers;
using SetupService.Domain.Fitment;
using SetupService.Domain.Suspension;
using SetupService.Domain.Suspension.Points;
using SetupService.Domain.Suspension.Readings;
using SetupService.Domain.Tests.Suspension;
using SetupService.Domain.Vehicles;

namespace SetupService.Domain.Tests.Fitment;

/// <summary>Gaps measured at ride height of a car whose suspension is known by its points.</summary>
public sealed class LeanOfPointsTests
{
    private static readonly CheckId[] Leaning = [CheckId.InboardClearance, CheckId.OutboardClearance, CheckId.FullLockClearance];

    private static readonly TwistBeam Beam = new()
    {
        PivotLeft = new(430, 560, 335),
        BeamShearCentre = new(245, 0, 318),
        WheelCentre = new(0, 735, 306),
    };

    // Corners solved by two independent methods: 60 mm of bump lean the wheel in by what their tables say; at the height of the wheel centre only its way sideways
    // is taken, so the difference is R times the sines of the table's cambers.
    [Theory]
    [InlineData("DW1")]
    [InlineData("ST1")]
    [InlineData("PL1")]
    public void The_lean_is_that_of_positions_solved_by_two_other_methods(string id)
    {
        var atBumpDeg = KinematicsCases.Case(id).GetProperty("travel_sweep").EnumerateArray()
            .Single(row => row.GetProperty("travel").GetDouble() == 60).GetProperty("camber").GetDouble();
        var lean = Math.Sin(double.DegreesToRadians(KinematicsCases.Setting(id).CamberDeg)) - Math.Sin(double.DegreesToRadians(atBumpDeg));
        var path = WheelTravelPath.Over(ByPoints(id, 60), 60);

        Assert.Equal(lean, path.Places[^1].LeanPerMm, 1e-8);
        Assert.Equal(60, path.Places[^1].TravelMm, 1e-9);
    }

    [Fact]
    public void A_wheel_that_leans_outward_takes_room_at_the_arch_and_at_its_foot()
    {
        var axle = Axle(60) with { Suspension = SuspensionModel.From(new CornerReadings { Travel = [new(0, 0), new(60, 1)] }) };

        Assert.Equal(40 - (317 * Math.Sin(double.DegreesToRadians(1))), NominalMm(Check(axle), CheckId.OutboardClearance), 1e-9);

        // How high the narrowest place is nobody said: the bottom of the tyre goes inboard as far as its top goes outboard.
        Assert.Equal(40 - (317 * Math.Sin(double.DegreesToRadians(1))), NominalMm(Check(axle), CheckId.InboardClearance), 1e-9);
    }

    [Theory]
    [InlineData("DW1")]
    [InlineData("ST1")]
    public void Static_angles_that_are_not_known_are_taken_as_nothing_said_so_and_hardly_matter(string id)
    {
        var known = DemoCar.Front(ByPoints(id, 80) with { Left = new WheelAlignment { CamberDeg = -2.5, ToeDeg = 0.3 } });
        var silent = DemoCar.Front(ByPoints(id, 80) with { Left = new WheelAlignment { CamberDeg = null, ToeDeg = null } });

        foreach (var place in Leaning)
        {
            Assert.Equal(NominalMm(Check(known), place), NominalMm(Check(silent), place), 0.1);
        }

        Assert.DoesNotContain(FitmentAssumptions.ForWindow(known, DemoCar.Tyre()), one => one.Input.Contains("/alignment/", StringComparison.Ordinal));
        Assert.Equal(
            [("/vehicle/front/alignment/camberDeg", 0), ("/vehicle/front/alignment/toeDeg", 0)],
            FitmentAssumptions.ForCheck(silent, DemoCar.Fitting()).Where(one => one.Input.Contains("/alignment/", StringComparison.Ordinal)).Select(one => (one.Input, one.Value!.Value)));
    }

    // Turned about the line through the pivots, across the car, an upright wheel without toe keeps its camber; about the line to the
    // beam's shear centre it does not.
    [Fact]
    public void A_twist_beam_leans_as_much_as_the_worse_of_its_two_motions()
    {
        var car = DemoCar.Front(Axle(80) with { Suspension = SuspensionModel.From(Beam), Left = new WheelAlignment { CamberDeg = 0, ToeDeg = 0 } });
        var arm = DemoCar.Front(Axle(80) with { Suspension = SuspensionModel.From(Beam.ArmIn(AxleMotion.Opposite)), Left = new WheelAlignment { CamberDeg = 0, ToeDeg = 0 } });

        Assert.InRange(NominalMm(Check(car), CheckId.InboardClearance), 10, 30);
        Assert.Equal(NominalMm(Check(arm), CheckId.InboardClearance), NominalMm(Check(car), CheckId.InboardClearance), 1e-9);
        Assert.Contains(FitmentAssumptions.ForWindow(car, DemoCar.Tyre()), one => one.Input == "/vehicle/front/suspension");
        Assert.DoesNotContain(FitmentAssumptions.ForWindow(arm, DemoCar.Tyre()), one => one.Input == "/vehicle/front/suspension");
    }

    public static TheoryData<string, string> Untold() => new()
    {
        { nameof(UnknownReason.PointsContradict), "look at strutLower first" },
        { nameof(UnknownReason.PointsDoNotHold), "free movement" },
        { nameof(UnknownReason.TravelNotReached), "of the upward travel of 500 mm" },
    };

    [Theory]
    [MemberData(nameof(Untold))]
    public void Points_that_do_not_tell_the_lean_leave_it_unknown_and_say_why(string reason, string words)
    {
        var expected = Enum.Parse<UnknownReason>(reason);
        var strut = (MacPhersonStrut)KinematicsCases.Setting("ST1").Suspension;
        var axle = expected switch
        {
            UnknownReason.PointsContradict => ByPoints("ST1", 60) with { Suspension = SuspensionModel.From(strut with { StrutTop = strut.StrutTop with { Z = strut.LowerArm.Joint.Z } }) },
            UnknownReason.PointsDoNotHold => Axle(60) with { Suspension = SuspensionModel.From(LooseLinks) },
            _ => ByPoints("ST1", 500),
        };
        var car = DemoCar.Front(axle);

        // Wider and taller than the present one: what takes no more room than that needs no lean.
        var candidate = DemoCar.Fitting(widthIn: 8.5, marking: "235/45R17 94W");
        var sheet = DemoCar.Check(car, candidate);

        foreach (var place in Leaning)
        {
            var text = CheckWords.Explanation(car, candidate, place, sheet[place], UnitSystem.Metric);
            Assert.Equal((CheckStatus.Unknown, expected), (sheet[place].Status, sheet[place].Reason));
            Assert.True(sheet.Unknown.Contains(place));
            Assert.Contains(words, text, StringComparison.Ordinal);
            Assert.DoesNotMatch(@"\d mm", CheckWords.Explanation(car, candidate, place, sheet[place], UnitSystem.Us));
        }

        Assert.NotNull(sheet[CheckId.RadialClearance].Margin);
        Assert.NotNull(sheet[CheckId.SpringSeatClearance].Margin);
        Assert.Equal(WindowStatus.Unknown, OffsetWindow.Compute(DemoCar.Front(axle with { Clearance = axle.Clearance with { RadialMm = null, SpringSeatMm = null } }), DemoCar.Tyre(), 7.5).Status);
    }

    [Fact]
    public void Checking_candidates_costs_no_memory()
    {
        var car = DemoCar.Front(ByPoints("ST1", 60));
        var candidates = Enumerable.Range(30, 30).Select(offset => DemoCar.Fitting(offsetMm: offset)).ToArray();
        var sheet = new CheckSheet();
        foreach (var candidate in candidates) FitmentCheck.Evaluate(car, candidate, sheet);

        var before = GC.GetAllocatedBytesForCurrentThread();
        foreach (var candidate in candidates) FitmentCheck.Evaluate(car, candidate, sheet);

        Assert.Equal(0, GC.GetAllocatedBytesForCurrentThread() - before);
    }

    private static Axle Axle(double bumpMm)
    {
        var axle = DemoCar.Axle();
        return axle with
        {
            BumpTravelMm = bumpMm,
            BumpStop = new BumpStop { LengthMm = 18, CompressedLengthMm = 18, MotionRatio = 1 },
            Clearance = axle.Clearance with
            {
                InboardMm = 40,
                OutboardMm = 40,
                RadialMm = 700,
                InboardAtFullLockMm = 40,
                MeasuredAt = ClearanceMeasuredAt.RideHeight,
            },
        };
    }

    private static Axle ByPoints(string id, double bumpMm)
    {
        var setting = KinematicsCases.Setting(id);
        return Axle(bumpMm) with
        {
            Suspension = SuspensionModel.From(setting.Suspension),
            Left = new WheelAlignment { CamberDeg = setting.CamberDeg, ToeDeg = setting.ToeDeg },
        };
    }

    private static CheckSheet Check(Axle axle) => Check(DemoCar.Front(axle));

    private static CheckSheet Check(FitmentContext car) => DemoCar.Check(car, DemoCar.Fitting());

    private static double NominalMm(CheckSheet sheet, CheckId place) => sheet[place].Margin!.Value.NominalMm;

    /// <summary>Five different level links whose lines all meet one upright line: about that line the wheel is free.</summary>
    private static FiveLink LooseLinks { get; } = new()
    {
        Links =
        [
            .. new[] { -20.0, -10, 0, 10, 25 }.Select((angleDeg, i) =>
            {
                var (sin, cos) = Math.SinCos(double.DegreesToRadians(angleDeg));
                return new Link(new(-300 * sin, 640 - (300 * cos), 200 + (60 * i)), new(50 * sin, 640 + (50 * cos), 200 + (60 * i)));
            }),
        ],
        WheelCentre = new(0, 740, 305),
    };
}
