using CsCheck;
using SetupService.Domain.Answers;
using SetupService.Domain.Suspension.Readings;

namespace SetupService.Domain.Tests.Suspension.Readings;

public sealed class TopMountFitTests
{
    private static readonly Gen<(double HeightMm, double SteeringAxisInclinationDeg)> Struts = Gen.Select(Gen.Double[400, 900], Gen.Double[-5, 25]);

    [Fact]
    public void Exact_readings_of_a_rigid_strut_give_back_its_height_and_its_camber() =>
        Gen.Select(Struts, Gen.Double[-4, 2], Gen.Double[3, 25].Array[1, 4], Gen.Double[-40, 40]).Sample((strut, camberDeg, movesMm, moveMm) =>
        {
            var fit = TopMountFit.From(Readings(strut, camberDeg, [0, .. movesMm]), new(strut.SteeringAxisInclinationDeg, 0), 0.001)!.Value;

            Assert.Equal(strut.HeightMm, fit.EffectiveHeightMm!.Value.Value, 1e-6);
            Assert.Null(fit.HeightGap);
            Assert.Equal(CamberAt(strut, 0, moveMm), fit.CamberChangeDeg(moveMm).Value, 1e-9);
        });

    // A strut solved in space by two independent methods (KinematicsCases, ST1; ball joint to top mount 665 mm high, 155 mm across,
    // 40 mm along): its sliding axis passes beside the ball joint, for which the height that acts comes out a few percent less.
    [Fact]
    public void Readings_of_a_solved_strut_are_met_and_its_caster_change_within_4_percent()
    {
        var inboard = Solved("in y", "camber");
        var rearward = Solved("in x", "caster");
        var inclinationDeg = double.RadiansToDegrees(Math.Atan(155.0 / 665));
        TopMountReading[] readings = [new(0, 0), .. inboard.Select(one => new TopMountReading(one.Mm, one.ChangeDeg))];

        var fit = TopMountFit.From(readings, new(inclinationDeg, 0), 0.01)!.Value;
        Assert.InRange(fit.EffectiveHeightMm!.Value.Value, 0.95 * 665, 665);
        Assert.All(inboard, one => Assert.Equal(one.ChangeDeg, fit.CamberChangeDeg(one.Mm).Value, 0.003));
        Assert.All(rearward, one => Assert.InRange(
            fit.CasterChangeDeg(one.Mm, new(double.RadiansToDegrees(Math.Atan(40.0 / 665)), 0))!.Value.Value / one.ChangeDeg, 1, 1.04));
        Assert.Equal((3, 3), (inboard.Length, rearward.Length));
    }

    // Derived: with the drawn height the formulas give 0.8144 and 0.4079° of inclination for 10 and 5 mm, 0.8576 and 0.8592° of caster.
    [Fact]
    public void The_derived_figures_of_the_formulas_are_reproduced()
    {
        (double HeightMm, double SteeringAxisInclinationDeg) strut = (665, double.RadiansToDegrees(Math.Atan(155.0 / 665)));
        var casterDeg = double.RadiansToDegrees(Math.Atan(40.0 / 665));
        var fit = TopMountFit.From(Readings(strut, -1, [-10, 0, 10]), new(strut.SteeringAxisInclinationDeg, 0), 0.01)!.Value;

        Assert.Equal(-0.8144, fit.CamberChangeDeg(10).Value, 5e-5);
        Assert.Equal(-0.4079, fit.CamberChangeDeg(5).Value, 5e-5);
        Assert.Equal(0.4093, fit.CamberChangeDeg(-5).Value, 5e-5);
        Assert.Equal(0.8576, fit.CasterChangeDeg(10, new(casterDeg, 0))!.Value.Value, 5e-5);
        Assert.Equal(-0.8592, fit.CasterChangeDeg(-10, new(casterDeg, 0))!.Value.Value, 5e-5);
    }

