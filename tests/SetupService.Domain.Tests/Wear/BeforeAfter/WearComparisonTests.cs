using CsCheck;
using SetupService.Domain.Answers;
using SetupService.Domain.Numerics.Statistics;
using SetupService.Domain.Tests.Wear.Forecast;
using SetupService.Domain.Vehicles;
using SetupService.Domain.Wear.BeforeAfter;
using SetupService.Domain.Wear.Readings;
using SetupService.Domain.Wear.StraightWear;

namespace SetupService.Domain.Tests.Wear.BeforeAfter;

/// <summary>Rates before and after, against simulated tyres whose change is known.</summary>
public sealed class WearComparisonTests
{
    private const int Cases = 4000;

    [Fact]
    public void Exact_wear_gives_back_the_ratio()
    {
        var result = Compare(Laps(5, 0.03, 0.02), Laps(5, 0.021, 0.02));

        Assert.Equal(ComparedClock.Track, result.Clock);
        var outer = result.Zones!.Value.Outer.Main!.Value;
        Assert.Equal(0.7, outer.Ratio!.Value.Value!.Value, 1e-9);
        Assert.True(outer.IsShown);
        Assert.Equal(1, result.Zones.Value.Centre.Main!.Value.Ratio!.Value.Value!.Value, 1e-9);
        Assert.False(result.Zones.Value.Centre.Main.Value.IsShown);
        Assert.Equal(1.5, result.Outer!.Value.Before.Value!.Value, 1e-9);
        Assert.True(result.Outer.Value.IsShown);
    }

    // The range of the ratio leaves 1 out exactly where the change is shown.
    [Fact]
    public void Shown_is_what_the_range_says() => Gen.Select(Gen.Int[0, int.MaxValue], Gen.Double[0.4, 1.6]).Sample((seed, ratio) =>
    {
        var random = new Random(seed);
        var main = Compare(Noisy(random, 5, 0.02, 0.15), Noisy(random, 5, 0.02 * ratio, 0.15)).Zones!.Value.Outer.Main!.Value;
        var range = main.Ratio!.Value;
        if (!range.IsBounded) return;
        Assert.Equal(range.Lower > 1 || range.Upper < 1, main.IsShown);
    });

    [Theory]
    [InlineData(4, 0.05)]
    [InlineData(5, 0.15)]
    [InlineData(12, 0.3)]
    public void Ranges_of_the_ratio_keep_their_level(int count, double gaugeErrorMm)
    {
        var random = new Random(count);
        var held = 0;
        for (var i = 0; i < Cases; i++)
        {
            var (was, ratio) = (0.015 + (0.02 * random.NextDouble()), 0.6 + (0.8 * random.NextDouble()));
            var result = WearComparison.Compute(new()
            {
                Before = Noisy(random, count, was, gaugeErrorMm),
                After = Noisy(random, count, was * ratio, gaugeErrorMm),
                GaugeErrorMm = gaugeErrorMm * (0.7 + (0.6 * random.NextDouble())),
                BetweenSessions = 0,
            });
            var range = result.Zones!.Value.Inner.Main!.Value.Ratio!.Value;
            if (range.Lower <= ratio && !(range.Upper < ratio)) held++;
        }

        Assert.InRange(100.0 * held / Cases, 88, 92);
    }

