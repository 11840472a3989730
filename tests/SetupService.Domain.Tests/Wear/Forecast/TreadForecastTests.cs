using CsCheck;
using SetupService.Domain.Answers;
using SetupService.Domain.Numerics.Statistics;
using SetupService.Domain.Vehicles;
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

        var outer = forecast.Zones.Outer!.Value;
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

    // Two or three readings have no scatter of their own: gauge error and prior stand in, and the answer calls itself rough.
    [Fact]
    public void Two_or_three_distances_give_a_rough_forecast_and_one_none()
    {
        var rough = Of(Exact((0, 0), (1000, 20), (1000, 20), (4000, 30)));
        Assert.Equal(ForecastStatus.Rough, rough.Status(TreadPlace.Outer));
        Assert.Equal(3, rough.DistinctReadings);
        Assert.Equal(1.7, rough.WornMm.Outer, 1e-9);
        Assert.Contains("Roughly, from 3 readings", ForecastWords.Headline(rough, UnitSystem.Metric), StringComparison.Ordinal);

        var one = TreadForecast.Compute(new() { Readings = Exact((4000, 30)), NewDepthMm = 8 });
        Assert.Equal(ForecastStatus.Unknown, one.OfTyre);
        Assert.Equal(8 - 6.3, one.WornMm.Outer, 1e-9);
        Assert.Contains("One reading tells no wear rate", ForecastWords.NoForecast(one, TreadPlace.Outer), StringComparison.Ordinal);
        Assert.Equal(ForecastStatus.Unknown, Of(Exact((0, 0), (0, 0))).OfTyre);
    }

    // With a good gauge and much wear the readings speak; with a poor one over a short way the usual rate does.
    [Fact]
    public void A_rough_forecast_goes_from_the_usual_rate_to_what_was_read()
    {
        static ZoneForecast Rough(double perLapMm, double laps, double gaugeMm) =>
            TreadForecast.Compute(new() { Readings = new DepthReading[] { new(0, 0, new(8, 8, 8)), new(0, laps, new(8 - (laps * perLapMm), 8, 8)) }, GaugeErrorMm = gaugeMm }).Zones.Outer!.Value;

        Assert.Equal(0.05, Rough(0.05, 60, 0.05).RatePerLapMm!.Value.Value, 0.002);
        Assert.Equal(UsualRates.TrackPerLapMm, Rough(0.05, 0.5, 0.5).RatePerLapMm!.Value.Value, 0.003);
        var wide = Rough(0.02, 5, 0.25).RatePerLapMm!.Value;
        Assert.True(wide.Upper / wide.Lower > 5);
    }

    // Far beyond anything usual: the readings are believed.
    [Fact]
    public void A_rough_forecast_believes_readings_beyond_the_usual() => Assert.InRange(
        TreadForecast.Compute(new() { Readings = new DepthReading[] { new(0, 0, new(8, 8, 8)), new(0, 5, new(4, 8, 8)) }, GaugeErrorMm = 0.1 }).Zones.Outer!.Value.RatePerLapMm!.Value.Value, 0.7, 0.85);

    [Fact]
    public void A_clock_that_stands_still_has_no_rate()
    {
        var outer = Of(Exact((500, 0), (500, 20), (500, 40), (500, 60))).Zones.Outer!.Value;

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
        var outer = forecast.Zones.Outer!.Value;
        Assert.Null(outer.RatePer1000KmMm);
        Assert.Null(outer.RatePerLapMm);
        Assert.Equal((8 - 0.6 - 1.8 - 1.6) / 2.4, outer.MixesLeft.Value!.Value, 1e-9);
    }

    [Fact]
    public void Wear_that_is_not_shown_is_bounded_from_below_only()
    {
        var readings = new[] { 7.9, 8.1, 7.8, 8.0, 7.95 }.Select((mm, i) => new DepthReading(100 * i, 0, new(mm, mm, mm))).ToArray();

        var zone = Of(readings).Zones.Centre!.Value;

        Assert.Null(zone.KmLeft!.Value.Upper);
        Assert.True(zone.KmLeft.Value.Lower > 0);
    }

    [Fact]
    public void A_tyre_past_its_limit_has_nothing_left()
    {
        var forecast = Of(Exact((0, 0), (10_000, 60), (16_000, 120), (18_000, 140)));

        Assert.Equal(0, forecast.Ending!.Value.MixesLeft);
        Assert.Equal(0, forecast.Zones.Outer!.Value.LapsLeft!.Value.Value);
        Assert.Null(forecast.Turning);
        Assert.Equal("wornOut", ForecastCautions.Build(new CarForecast([new(WheelPosition.FrontLeft, forecast)], []), UnitSystem.Metric)[0].Code);
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
        Assert.Contains(" Turn the tyre on its rim ", ForecastWords.Summary(new CarForecast([new(WheelPosition.FrontLeft, Of(readings))], []), UnitSystem.Metric), StringComparison.Ordinal);
    }

    // A tyre of half the wear beside it: each goes on at the other's rates, and both are gone together at best.
    [Fact]
    public void Swapping_spends_both_tyres_together()
    {
        static DepthReading[] Tyre(double perLapMm) =>
            [.. Enumerable.Range(0, 5).Select(i => new DepthReading(0, 15 * i, new(7.6 - (15 * i * perLapMm), 7.6 - (15 * i * perLapMm), 7.6 - (15 * i * perLapMm))))];

        var swapping = CarForecast.Compute([(WheelPosition.FrontLeft, new() { Readings = Tyre(0.04) }), (WheelPosition.RearLeft, new() { Readings = Tyre(0.02) })]).Swaps[0].Swapping;

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
            var zone = forecast.Zones.At(place)!.Value;
            foreach (var left in new[] { zone.KmLeft, zone.LapsLeft, zone.MixesLeft }.OfType<RatioRange>())
            {
                Assert.True(left.Value is null || double.IsFinite(left.Value.Value));
                if (!left.IsBounded) continue;
                Assert.True(left.Lower <= left.Value * (1 + 1e-9) && left.Value <= left.Upper * (1 + 1e-9), $"{left}");
            }
        }

        Assert.DoesNotContain("NaN", ForecastWords.Summary(new CarForecast([new(WheelPosition.FrontLeft, forecast)], []), UnitSystem.Us), StringComparison.Ordinal);
    });

    // No use makes a tread grow: whatever is read, no rate and no end of its range is below zero, or the zone is unknown.
    [Fact]
    public void No_rate_is_below_zero() => Gen.Select(Gen.Int[0, int.MaxValue], Gen.Int[2, 12], Gen.Int[0, 3], Gen.Double[0.05, 0.6]).Sample((seed, count, driven, gaugeMm) =>
    {
        var random = new Random(seed);
        DepthReading[] readings = [.. new SimulatedTyre(random, count, (Driven)driven).Readings.Select(one => one with { DepthMm = new(7 + Off(), 6 + Off(), 5 + Off()) })];
        var forecast = TreadForecast.Compute(new() { Readings = readings, GaugeErrorMm = gaugeMm });
        foreach (var place in Enum.GetValues<TreadPlace>())
        {
            if (forecast.Zones.At(place) is not { } zone) continue;
            foreach (var rate in new[] { zone.RatePer1000KmMm, zone.RatePerLapMm, zone.WearPerMixMm }.OfType<Uncertainty>())
            {
                Assert.True(rate.Lower >= 0 && rate.Value >= rate.Lower && rate.Upper >= rate.Value, $"{rate}");
                Assert.True(double.IsFinite(rate.Upper));
            }

            foreach (var left in new[] { zone.KmLeft, zone.LapsLeft, zone.MixesLeft }.OfType<RatioRange>())
                Assert.True(left is { Lower: null or >= 0, Value: null or >= 0 } && !(left.Value > left.Upper * (1 + 1e-9)) && !(left.Value < left.Lower * (1 - 1e-9)), $"{left}");
        }

        double Off() => gaugeMm * SimulatedTyre.Chance(random);
    });

    // Read with a road rate that least squares alone puts below zero: the other clock carries the wear, and neither is negative.
    [Fact]
    public void A_clock_that_seems_to_add_tread_is_held_at_none()
    {
        DepthReading[] readings = [new(0, 0, new(8, 8, 8)), new(500, 20, new(7.3, 7.3, 7.3)), new(3000, 25, new(7.2, 7.2, 7.2)), new(3400, 50, new(6.5, 6.5, 6.5)), new(5000, 60, new(6.25, 6.25, 6.25))];
        var fit = WearFit.Fit(readings, 0.2)!;
        Assert.True(fit.Zones.Outer.FreeLostOfMixMm.Road < 0);
        var zone = TreadForecast.Compute(new() { Readings = readings, GaugeErrorMm = 0.2 }).Zones.Outer!.Value;
        Assert.True(zone.RatePer1000KmMm!.Value is { Lower: 0, Value: < 0.02, Upper: > 0 }, $"{zone.RatePer1000KmMm}");
        Assert.InRange(zone.RatePerLapMm!.Value.Value, 0.025, 0.035);
    }

    [Fact]
    public void A_tread_that_grows_by_more_than_the_gauge_errs_is_unknown_and_says_so()
    {
        DepthReading[] readings = [.. Enumerable.Range(0, 6).Select(i => new DepthReading(1000 * i, 0, new(5 + (0.3 * i), 7 - (0.2 * i), 7 - (0.2 * i))))];
        var forecast = TreadForecast.Compute(new() { Readings = readings, GaugeErrorMm = 0.1 });
        Assert.Equal(ForecastStatus.Unknown, forecast.Status(TreadPlace.Outer));
        Assert.Equal(ForecastStatus.Estimated, forecast.Status(TreadPlace.Centre));
        Assert.Contains("grows by more than the gauge errs", ForecastWords.NoForecast(forecast, TreadPlace.Outer), StringComparison.Ordinal);
        Assert.Equal(ForecastStatus.Unknown, TreadForecast.Compute(new() { Readings = readings.AsMemory(0, 3), GaugeErrorMm = 0.02 }).Status(TreadPlace.Outer));
    }

    [Fact]
    public void Where_the_clocks_begin_does_not_matter() => AnyReadings.Sample(readings =>
    {
        DepthReading[] later = [.. readings.Select(one => one with { RoadKm = one.RoadKm + 40_000, TrackLaps = one.TrackLaps + 300 })];
        var (a, b) = (Of(readings).Zones.Inner!.Value.MixesLeft, Of(later).Zones.Inner!.Value.MixesLeft);
        Assert.Equal(a.Value ?? -1, b.Value ?? -1, 1e-5 * (1 + (a.Value ?? 0)));
    });

    [Fact]
    public void Turning_and_swapping_never_lose() => AnyReadings.Sample(readings =>
    {
        var car = CarForecast.Compute([(WheelPosition.FrontLeft, new() { Readings = readings }), (WheelPosition.FrontRight, new() { Readings = readings })]);
        Assert.True(car.Tyres[0].Tread.Turning is not { Change.Gain: < 0 });
        Assert.True(car.Swaps is [] or [{ Swapping.Change.Gain: >= 0 and < 1e-6 }]);
    });

    [Fact]
    public void A_thinner_tyre_lasts_no_longer() => Gen.Select(AnyReadings, Gen.Double[0, 3]).Sample((readings, offMm) =>
    {
        DepthReading[] thinner = [.. readings.Select(one => one with { DepthMm = one.DepthMm.Select(mm => mm - offMm) })];
        var (thick, thin) = (Of(readings).Zones.Centre!.Value.MixesLeft, Of(thinner).Zones.Centre!.Value.MixesLeft);
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
