using SetupService.Domain.Numerics.Statistics;
using SetupService.Domain.Wear.Forecast;

namespace SetupService.Domain.Tests.Wear.Forecast;

/// <summary>Nine of ten ranges hold the true value, simulated with a fixed seed: gauges of any error, stated up to 30 % wrong, few and many readings, any mix.</summary>
public sealed class CoverageTests
{
    private const int Cases = 4000;
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
            var zone = TreadForecast.Compute(new() { Readings = truth.Readings, GaugeErrorMm = stated, LimitDepthMm = LimitMm }).Zones!.Value.Outer;
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
            Assert.InRange(asked[i], 0.99 * Cases, Cases);
            Assert.InRange(100.0 * held[i] / asked[i], 88, 92);
        }

        void Count(int which, bool holds)
        {
            asked[which]++;
            if (holds) held[which]++;
        }
    }

    private static bool Holds(RatioRange range, double truth) => !(truth < (range.Lower ?? double.PositiveInfinity)) && !(truth > (range.Upper ?? double.PositiveInfinity));
}
