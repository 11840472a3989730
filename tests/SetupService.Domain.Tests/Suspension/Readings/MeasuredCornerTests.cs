using CsCheck;
using SetupService.Domain.Suspension.Readings;
using SetupService.Domain.Suspension.Steering;
using SetupService.Domain.Tests.Suspension.Steering;

namespace SetupService.Domain.Tests.Suspension.Readings;

public sealed class MeasuredCornerTests
{
    // Corners solved by two independent methods (KinematicsCases): read every 20 mm without error by a gauge good to 0.05°, the
    // curve must come as near to the positions in between as that gauge does, twice its error at the most.
    [Theory]
    [InlineData("DW1")]
    [InlineData("ST1")]
    public void A_curve_through_readings_of_a_solved_corner_meets_the_positions_between(string id)
    {
        var rows = KinematicsCases.Case(id).GetProperty("travel_sweep").EnumerateArray()
            .Select(row => new TravelReading(row.GetProperty("travel").GetDouble(), row.GetProperty("camber").GetDouble(), row.GetProperty("toe_in").GetDouble()))
            .ToArray();
        var corner = Corner(new() { Travel = [.. rows.Where(row => row.TravelMm % 20 == 0)], GaugeErrorDeg = 0.05, ToeErrorDeg = 0.02 });

        Assert.Equal(13, rows.Length);
        Assert.All(rows, row =>
        {
            Assert.Equal(row.CamberDeg, corner.CamberAt(row.TravelMm)!.Value.AngleDeg.Value, 0.1);
            Assert.Equal(row.ToeDeg!.Value, corner.ToeAt(row.TravelMm)!.Value.AngleDeg.Value, 0.04);
        });
    }

    // The strut solved by two independent methods: what a straight line leaves of these readings is small enough for a gauge good to
    // 0.1°, but smaller than such a gauge would leave. The bend is there and must not go.
    [Fact]
    public void Good_readings_at_five_heights_keep_their_bend()
    {
        var truth = KinematicsCases.Case("ST1").GetProperty("travel_sweep").EnumerateArray()
            .ToDictionary(row => row.GetProperty("travel").GetDouble(), row => row.GetProperty("camber").GetDouble());
        double[] heightsMm = [-40, -20, 0, 20, 40];
        var corner = Corner(new() { Travel = [.. heightsMm.Select(mm => new TravelReading(mm, truth[mm]))], GaugeErrorDeg = 0.1 });

        Assert.True((truth[40] - truth[20]) / 20 > ((truth[-20] - truth[-40]) / 20) + 0.01);
        Assert.True(corner.CamberAt(40)!.Value.SlopeDegPerMm.Value > corner.CamberAt(-40)!.Value.SlopeDegPerMm.Value + 0.0003);
    }

    [Fact]
    public void Straight_readings_give_a_straight_line_that_goes_on_for_20_mm()
    {
        var corner = Corner(new() { Travel = [new(40, -2, 0.2), new(0, -1, 0.1), new(-40, 0, 0)] });

        var beyond = corner.CamberAt(55)!.Value;
        Assert.Equal(-2.375, beyond.AngleDeg.Value, 1e-7);
        Assert.Equal(-0.025, beyond.SlopeDegPerMm.Value, 1e-8);
        Assert.True(beyond.IsExtended);
        Assert.False(corner.CamberAt(40)!.Value.IsExtended);
        Assert.True(beyond.AngleDeg.StandardError > corner.CamberAt(40)!.Value.AngleDeg.StandardError);
        Assert.Equal(0.1375, corner.ToeAt(15)!.Value.AngleDeg.Value, 1e-7);
        Assert.True(corner.CamberAt(60) is not null && corner.CamberAt(-60) is not null && corner.CamberAt(-40) is { IsExtended: false });
        Assert.False(corner.CamberAt(60.1) is not null || corner.CamberAt(40.1) is { IsExtended: false });
        Assert.Null(corner.CamberAt(-60.1));
    }

    [Fact]
    public void Toe_has_its_own_readings_and_its_own_reach()
    {
        var partly = Corner(new() { Travel = [new(-40, 0), new(0, -1, 0.1), new(40, -2, 0.2)] });
        var once = Corner(new() { Travel = [new(-40, 0), new(0, -1, 0.1), new(0.5, -1, 0.1), new(40, -2)] });

        Assert.NotNull(partly.ToeAt(-20));
        Assert.Null(partly.ToeAt(-21));
        Assert.Null(partly.ToeGap);
        Assert.Null(once.ToeAt(0));
        Assert.Equal(MeasuredGap.ToeNotRead, once.ToeGap);
    }

    [Fact]
    public void Caster_and_inclination_are_as_given_or_else_from_the_steer_readings()
    {
        var steer = CasterReadingsTests.Readings((6, 13, -1.5), 0, [-20, -10, 0, 10, 20], Domain.Suspension.Steering.WheelSide.Left);
        var given = Corner(Plain with { Steer = steer, CasterDeg = 5.5, SteeringAxisInclinationDeg = 12 });
        var read = Corner(Plain with { Steer = steer });
        var neither = Corner(Plain with { Steer = steer[..2] });

        Assert.Equal((5.5, 0.0), (given.CasterDeg!.Value.Value, given.CasterDeg.Value.StandardError));
        Assert.Equal(12, given.SteeringAxisInclinationDeg!.Value.Value);
        Assert.Equal(6, read.CasterDeg!.Value.Value, 1e-8);
        Assert.Equal(13, read.SteeringAxisInclinationDeg!.Value.Value, 1e-7);
        Assert.InRange(read.SteeringAxisInclinationDeg.Value.StandardError, 1, 3);
        Assert.Equal((null, MeasuredGap.CasterNotKnown, MeasuredGap.InclinationNotKnown), (neither.CasterDeg, neither.CasterGap, neither.InclinationGap));
        Assert.Equal(CasterReadingsGap.TooFewSteerAngles, neither.Steering!.Value.Gap);
        Assert.Null(Corner(Plain).Steering);
    }

