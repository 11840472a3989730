using SetupService.Domain.Answers;
using SetupService.Domain.Planning;
using SetupService.Domain.Planning.Sheets;
using SetupService.Domain.Suspension.Steering;
using SetupService.Domain.Vehicles;
using SetupService.Domain.Wear.BeforeAfter;
using SetupService.Domain.Wear.Pressures;
using SetupService.Domain.Wear.Readings;
using SetupService.Domain.Wear.Temperatures;

namespace SetupService.Domain.Tests.Planning.Sheets;

/// <summary>Where parts belong, what pressures are set, and that every test ends.</summary>
public sealed class SheetTests
{
    private static readonly PressureConditions Conditions = new(18, null, 101.325, new PressureErrors(2, 1, 2));

    private static readonly LoadNeed Need = new(190, 350, true, LoadGap.None) { PlateKpa = 230 };

    // A part stands at the axle its change names; one that renews only, at that of the parts it is apart with; else nowhere.
    [Fact]
    public void A_part_stands_where_its_change_or_its_strip_down_does()
    {
        OfferedPart[] parts =
        [
            new() { Id = "springs", Kind = PartKind.Spring, ChangeNumber = 0 },
            new() { Id = "bushes", Kind = PartKind.Bush, ApartWith = [new(0, 1)] },
            new() { Id = "pads", Kind = PartKind.Pad },
            new() { Id = "bar", Kind = PartKind.AntiRollBar, ChangeNumber = 1, Needs = [3] },
        ];
        var placed = SheetPart.List(parts, new PartPackage(0b1111, default), part => part switch { 0 => ["/rear/spring/rateNPerMm", "/front/spring/rateNPerMm"], 3 => ["/rear/antiRollBar/rollRateNmPerDeg"], _ => [] });

        Assert.Equal([CarAxle.Front, CarAxle.Rear], placed[0].Axles);
        Assert.Equal([CarAxle.Front, CarAxle.Rear], placed[1].Axles);
        Assert.Empty(placed[2].Axles);
        Assert.Equal([CarAxle.Rear], placed[3].Axles);
        Assert.Equal([false, true, true, false], placed.Select(one => one.IsRenewal));
    }

    // Ideal gas: 210 kPa to 262 kPa of absolute pressure, and back from 245 kPa.
    [Fact]
    public void A_read_tyre_goes_towards_its_hot_aim_by_one_step_and_never_below_its_load()
    {
        var line = Line(new TyrePressures(210, 262, null, 245), Need);

        var ratio = (262 + 101.325) / (210 + 101.325);
        Assert.Equal(((245 + 101.325) / ratio) - 101.325, line.ColdKpa!.Value, 1e-9);
        Assert.Equal(245, line.HotKpa!.Value, 1e-9);
        var held = Line(new TyrePressures(240, 262, null, 180), Need);
        Assert.Equal(220, held.ColdKpa);
        Assert.Equal(190, Line(new TyrePressures(200, 262, null, 180), Need).ColdKpa);
    }

    [Fact]
    public void What_was_not_read_is_the_plates_or_blank()
    {
        Assert.Equal(230, Line(null, Need).ColdKpa);
        Assert.Null(Line(null, Need with { PlateKpa = null }).ColdKpa);
        Assert.Null(Line(null, Need with { PlateKpa = 180 }).ColdKpa);
        Assert.Null(Line(null, Need, isMateRead: true).ColdKpa);
        Assert.Null(Line(new TyrePressures(210, 262, null, 245), Need, isOther: true).ColdKpa);
        Assert.Null(Line(new TyrePressures(210, 180, null, 245), Need).ColdKpa);
        Assert.Equal(230, Line(new TyrePressures(210, 262, null, 245), Need, isForRoad: true).ColdKpa);
    }

