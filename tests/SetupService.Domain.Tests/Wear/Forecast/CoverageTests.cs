using SetupService.Domain.Numerics.Statistics;
using SetupService.Domain.Wear.Forecast;
using SetupService.Domain.Wear.Readings;

namespace SetupService.Domain.Tests.Wear.Forecast;

/// <summary>
/// Nine of ten ranges hold the true value, simulated with a fixed seed: gauges of any error, stated up to 30 % wrong, few and many readings,
/// any mix; straight wear, wear that slows by a quarter, and two or three readings of tyres as usual.
/// </summary>
public sealed class CoverageTests
{
    private const int Cases = 2500;
    private const double LimitMm = 1.6;

    [Theory]
    [InlineData(4, Driven.Road)]
    [InlineData(4, Driven.Track)]
    [InlineData(4, Driven.Both)]
    [InlineData(6, Driven.Both)]
    [InlineData(7, Driven.Road)]
    [InlineData(7, Driven.InProportion)]
    [InlineData(12, Driven.Both)]
    [InlineData(25, Driven.Track)]
    public void Ranges_of_rates_and_of_what_is_left_keep_their_level(int count, Driven driven)
    {
        var random = new Random(20260 + count + (10 * (int)driven));
        int[] held = [0, 0, 0, 0, 0];
        int[] asked = [0, 0, 0, 0, 0];
        for (var i = 0; i < Cases; i++)
        {
            var truth = new SimulatedTyre(random, count, driven);
            var stated = truth.GaugeErrorMm * (0.7 + (0.6 * random.NextDouble()));
            if (TreadForecast.Compute(new() { Readings = truth.Readings, GaugeErrorMm = stated, LimitDepthMm = LimitMm }).Zones.Outer is not { } zone) continue;
            var end = truth.Readings[^1];
            var overMm = Math.Max(0, truth.DepthMm(end.RoadKm, end.TrackLaps) - LimitMm);
            if (zone.RatePer1000KmMm is { } road) Count(0, truth.PerKmMm * 1000 >= road.Lower && truth.PerKmMm * 1000 <= road.Upper);
            if (zone.RatePerLapMm is { } track) Count(1, truth.PerLapMm >= track.Lower && truth.PerLapMm <= track.Upper);
            if (zone.KmLeft is { } km) Count(2, Holds(km, overMm / truth.PerKmMm));
            if (zone.LapsLeft is { } laps) Count(3, Holds(laps, overMm / truth.PerLapMm));
            var (roadKm, lapsDriven) = (end.RoadKm - truth.Readings[0].RoadKm, end.TrackLaps - truth.Readings[0].TrackLaps);
            Count(4, Holds(zone.MixesLeft, overMm / ((roadKm * truth.PerKmMm) + (lapsDriven * truth.PerLapMm))));
        }

        for (var i = 0; i < held.Length; i++)
        {
            if (asked[i] == 0) continue;
            Assert.InRange(asked[i], 0.98 * Cases, Cases);

            // Somewhat more than nine in ten: the ranges leave room for a bend that straight wear has not.
            var level = 100.0 * held[i] / asked[i];
            Assert.True(level is >= 88 and <= 97, $"{i}: {level}");
        }

        void Count(int which, bool holds)
        {
            asked[which]++;
            if (holds) held[which]++;
        }
    }