    public static TheoryData<TravelReading[], CornerReadingsFault> Faulty() => new()
    {
        { [], CornerReadingsFault.TooFewHeights },
        { [new(0, -1), new(0.9, -1.2)], CornerReadingsFault.TooFewHeights },
        { [new(0, -1), new(0.5, -1.7), new(30, -2)], CornerReadingsFault.CamberContradicts },
        { [new(0, -1, 0), new(0.5, -1, 1.1), new(30, -2)], CornerReadingsFault.ToeContradicts },
        { [new(0, -1), new(30, double.NaN)], CornerReadingsFault.NotANumber },
        { [new(0, -1), new(30, -1, double.PositiveInfinity)], CornerReadingsFault.NotANumber },
    };

    [Theory]
    [MemberData(nameof(Faulty))]
    public void Readings_that_make_no_corner_say_why(TravelReading[] travel, CornerReadingsFault expected)
    {
        Assert.Null(MeasuredCorner.From(new() { Travel = travel }, out var fault));
        Assert.Equal(expected, fault);
    }

    [Fact]
    public void An_error_below_zero_and_top_mounts_that_contradict_are_faults()
    {
        Assert.Null(MeasuredCorner.From(Plain with { GaugeErrorDeg = -0.1 }, out var gauge));
        Assert.Null(MeasuredCorner.From(Plain with { ToeErrorDeg = double.NaN }, out var toe));
        Assert.Null(MeasuredCorner.From(Plain with { TopMount = [new(0, -1), new(0.5, -2.1), new(5, -1.5)] }, out var topMount));
        Assert.Equal((CornerReadingsFault.NotANumber, CornerReadingsFault.NotANumber, CornerReadingsFault.TopMountContradicts), (gauge, toe, topMount));
    }

    // Whatever the request's ranges let in: numbers or reasons, never anything else.
    [Fact]
    public void Any_readings_give_finite_answers_or_none() =>
        Gen.Select(
            Gen.Select(Gen.Double[-500, 500], Gen.Double[-15, 15], Gen.Double[-5, 5], (mm, camber, toe) => new TravelReading(mm, camber, toe)).Array[2, 20],
            Gen.Select(Gen.Double[-100, 100], Gen.Double[-15, 15], (mm, camber) => new TopMountReading(mm, camber)).Array[0, 6],
            Gen.Select(Gen.Double[-60, 60], Gen.Double[-15, 15], (steer, camber) => new SteerReading(steer, camber)).Array[0, 6],
            Gen.Double[-10, 40].Nullable(),
            Gen.OneOf(Gen.Const(0.0), Gen.Double[0.001, 2])).Sample((travel, topMount, steer, inclination, error) =>
            {
                var readings = new CornerReadings { Travel = travel, TopMount = topMount, Steer = steer, SteeringAxisInclinationDeg = inclination, GaugeErrorDeg = error };
                if (MeasuredCorner.From(readings, out var fault) is not { } corner) return fault is not null;
                var at = corner.CamberAt(travel[0].TravelMm)!.Value;
                double?[] numbers =
                [
                    at.AngleDeg.Value, at.AngleDeg.StandardError, at.SlopeDegPerMm.Value, at.SlopeDegPerMm.StandardError,
                    corner.CasterDeg?.StandardError, corner.CamberDegAt(travel[0].TravelMm), corner.TopMount?.EffectiveHeightMm?.Value, corner.TopMount?.EffectiveHeightMm?.StandardError,
                    corner.TopMount?.CamberChangeDeg(10).Value, corner.CasterChangeDeg(10)?.StandardError,
                ];
                return fault is null && numbers.All(number => double.IsFinite(number ?? 0));
            });

    [Fact]
    public void Asking_costs_no_memory()
    {
        var corner = Corner(new() { Travel = [.. Enumerable.Range(-10, 21).Select(i => new TravelReading(i * 8, -1 - (i * 0.2) + (i * i * 0.01), i * 0.02))] });
        corner.CamberAt(3);
        corner.ToeAt(3);

        var before = GC.GetAllocatedBytesForCurrentThread();
        for (var i = -90; i <= 90; i++)
        {
            corner.CamberAt(i);
            corner.ToeAt(i);
        }

        Assert.Equal(0, GC.GetAllocatedBytesForCurrentThread() - before);
    }

    internal static CornerReadings Plain { get; } = new() { Travel = [new(-40, 0), new(0, -1), new(40, -2)] };

    internal static MeasuredCorner Corner(CornerReadings readings)
    {
        var corner = MeasuredCorner.From(readings, out var fault);
        Assert.Null(fault);
        return corner!;
    }
}