    // No change made, and the pace of each session drawn with a spread of 20 %, the same for all zones: neither a rate nor a shoulder's ratio to the
    // centre (drawn with half of it) is said to have changed in more than one case of ten, however closely it was read.
    [Theory]
    [InlineData(5, 0.02, 1)]
    [InlineData(5, 0.15, 1)]
    [InlineData(7, 0.05, 3)]
    [InlineData(13, 0.1, 4)]
    public void Sessions_that_vary_are_not_taken_for_a_change(int count, double gaugeMm, int sessions)
    {
        var random = new Random((100 * count) + sessions);
        var (rates, ratios, asked) = (0, 0, 0);
        for (var i = 0; i < Cases; i++)
        {
            var (before, beforeSessions) = Varied(random, count, gaugeMm, sessions);
            var (after, afterSessions) = Varied(random, count, gaugeMm, sessions);
            var wear = WearComparison.Compute(new() { Before = before, After = after, BeforeSessions = beforeSessions, AfterSessions = afterSessions, GaugeErrorMm = gaugeMm });
            if (wear.Zones!.Value.Centre.Main!.Value.IsShown == true) rates++;
            if (wear.Outer!.Value.IsShown is not { } isShown) continue;
            asked++;
            if (isShown) ratios++;
        }

        Assert.InRange(100.0 * rates / Cases, 2, 10);
        Assert.InRange(100.0 * ratios / asked, 2, 10.5);
    }

    private static (DepthReading[] Readings, int[] Sessions) Varied(Random random, int count, double gaugeMm, int sessions)
    {
        var (readings, of) = (new DepthReading[count], new int[count]);
        var depths = new double[] { 12, 12, 12 };
        var (session, pace, shape) = (-1, 1.0, 1.0);
        for (var i = 0; i < count; i++)
        {
            of[i] = Math.Max(0, i - 1) * sessions / (count - 1);
            if (of[i] != session) (session, pace, shape) = (of[i], Math.Exp(0.2 * SimulatedTyre.Chance(random)), Math.Exp(0.1 * SimulatedTyre.Chance(random)));
            if (i > 0) depths = [depths[0] - (15 * 0.03 * pace * shape), depths[1] - (15 * 0.02 * pace), depths[2] - (15 * 0.02 * pace)];
            readings[i] = new(0, 15 * i, new(Read(0), Read(1), Read(2)));
            double Read(int zone) => depths[zone] + (gaugeMm * SimulatedTyre.Chance(random));
        }

        return (readings, of);
    }

    // One session a side, read as closely as one likes: the effect must be beyond the prior, and more sessions, not laps, would show a lesser one.
    [Fact]
    public void One_session_a_side_shows_only_what_is_beyond_the_prior()
    {
        static WearComparison Exactly(double ratio) => WearComparison.Compute(new() { Before = Laps(20, 0.03, 0.02), After = Laps(20, 0.03 * ratio, 0.02) });

        var small = Exactly(0.85);
        Assert.False(small.Outer!.Value.IsShown);
        Assert.False(small.Zones!.Value.Outer.Main!.Value.IsShown);
        Assert.Null(small.Zones.Value.Outer.LeastUse);
        Assert.InRange(small.Outer.Value.FurtherSessions!.Value, 2, 6);
        Assert.True(small.Zones.Value.Outer.FurtherSessions > small.Outer.Value.FurtherSessions);
        Assert.Equal(ChangeOutcome.NotShown, small.Outcome);

        var large = Exactly(0.5);
        Assert.True(large.Outer!.Value.IsShown);
        Assert.Equal(0, large.Outer.Value.FurtherSessions);
        Assert.Equal(ChangeOutcome.Better, large.Outcome);
        Assert.Equal(ChangeOutcome.Worse, Exactly(2).Outcome);
    }

    [Fact]
    public void More_sessions_weigh_less_each()
    {
        var readings = Laps(9, 0.02, 0.02);
        var design = WearDesign.Create(readings);

        Assert.Equal(1, Sessions.SquaredWeights(design, readings, [0, 0, 0, 0, 0, 0, 0, 0, 0], true));
        Assert.Equal(0.5, Sessions.SquaredWeights(design, readings, [0, 0, 0, 0, 0, 1, 1, 1, 1], true), 1e-12);

        // By hand: the slope weighs the eight steps as 4, 7, 9, 10, 10, 9, 7, 4 parts of 60.
        Assert.Equal((2 * ((11.0 * 11) + (19 * 19))) / 3600, Sessions.SquaredWeights(design, readings, [0, 0, 0, 1, 1, 2, 2, 3, 3], true), 1e-12);
        Assert.Equal(4, Sessions.Count([9, 0, 0, 1, 1, 2, 2, 3, 3]));
    }

