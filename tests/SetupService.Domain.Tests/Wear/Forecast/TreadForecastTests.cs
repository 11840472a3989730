using CsCheck;
using SetupService.Domain.Answers;
using SetupService.Domain.Numerics.Statistics;
using SetupService.Domain.Wear.Forecast;
using SetupService.Domain.Wear.Readings;
using SetupService.Domain.Wear.StraightWear;

namespace SetupService.Domain.Tests.Wear.Forecast;

/// <summary>A forecast on readings whose answer can be worked by hand, and what must hold of any.</summary>
public sealed class TreadForecastTests
{
    private static readonly Gen<DepthReading[]> AnyReadings = Gen.Select(Gen.Int[0, int.MaxValue], Gen.Int[4, 30], Gen.Int[0, 3])
        .Select((seed, count, driven) => new SimulatedTyre(new Random(seed), count, (Driven)driven).Readings);

    // Worked by hand: 0.2 mm per 1000 km, 0.03 mm per lap at the outer shoulder; 8 − 1.2 − 1.8 = 5.0 at the end, 3.4 mm over the limit.
    [Fact]
    public void Exact_wear_gives_back_its_rates_and_what_is_left()
    {
        var forecast = Of(Exact((0, 0), (1000, 20), (4000, 30), (6000, 60)));

        var outer = forecast.Zones!.Value.Outer;
        Assert.Equal(0.2, outer.RatePer1000KmMm!.Value.Value, 1e-9);
        Assert.Equal(0.03, outer.RatePerLapMm!.Value.Value, 1e-11);
        Assert.Equal(5.0, outer.DepthNowMm.Value, 1e-9);
        Assert.Equal(17_000, outer.KmLeft!.Value.Value!.Value, 1e-5);
        Assert.Equal(3.4 / 0.03, outer.LapsLeft!.Value.Value!.Value, 1e-7);
        Assert.Equal(3.4 / 3.0, outer.MixesLeft.Value!.Value, 1e-9);
        Assert.Equal(3.0, forecast.WornMm.Outer, 1e-9);
        Assert.Equal(TreadPlace.Outer, forecast.Ending!.Value.Place);
        Assert.True(forecast.Ending.Value.IsToldApart);
        Assert.True(forecast.Fit!.Scatter.IsFloor);
    }

    [Fact]
    public void Fewer_than_four_distances_give_the_wear_so_far_and_no_forecast()
    {
        var forecast = Of(Exact((0, 0), (1000, 20), (1000, 20), (4000, 30)));

        Assert.Equal(ForecastStatus.Unknown, forecast.Status);
        Assert.Null(forecast.Zones);
        Assert.Equal(3, forecast.DistinctReadings);
        Assert.Equal(1.7, forecast.WornMm.Outer, 1e-9);
        Assert.Contains("there are 3", ForecastWords.NoForecast(forecast), StringComparison.Ordinal);
    }

    [Fact]
    public void A_clock_that_stands_still_has_no_rate()
    {
        var outer = Of(Exact((500, 0), (500, 20), (500, 40), (500, 60))).Zones!.Value.Outer;

        Assert.Null(outer.RatePer1000KmMm);
        Assert.Null(outer.KmLeft);
        Assert.Equal(0.03, outer.RatePerLapMm!.Value.Value, 1e-11);

        // A single lap is a clock, and so is a single kilometre; none of both is none.
        Assert.Equal(WearClock.Track, WearDesign.Create(Exact((500, 0), (500, 0.25), (500, 0.5), (500, 1))).Clock);
        Assert.Equal(WearClock.Road, WearDesign.Create(Exact((500, 7), (500.5, 7), (501, 7))).Clock);
        Assert.Equal(WearClock.None, WearDesign.Create(Exact((500, 7), (500, 7), (500, 7))).Clock);
    }

    [Theory]
    [InlineData(0, 60, 0.5, "after 30 more laps")]
    [InlineData(0, 60, 0.0167, "after 1 more lap")]
    [InlineData(0, 60, 0.008, "now")]
    [InlineData(1200, 60, 0.5, "after 30 more laps with 600 km on the road")]
    [InlineData(1, 60, 10, "after 600 more laps with 10 km on the road")]
    [InlineData(1200, 0, 0.5, "after another 600 km")]
    [InlineData(1200, 0, 0.0008, "now")]
    public void When_it_is_due_is_told_by_the_clocks_that_run(double roadKm, double laps, double times, string words) =>
        Assert.Equal(words, ForecastUnits.After(UnitSystem.Metric, new TyreUse(roadKm, laps), times));