    // Wear that slows by a quarter, abruptly somewhere between 0.4 and 0.6 of the way, or steadily: what is asked is the rate of the later half.
    [Theory]
    [InlineData(5, Driven.Road, true)]
    [InlineData(8, Driven.Road, true)]
    [InlineData(8, Driven.Track, false)]
    [InlineData(8, Driven.InProportion, true)]
    [InlineData(14, Driven.Road, false)]
    [InlineData(14, Driven.Track, true)]
    [InlineData(25, Driven.Road, true)]
    public void Ranges_hold_where_wear_slows_by_a_quarter(int count, Driven driven, bool isAbrupt)
    {
        var random = new Random(4711 + count + (10 * (int)driven));
        int[] held = [0, 0];
        for (var i = 0; i < Cases; i++)
        {
            var truth = new SimulatedTyre(random, count, driven);
            var (from, to) = (truth.Readings[0], truth.Readings[^1]);
            var bend = isAbrupt ? 0.4 + (0.2 * random.NextDouble()) : 0.5;
            var usedMm = truth.DepthMm(from.RoadKm, from.TrackLaps) - truth.DepthMm(to.RoadKm, to.TrackLaps);

            // Wear over the way w from 0 to 1: abrupt, w then 0.75 w; steady, the rate falls from 1 to 0.75 over the whole way and the later half has 0.8125.
            var readings = truth.Readings.Select(one =>
            {
                var way = driven == Driven.Track ? (one.TrackLaps - from.TrackLaps) / (to.TrackLaps - from.TrackLaps) : (one.RoadKm - from.RoadKm) / (to.RoadKm - from.RoadKm);
                var less = usedMm * (isAbrupt ? 0.25 * Math.Max(0, way - bend) : 0.125 * way * way);
                return one with { DepthMm = one.DepthMm.Select(mm => mm + less) };
            }).ToArray();
            var late = isAbrupt ? 0.75 : 0.8125;
            var endMm = truth.DepthMm(to.RoadKm, to.TrackLaps) + (usedMm * (isAbrupt ? 0.25 * (1 - bend) : 0.125));
            var zone = TreadForecast.Compute(new() { Readings = readings, GaugeErrorMm = truth.GaugeErrorMm * (0.7 + (0.6 * random.NextDouble())), LimitDepthMm = LimitMm }).Zones.Outer!.Value;
            if (late * usedMm >= zone.WearPerMixMm.Lower && late * usedMm <= zone.WearPerMixMm.Upper) held[0]++;
            if (Holds(zone.MixesLeft, Math.Max(0, endMm - LimitMm) / (late * usedMm))) held[1]++;
        }

        Assert.InRange(100.0 * held[0] / Cases, 86, 94);
        Assert.InRange(100.0 * held[1] / Cases, 86, 94);
    }

    // Tyres whose rates are drawn as usual ones are, read two or three times with a gauge of known error.
    [Theory]
    [InlineData(2, Driven.Road)]
    [InlineData(2, Driven.Track)]
    [InlineData(3, Driven.Road)]
    [InlineData(3, Driven.Both)]
    public void Rough_ranges_keep_their_level(int count, Driven driven)
    {
        var random = new Random(99 + count + (10 * (int)driven));
        int[] held = [0, 0, 0];
        int[] asked = [0, 0, 0];
        for (var i = 0; i < Cases; i++)
        {
            var perKmMm = UsualRates.RoadPer1000KmMm / 1000 * Math.Exp(Math.Log(UsualRates.RoadFactor) / 1.6449 * SimulatedTyre.Chance(random));
            var perLapMm = UsualRates.TrackPerLapMm * Math.Exp(Math.Log(UsualRates.TrackFactor) / 1.6449 * SimulatedTyre.Chance(random));
            var gaugeMm = 0.05 + (0.25 * random.NextDouble());
            var (km, laps) = (0.0, 0.0);
            var readings = new DepthReading[count];
            for (var k = 0; k < count; k++)
            {
                if (k > 0 && driven != Driven.Track) km += 2000 + (6000 * random.NextDouble());
                if (k > 0 && driven != Driven.Road) laps += 10 + (50 * random.NextDouble());
                readings[k] = new(km, laps, new(Read(), Read(), Read()));
            }

            if (TreadForecast.Compute(new() { Readings = readings, GaugeErrorMm = gaugeMm }).Zones.Outer is not { } zone) continue;
            var overMm = Math.Max(0, 20 - (perKmMm * km) - (perLapMm * laps) - TreadDepths.LegalLeastMm);
            if (zone.RatePer1000KmMm is { } road) Count(0, perKmMm * 1000 >= road.Lower && perKmMm * 1000 <= road.Upper);
            if (zone.RatePerLapMm is { } track) Count(1, perLapMm >= track.Lower && perLapMm <= track.Upper);
            Count(2, Holds(zone.MixesLeft, overMm / ((perKmMm * km) + (perLapMm * laps))));
            double Read() => 20 - (perKmMm * km) - (perLapMm * laps) + (gaugeMm * SimulatedTyre.Chance(random));
        }

        for (var i = 0; i < held.Length; i++)
        {
            if (asked[i] == 0) continue;
            Assert.InRange(asked[i], 0.95 * Cases, Cases);
            Assert.InRange(100.0 * held[i] / asked[i], 87, 94);
        }

        void Count(int which, bool holds)
        {
            asked[which]++;
            if (holds) held[which]++;
        }
    }

    private static bool Holds(RatioRange range, double truth) => !(truth < (range.Lower ?? double.PositiveInfinity)) && !(truth > (range.Upper ?? double.PositiveInfinity));
}