    // The power that is told against how often the test of simulated readings finds the change.
    [Theory]
    [InlineData(5, 0.75, 50)]
    [InlineData(4, 0.6, 40)]
    [InlineData(7, 1.4, 60)]
    public void Power_is_how_often_the_change_is_found(int count, double ratio, double laps)
    {
        const double GaugeMm = 0.12;
        const double PerLapMm = 0.025;
        var random = new Random(1000 + count);
        var found = 0;
        for (var i = 0; i < Cases; i++)
        {
            var after = new DepthReading[count];
            for (var k = 0; k < count; k++) after[k] = Read(random, laps * k / (count - 1), PerLapMm * ratio, GaugeMm);
            if (Compare(Noisy(random, count, PerLapMm, GaugeMm), after).Zones!.Value.Outer.Main!.Value.IsShown == true) found++;
        }

        Assert.Equal((double)found / Cases, Told(count, ratio, laps, PerLapMm, GaugeMm), 0.03);
    }

    [Fact]
    public void The_least_use_has_the_power_wanted_and_more_use_has_more()
    {
        var before = Noisy(new Random(3), 6, 0.03, 0.1);
        var question = new ComparisonQuestion { Before = before, ExpectedRatio = 0.7, BetweenSessions = 0 };
        var zone = WearComparison.Compute(question).Zones!.Value.Outer;

        var least = zone.LeastUse!.Value;

        Assert.Equal(0.8, WearComparison.Compute(question with { PlannedLaps = least }).Zones!.Value.Outer.PlannedPower!.Value, 1e-6);
        Assert.True(WearComparison.Compute(question with { PlannedLaps = least * 1.5 }).Zones!.Value.Outer.PlannedPower > 0.85);
        Assert.True(WearComparison.Compute(question with { PlannedReadings = 10 }).Zones!.Value.Outer.LeastUse < least);
        Assert.True(WearComparison.Compute(question with { ExpectedRatio = 0.6 }).Zones!.Value.Outer.LeastUse < least);
    }

    [Fact]
    public void A_change_that_nothing_would_show_has_no_least_use()
    {
        var result = WearComparison.Compute(new() { Before = Noisy(new Random(4), 4, 0.01, 0.3), ExpectedRatio = 0.99 });

        Assert.Null(result.Zones!.Value.Outer.LeastUse);
        Assert.NotNull(ComparisonWords.NoPlan(result, result.Zones.Value.Outer));
    }

    [Fact]
    public void Too_few_readings_are_unknown_with_the_reason()
    {
        var question = new ComparisonQuestion { Before = Laps(2, 0.03, 0.02), After = Laps(5, 0.03, 0.02) };
        var result = WearComparison.Compute(question);

        Assert.Null(result.Zones);
        Assert.Contains("before the change there are 2", ComparisonWords.Summary([new(WheelPosition.FrontLeft, question, result)], UnitSystem.Metric), StringComparison.Ordinal);
    }

    [Fact]
    public void Both_clocks_compare_the_track_with_the_road_beside_it()
    {
        static DepthReading[] Tyre(double perLapMm, double perKmMm) =>
            [.. new[] { (0.0, 0.0), (300, 20), (2000, 25), (2400, 50), (4000, 60) }.Select(at => Alike(at.Item1, at.Item2, 8 - (perLapMm * at.Item2) - (perKmMm * at.Item1)))];

        var zone = Compare(Tyre(0.02, 0.0002), Tyre(0.03, 0.0001)).Zones!.Value.Centre;

        Assert.Equal(1.5, zone.Main!.Value.Ratio!.Value.Value!.Value, 1e-8);
        Assert.Equal(0.5, zone.Road!.Value.Ratio!.Value.Value!.Value, 1e-8);
    }