    // Chance of a fixed seed; 4,000 trials, give or take four standard errors of that share.
    [Fact]
    public void Nine_ranges_of_ten_hold_the_true_height_and_the_true_change()
    {
        var random = new Random(20261125);
        (double HeightMm, double SteeringAxisInclinationDeg) strut = (600, 13);
        var exact = Readings(strut, -1, [-15, -15, 0, 15, 15]);
        var (heightHeld, changeHeld) = (0, 0);
        for (var trial = 0; trial < 4_000; trial++)
        {
            TopMountReading[] noisy = [.. exact.Select(reading => reading with { CamberDeg = reading.CamberDeg + (0.1 * Chance.Normal(random)) })];
            var inclinationDeg = 13 + (2 * Chance.Normal(random));
            var fit = TopMountFit.From(noisy, new(inclinationDeg, 2), 0.1)!.Value;
            if (Holds(fit.EffectiveHeightMm!.Value.Ninety, 600)) heightHeld++;
            if (Holds(fit.CamberChangeDeg(30).Ninety, CamberAt(strut, 0, 30))) changeHeld++;
        }

        Assert.InRange(heightHeld / 4_000.0, 0.881, 0.919);
        Assert.InRange(changeHeld / 4_000.0, 0.881, 0.919);
    }

    [Fact]
    public void Without_an_inclination_there_is_a_straight_line_and_no_height()
    {
        var fit = TopMountFit.From([new(-10, -0.2), new(0, -1), new(10, -1.8)], null, 0.1)!.Value;

        Assert.Equal(-1.6, fit.CamberChangeDeg(20).Value, 1e-12);
        Assert.Equal(20 * 0.1 / Math.Sqrt(200), fit.CamberChangeDeg(20).StandardError, 1e-12);
        Assert.Equal(MeasuredGap.InclinationNotKnown, fit.HeightGap);
        Assert.Null(fit.EffectiveHeightMm);
        Assert.Null(fit.CasterChangeDeg(5, new(6, 0)));
    }

    [Theory]
    [InlineData(1, 0.05, MeasuredGap.TopMountMovedTooLittle)]
    [InlineData(10, 0.8, MeasuredGap.TopMountWrongWay)]
    [InlineData(10, -0.8, null)]
    public void A_movement_that_tells_no_height_says_why(double inboardMm, double changeDeg, MeasuredGap? expected)
    {
        var corner = MeasuredCornerTests.Corner(MeasuredCornerTests.Plain with
        {
            TopMount = [new(0, -1), new(inboardMm, -1 + changeDeg)],
            SteeringAxisInclinationDeg = 13,
            CasterDeg = 6,
        });

        Assert.Equal(expected, corner.StrutHeightGap);
        Assert.Equal(expected, corner.RearwardGap);
        Assert.Equal(expected is null, corner.TopMount?.EffectiveHeightMm is not null);
        Assert.Equal(expected is null, corner.CasterChangeDeg(5) is not null);
    }

    [Fact]
    public void A_top_mount_that_was_not_moved_tells_nothing()
    {
        var corner = MeasuredCornerTests.Corner(MeasuredCornerTests.Plain with { TopMount = [new(0, -1), new(0.9, -1.1)], SteeringAxisInclinationDeg = 13 });

        Assert.Null(corner.TopMount);
        Assert.Equal((MeasuredGap.TopMountNotRead, MeasuredGap.TopMountNotRead), (corner.TopMountGap, corner.StrutHeightGap));
    }

    private static TopMountReading[] Readings((double HeightMm, double SteeringAxisInclinationDeg) strut, double camberDeg, double[] movesMm) =>
        [.. movesMm.Select(moveMm => new TopMountReading(moveMm, CamberAt(strut, camberDeg, moveMm)))];

    // The strut as a triangle: height H, breadth Y = H tan(inclination) and then Y + movement.
    private static double CamberAt((double HeightMm, double SteeringAxisInclinationDeg) strut, double camberDeg, double moveMm) =>
        camberDeg + strut.SteeringAxisInclinationDeg
        - double.RadiansToDegrees(Math.Atan2((strut.HeightMm * Math.Tan(double.DegreesToRadians(strut.SteeringAxisInclinationDeg))) + moveMm, strut.HeightMm));

    private static (double Mm, double ChangeDeg)[] Solved(string direction, string angle) =>
    [
        .. KinematicsCases.Adjustments("ST1")
            .Select(one => (Change: one.GetProperty("change").GetString()!, Delta: one.GetProperty("delta")))
            .Where(one => one.Change.StartsWith("strut top", StringComparison.Ordinal) && one.Change.Contains(direction, StringComparison.Ordinal))
            .Select(one => (-double.Parse(one.Change.Split(' ')[3], System.Globalization.CultureInfo.InvariantCulture), one.Delta.GetProperty(angle).GetDouble())),
    ];

    private static bool Holds(in Uncertainty range, double value) => range.Lower <= value && value <= range.Upper;
}