    [Fact]
    public void Clocks_in_proportion_have_no_rates_of_their_own_but_what_is_left_of_both()
    {
        var forecast = Of(Exact((0, 0), (1000, 20), (2500, 50), (3000, 60)));

        Assert.Equal(WearClock.InProportion, forecast.Clock);
        var outer = forecast.Zones!.Value.Outer;
        Assert.Null(outer.RatePer1000KmMm);
        Assert.Null(outer.RatePerLapMm);
        Assert.Equal((8 - 0.6 - 1.8 - 1.6) / 2.4, outer.MixesLeft.Value!.Value, 1e-9);
    }

    [Fact]
    public void Wear_that_is_not_shown_is_bounded_from_below_only()
    {
        var readings = new[] { 7.9, 8.1, 7.8, 8.0, 7.95 }.Select((mm, i) => new DepthReading(100 * i, 0, new(mm, mm, mm))).ToArray();

        var zone = Of(readings).Zones!.Value.Centre;

        Assert.Null(zone.KmLeft!.Value.Upper);
        Assert.True(zone.KmLeft.Value.Lower > 0);
    }

    [Fact]
    public void A_tyre_past_its_limit_has_nothing_left()
    {
        var forecast = Of(Exact((0, 0), (10_000, 60), (16_000, 120), (18_000, 140)));

        Assert.Equal(0, forecast.Ending!.Value.MixesLeft);
        Assert.Equal(0, forecast.Zones!.Value.Outer.LapsLeft!.Value.Value);
        Assert.Null(forecast.Turning);
        Assert.Equal("wornOut", ForecastCautions.Build(forecast, UnitSystem.Metric)[0].Code);
    }

    // Both shoulders gone together: (3.4 + 4.0) / (1.8 + 1.2) laps-of-mix against 3.4 / 1.8, where the centre lasts longer.
    [Fact]
    public void Turning_on_the_rim_spends_both_shoulders_together()
    {
        var readings = Enumerable.Range(0, 5).Select(i => new DepthReading(0, 15 * i, new(6.8 - (0.45 * i), 7 - (0.2 * i), 6.8 - (0.3 * i)))).ToArray();

        var turning = Of(readings).Turning!.Value;

        Assert.Equal(3.4 / 1.8, turning.Change.LifeAsItIs, 1e-9);
        Assert.Equal(7.4 / 3.0, turning.Change.LifeWhenChanged, 1e-9);
        Assert.True(turning.IsShown);
        Assert.Contains(" Turn the tyre on its rim ", ForecastWords.Summary(Of(readings), UnitSystem.Metric), StringComparison.Ordinal);
    }

    // A tyre of half the wear beside it: each goes on at the other's rates, and both are gone together at best.
    [Fact]
    public void Swapping_spends_both_tyres_together()
    {
        static DepthReading[] Tyre(double perLapMm) =>
            [.. Enumerable.Range(0, 5).Select(i => new DepthReading(0, 15 * i, new(7.6 - (15 * i * perLapMm), 7.6 - (15 * i * perLapMm), 7.6 - (15 * i * perLapMm))))];

        var swapping = TreadForecast.Compute(new() { Readings = Tyre(0.04), OtherReadings = Tyre(0.02) }).Swapping!.Value;

        Assert.Equal(3.6 / 2.4, swapping.ThisAsItIs, 1e-9);
        Assert.Equal(3.6 / 1.2, swapping.ThisAtOthersPlace, 1e-9);
        Assert.Equal(4.8 / 2.4, swapping.OtherAtThisPlace, 1e-9);
        Assert.Equal((3.6 + 4.8) / 3.6, swapping.Change.LifeWhenChanged, 1e-9);
    }

    [Fact]
    public void A_stray_reading_is_named()
    {
        var readings = Exact((0, 0), (1000, 20), (4000, 30), (5000, 45), (6000, 60), (7000, 80));
        readings[3] = readings[3] with { DepthMm = readings[3].DepthMm with { Inner = readings[3].DepthMm.Inner - 0.9 } };

        var misfits = TreadForecast.Compute(new() { Readings = readings, GaugeErrorMm = 0.1 }).Misfits;

        Assert.Contains(misfits, one => one is { Reading: 3, Place: TreadPlace.Inner, AboveLineMm: < 0 });
        Assert.DoesNotContain(misfits, one => one.Place != TreadPlace.Inner);
    }

    [Fact]
    public void Zones_alike_are_not_told_apart()
    {
        var readings = Exact((0, 0), (1000, 20), (4000, 30), (6000, 60)).Select(one => one with { DepthMm = new(one.DepthMm.Outer, one.DepthMm.Outer, one.DepthMm.Outer) });

        var ending = Of([.. readings]).Ending!.Value;

        Assert.Equal(1 / 3.0, ending.Probability, 1e-6);
        Assert.False(ending.IsToldApart);
    }