    [Fact]
    public void Clocks_in_one_proportion_compare_at_that_and_in_two_not_at_all()
    {
        static DepthReading[] Tyre(double kmPerLap) =>
            [.. Enumerable.Range(0, 5).Select(i => Alike(kmPerLap * 15 * i, 15 * i, 8 - (0.4 * i)))];

        Assert.Equal(ComparedClock.SameMix, Compare(Tyre(50), Tyre(50)).Clock);
        Assert.Equal(ComparedClock.None, Compare(Tyre(50), Tyre(20)).Clock);
    }

    [Fact]
    public void Nothing_is_not_a_number() => Gen.Select(Gen.Int[0, int.MaxValue], Gen.Int[1, 8], Gen.Int[0, 8], Gen.Double[0, 3]).Sample((seed, before, after, ratio) =>
    {
        var random = new Random(seed);
        var question = new ComparisonQuestion { Before = Noisy(random, before, 0.02, 0.2), After = Noisy(random, after, 0.01, 0.2), ExpectedRatio = ratio, PlannedLaps = 30 };
        var result = WearComparison.Compute(question);
        Assert.DoesNotContain("NaN", ComparisonWords.Summary([new(WheelPosition.FrontLeft, question, result)], UnitSystem.Us), StringComparison.Ordinal);
        if (result.Zones is not { } zones) return;
        Assert.True(zones.Outer.PlannedPower is null or (>= 0 and <= 1));
        Assert.True(zones.Outer.LeastUse is null or (>= 0 and < 1e7));
    });

    [Fact]
    public void A_ratio_is_bounded_as_fieller_has_it()
    {
        // Both ends stand 2 standard errors of top − x bottom from zero.
        var range = RatioRange.Compute(4, 2, 0.09, 0.02, 0.04, 2);
        foreach (var x in (double[])[range.Lower!.Value, range.Upper!.Value])
            Assert.Equal(2, Math.Abs(4 - (2 * x)) / Math.Sqrt(0.09 - (0.04 * x) + (0.04 * x * x)), 1e-9);
        Assert.Null(RatioRange.Compute(4, 0.3, 0.09, 0, 0.04, 2).Upper);
        Assert.Null(RatioRange.Compute(4, -2, 0.09, 0, 0.04, 2).Lower);
        Assert.Equal(0, RatioRange.Compute(-1, 2, 0.09, 0, 0.04, 2).Value);
    }

    /// <summary>The power told where the rate before is the true one and readings scatter as the gauge errs.</summary>
    private static double Told(int count, double ratio, double laps, double perLapMm, double gaugeMm)
    {
        var fit = WearFit.Fit(Laps(count, perLapMm, perLapMm), null)!;
        var exact = fit with { Scatter = new(gaugeMm, fit.Scatter.DegreesOfFreedom, false) };
        return new FurtherReadings(exact, [], TyreUse.OneLap, count, default).Power(TreadPlace.Outer, ratio, laps);
    }

    // The gauge alone: sessions that do not vary.
    private static WearComparison Compare(DepthReading[] before, DepthReading[] after) => WearComparison.Compute(new() { Before = before, After = after, BetweenSessions = 0 });

    private static DepthReading[] Laps(int count, double outerPerLapMm, double otherPerLapMm) =>
        [.. Enumerable.Range(0, count).Select(i => new DepthReading(0, 15 * i, new(8 - (15 * i * outerPerLapMm), 8 - (15 * i * otherPerLapMm), 8 - (15 * i * otherPerLapMm))))];

    private static DepthReading[] Noisy(Random random, int count, double perLapMm, double gaugeMm) =>
        [.. Enumerable.Range(0, count).Select(i => Read(random, 15 * i, perLapMm, gaugeMm))];

    private static DepthReading Read(Random random, double laps, double perLapMm, double gaugeMm)
    {
        return new(0, laps, new(One(), One(), One()));
        double One() => 8 - (laps * perLapMm) + (gaugeMm * SimulatedTyre.Chance(random));
    }

    private static DepthReading Alike(double km, double laps, double mm) => new(km, laps, new(mm, mm, mm));
}