    // Plates that begin at −2.5° cannot be set to a step of 1.5° from −0.7°: their nearest end is the first step.
    [Fact]
    public void A_first_step_is_one_the_adjuster_reaches()
    {
        var plates = new Axle { Left = new() { CamberDeg = -0.7 }, Right = new() { CamberDeg = -0.7 }, AdjustableAsStated = new() { Camber = AngleReach.Between(-3.5, -2.5) } };

        var setting = CamberSetting.Choose(CarAxle.Front, plates, 0, -3.2, -10, -0.7)!.Value;
        Assert.Equal((-3.2, -2.5), (setting.ToDeg, setting.FirstDeg));
        var reaching = CamberSetting.Choose(CarAxle.Front, plates with { AdjustableAsStated = new() { Camber = AngleReach.Between(-3.5, 0) } }, 0, -3.2, -10, -0.7)!.Value;
        Assert.Equal(-2.2, reaching.FirstDeg);
    }

    // Toes told unlike go each to its own line; of toes nobody knows nothing is said against setting them alike.
    [Theory]
    [InlineData(0.12, -0.05, "each wheel to its own line")]
    [InlineData(0.12, 0.12, "each wheel by itself, so that the rear heads straight")]
    [InlineData(null, null, "each wheel by itself, so that the rear heads straight")]
    public void The_order_of_the_rear_is_that_of_its_lines(double? leftDeg, double? rightDeg, string said)
    {
        AlignmentLine[] lines = [Toe(WheelSide.Left, leftDeg), Toe(WheelSide.Right, rightDeg)];

        Assert.Contains(SheetWords.Order(lines), line => line == $"rear camber, then rear toe, {said}");
        Assert.Contains("the rear is read and left as it is", SheetWords.Order([.. lines.Select(line => line with { Task = AlignmentTask.Read })]));

        static AlignmentLine Toe(WheelSide side, double? deg) => new(CarAxle.Rear, side, AlignmentAngle.Toe, AlignmentTask.Restore, deg, deg, deg, AlignmentSheet.ToeToleranceDeg);
    }

    [Fact]
    public void Every_test_ends_and_says_what_tells_it()
    {
        var untold = new TestPlan { Sessions = 4, LapsPerSession = 10, ExpectedRatio = 0.7 };
        Assert.Contains("at least 3 readings", untold.Enough(UnitSystem.Metric), StringComparison.Ordinal);
        Assert.Contains("stop testing", untold.Stop([], UnitSystem.Metric), StringComparison.Ordinal);
        Assert.Equal(40, untold.Laps);
        Assert.Equal(5, untold.Readings);

        var step = new CamberSetting(CarAxle.Front, -0.7, -2.7, -2.7, false, 0);
        Assert.Contains("Go on to −2.7° front camber only where its outer shoulders", untold.Stop([step], UnitSystem.Metric), StringComparison.Ordinal);

        DepthReading[] read = [.. Enumerable.Range(0, 4).Select(i => new DepthReading(0, 20 * i, new AcrossTread<double>(8 - (0.7 * i), 8 - (0.4 * i), 8 - (0.3 * i))))];
        TestPlan Told(double ratio) => untold with
        {
            ExpectedRatio = ratio,
            Tyres = [TyreComparison.Compute(WheelPosition.FrontLeft, new ComparisonQuestion { Before = read, ExpectedRatio = ratio, PlannedReadings = 5, PlannedLaps = 40 })],
        };
        Assert.DoesNotContain("hardly", Told(0.05).Enough(UnitSystem.Metric), StringComparison.Ordinal);
        Assert.Contains("will hardly prove it", Told(0.95).Enough(UnitSystem.Metric), StringComparison.Ordinal);
        Assert.Contains("Other tyres", (untold with { IsOnOtherTyres = true }).Proof, StringComparison.Ordinal);
        Assert.DoesNotContain(untold with { LapsPerSession = null } is var road ? road.ToRead(UnitSystem.Us) : [], one => (one.When + one.What).Contains("km", StringComparison.Ordinal));
    }

    private static PressureLine Line(TyrePressures? read, LoadNeed need, bool isOther = false, bool isForRoad = false, bool isMateRead = false)
    {
        var pressure = read is { } one ? TyrePressureBuilder.Build(one, Conditions, need, null) : null;
        var tyre = new TyreHeat(WheelPosition.FrontLeft, null, pressure);
        return PressureSheet.Write(tyre, need, isOther, isForRoad, isMateRead, HeatActions.List([tyre], null, Conditions, null, UnitSystem.Metric), Conditions, UnitSystem.Metric);
    }
}