    // The probability of the ending zone against a count of how often it is right, over tyres whose truth is known.
    [Fact]
    public void The_zone_said_to_end_the_tyre_does_so_as_often_as_is_said()
    {
        var random = new Random(7);
        var (said, right) = (0.0, 0);
        const int Cases = 3000;
        for (var i = 0; i < Cases; i++)
        {
            double[] perLap = [0.02 + (0.01 * random.NextDouble()), 0.02 + (0.01 * random.NextDouble()), 0.02 + (0.01 * random.NextDouble())];
            var readings = Enumerable.Range(0, 6).Select(k => new DepthReading(0, 15 * k, new(Read(0, k), Read(1, k), Read(2, k)))).ToArray();
            var ending = Of(readings).Ending!.Value;
            said += ending.Probability;
            if (perLap[(int)ending.Place] == perLap.Max()) right++;
            double Read(int zone, int k) => 8 - (15 * k * perLap[zone]) + (0.1 * SimulatedTyre.Chance(random));
        }

        Assert.Equal(said / Cases, (double)right / Cases, 0.05);
    }

    [Fact]
    public void Ranges_hold_their_values_and_nothing_is_not_a_number() => AnyReadings.Sample(readings =>
    {
        var forecast = Of(readings);
        foreach (var place in Enum.GetValues<TreadPlace>())
        {
            var zone = forecast.Zones!.Value.At(place);
            foreach (var left in new[] { zone.KmLeft, zone.LapsLeft, zone.MixesLeft }.OfType<RatioRange>())
            {
                Assert.True(left.Value is null || double.IsFinite(left.Value.Value));
                if (!left.IsBounded) continue;
                Assert.True(left.Lower <= left.Value * (1 + 1e-9) && left.Value <= left.Upper * (1 + 1e-9), $"{left}");
            }
        }

        Assert.DoesNotContain("NaN", ForecastWords.Summary(forecast, UnitSystem.Us), StringComparison.Ordinal);
    });

    [Fact]
    public void Where_the_clocks_begin_does_not_matter() => AnyReadings.Sample(readings =>
    {
        DepthReading[] later = [.. readings.Select(one => one with { RoadKm = one.RoadKm + 40_000, TrackLaps = one.TrackLaps + 300 })];
        var (a, b) = (Of(readings).Zones!.Value.Inner.MixesLeft, Of(later).Zones!.Value.Inner.MixesLeft);
        Assert.Equal(a.Value ?? -1, b.Value ?? -1, 1e-5 * (1 + (a.Value ?? 0)));
    });

    [Fact]
    public void Turning_and_swapping_never_lose() => AnyReadings.Sample(readings =>
    {
        var forecast = TreadForecast.Compute(new() { Readings = readings, OtherReadings = readings });
        Assert.True(forecast.Turning is not { Change.Gain: < 0 });
        Assert.True(forecast.Swapping is not { Change.Gain: < 0 or > 1e-6 });
    });

    [Fact]
    public void A_thinner_tyre_lasts_no_longer() => Gen.Select(AnyReadings, Gen.Double[0, 3]).Sample((readings, offMm) =>
    {
        DepthReading[] thinner = [.. readings.Select(one => one with { DepthMm = one.DepthMm.Select(mm => mm - offMm) })];
        var (thick, thin) = (Of(readings).Zones!.Value.Centre.MixesLeft, Of(thinner).Zones!.Value.Centre.MixesLeft);
        if (thick.Value is { } more && thin.Value is { } less) Assert.True(less <= more + 1e-9);
    });

    // 49 CFR 575.104 as NHTSA's letter 10811 (1995) tells it: 100 is 30,000 miles on the course.
    [Fact]
    public void A_grade_of_a_hundred_is_thirty_thousand_miles_on_the_course()
    {
        Assert.Equal(30_000 * 1.609344, TreadwearGrade.CourseKm(100), 1e-6);
        var ratio = TreadwearGrade.LifeRatio(240, 300);
        Assert.Equal((1.25, 0.625, 2.5), (ratio.Value, ratio.Lower, ratio.Upper));
    }

    private static TreadForecast Of(DepthReading[] readings) => TreadForecast.Compute(new() { Readings = readings });

    private static DepthReading[] Exact(params (double RoadKm, double Laps)[] clocks) =>
        [.. clocks.Select(at => new DepthReading(at.RoadKm, at.Laps, new(8 - (0.0002 * at.RoadKm) - (0.03 * at.Laps), 8 - (0.00015 * at.RoadKm) - (0.015 * at.Laps), 8 - (0.0002 * at.RoadKm) - (0.02 * at.Laps))))];
}
