using MathNet.Numerics.Distributions;
using SetupService.Domain.Answers;
using SetupService.Domain.Numerics.Statistics;
using SetupService.Domain.Wear.Forecast;
using SetupService.Domain.Wear.Readings;

namespace SetupService.Domain.Tests.Wear.Forecast;

/// <summary>
/// A rough forecast against a second working: the residuals of the readings themselves, both rates on a much finer grid of their own, and the
/// error of the depth by MathNet.Numerics' normal distribution. Nothing of it is shared but the usual rates.
/// </summary>
public sealed class RoughOracleTests
{
    // The largest error allowed, as a share of the width of the 90 % range. The largest found is 0.026, at the long end of what is left where
    // clocks are hardly separated and a range spans a factor of eight; all but two are below 0.014.
    private const double Share = 0.03;

    [Theory]
    [MemberData(nameof(Tyres))]
    public void Medians_and_ranges_are_those_of_a_much_finer_sum(string name, double gaugeErrorMm, double[] readings)
    {
        DepthReading[] all = [.. readings.Chunk(3).Select(one => new DepthReading(one[0], one[1], new(one[2], one[2], one[2])))];
        var zone = TreadForecast.Compute(new() { Readings = all, GaugeErrorMm = gaugeErrorMm }).Zones.Outer!.Value;
        var oracle = new FineSum(all, gaugeErrorMm);
        Near("depth", zone.DepthNowMm, oracle.Depth());
        Near("road", zone.RatePer1000KmMm, oracle.RatePer1000Km());
        Near("track", zone.RatePerLapMm, oracle.RatePerLap());
        Near("km", Range(zone.KmLeft), oracle.Left(1, 0));
        Near("laps", Range(zone.LapsLeft), oracle.Left(0, 1));
        Near("mixes", Range(zone.MixesLeft), oracle.MixesLeft());
        Near("wear", zone.WearPerMixMm, oracle.Wear());

        void Near(string what, Uncertainty? told, double[]? fine)
        {
            if (told is not { } range) return;
            var off = new[] { range.Lower - fine![0], range.Value - fine[1], range.Upper - fine[2] }.Select(one => Math.Abs(one) / (fine[2] - fine[0])).ToArray();
            Assert.True(off.Max() <= Share, FormattableString.Invariant($"{name}, {what}: told {range}, fine {string.Join(' ', fine)}"));
        }
    }

    /// <summary>Road km, laps and depth of each reading.</summary>
    public static TheoryData<string, double, double[]> Tyres() => new()
    {
        { "two on the road", 0.25, [0, 0, 8, 12_000, 0, 6.6] },
        { "two on the road, a good gauge", 0.05, [0, 0, 8, 12_000, 0, 6.6] },
        { "two over a short way", 0.25, [0, 0, 8, 400, 0, 7.9] },
        { "two that seem to gain", 0.25, [0, 0, 7.8, 3000, 0, 8.0] },
        { "two on track", 0.15, [0, 0, 8, 0, 60, 6.6] },
        { "two on track, few laps", 0.25, [0, 0, 8, 0, 4, 7.9] },
        { "beyond the usual", 0.1, [0, 0, 8, 0, 5, 4] },
        { "hardly above the limit", 0.25, [0, 0, 2.2, 3000, 0, 1.7] },
        { "below the limit", 0.2, [0, 0, 3, 9000, 0, 1.5] },
        { "two in proportion", 0.2, [0, 0, 8, 3000, 45, 6.4] },
        { "three in proportion", 0.2, [0, 0, 8, 1000, 15, 7.5, 3000, 45, 6.4] },
        { "three on both", 0.15, [0, 0, 8, 520, 22, 7.3, 2230, 22, 7.0] },
        { "a visit, then the road", 0.15, [120, 0, 7.9, 640, 22, 7.5, 2350, 22, 7.0] },
        { "a visit alone", 0.25, [120, 0, 8, 640, 22, 7.1] },
        { "three on both, a poor gauge", 0.3, [0, 0, 8, 2000, 40, 6.9, 6000, 60, 5.4] },
        { "three on both, a good gauge", 0.05, [0, 0, 8, 2000, 40, 6.9, 6000, 60, 5.4] },
        { "hardly separated", 0.15, [0, 0, 8, 1000, 21, 7.2, 3000, 60, 5.9] },
        { "road hardly used", 0.15, [0, 0, 8, 60, 22, 7.3, 80, 60, 6.2] },
        { "track hardly used", 0.15, [0, 0, 8, 4000, 2, 7.3, 9000, 3, 6.2] },
        { "road seems to gain", 0.2, [0, 0, 8, 3000, 5, 8.1, 4000, 60, 6.0] },
        { "both near the limit", 0.2, [0, 0, 2.6, 2000, 10, 2.2, 3000, 30, 1.8] },
        { "one visit twice", 0.2, [0, 0, 8, 0, 0, 7.8, 3000, 0, 7.6, 3000, 40, 6.8] },
    };

    private static Uncertainty? Range(RatioRange? range) => range is { IsBounded: true } known ? new(known.Value!.Value, known.Lower!.Value, known.Upper!.Value, 90) : null;

    /// <summary>Rates on a fine grid of their logarithms, weighed by the readings' residuals and by how usual they are.</summary>
    private sealed class FineSum
    {
        private readonly List<(double PerKm, double PerLap, double MeanMm, double Weight)> _nodes = [];
        private readonly double _meanErrorMm;
        private readonly DepthReading _last;
        private readonly double _km;
        private readonly double _laps;

        public FineSum(DepthReading[] readings, double gaugeErrorMm)
        {
            _meanErrorMm = gaugeErrorMm / Math.Sqrt(readings.Length);
            _last = readings[^1];
            (_km, _laps) = (_last.RoadKm - readings[0].RoadKm, _last.TrackLaps - readings[0].TrackLaps);
            var isProportional = _km > 0 && _laps > 0 && readings.All(one => Math.Abs(((one.RoadKm - readings[0].RoadKm) / _km) - ((one.TrackLaps - readings[0].TrackLaps) / _laps)) < 1e-9);
            var (roadWidth, trackWidth) = (Math.Log(UsualRates.RoadFactor) / 1.6448536, Math.Log(UsualRates.TrackFactor) / 1.6448536);
            var (usualPerKm, usualPerLap) = (UsualRates.RoadPer1000KmMm / 1000, UsualRates.TrackPerLapMm);

            // Proportional clocks have one rate: how many times as fast as usual both wear.
            if (isProportional)
            {
                Find((one, _) => (one * usualPerKm, one * usualPerLap), (1, Math.Max(roadWidth, trackWidth)), null);
                return;
            }

            Find(
                (one, other) => (_km > 0 ? one : 0, _km > 0 ? other : one),
                _km > 0 ? (usualPerKm, roadWidth) : (usualPerLap, trackWidth),
                _km > 0 && _laps > 0 ? (usualPerLap, trackWidth) : null);

            void Find(Func<double, double, (double PerKm, double PerLap)> rates, (double Median, double Width) first, (double Median, double Width)? second)
            {
                var (from, to) = ((A: -9.0, B: -9.0), (A: 9.0, B: 9.0));
                for (var pass = 0; ; pass++)
                {
                    var (most, count) = (double.NegativeInfinity, second is null ? 4000 : pass < 2 ? 150 : 260);
                    var nodes = new List<(double A, double B, double PerKm, double PerLap, double MeanMm, double Log)>();
                    for (var i = 0; i <= count; i++)
                    {
                        for (var j = 0; j <= (second is null ? 0 : count); j++)
                        {
                            var (a, b) = (from.A + ((to.A - from.A) * i / count), second is null ? 0 : from.B + ((to.B - from.B) * j / count));
                            var (perKm, perLap) = rates(first.Median * Math.Exp(a * first.Width), second is { } two ? two.Median * Math.Exp(b * two.Width) : 0);
                            var newMm = readings.Average(one => one.DepthMm.Outer + (perKm * one.RoadKm) + (perLap * one.TrackLaps));
                            var squares = readings.Sum(one => Math.Pow(one.DepthMm.Outer + (perKm * one.RoadKm) + (perLap * one.TrackLaps) - newMm, 2));
                            var log = (-((a * a) + (b * b)) / 2) - (squares / (2 * gaugeErrorMm * gaugeErrorMm));
                            most = Math.Max(most, log);
                            nodes.Add((a, b, perKm, perLap, newMm, log));
                        }
                    }

                    nodes.RemoveAll(one => one.Log < most - 16);
                    if (pass == 2 || second is null && pass == 1)
                    {
                        foreach (var one in nodes) _nodes.Add((one.PerKm, one.PerLap, one.MeanMm, Math.Exp(one.Log - most)));
                        return;
                    }

                    var (stepA, stepB) = ((to.A - from.A) / count, (to.B - from.B) / count);
                    (from, to) = ((nodes.Min(one => one.A) - stepA, nodes.Min(one => one.B) - stepB), (nodes.Max(one => one.A) + stepA, nodes.Max(one => one.B) + stepB));
                }
            }
        }

        public double[] RatePer1000Km() => Sorted(one => 1000 * one.PerKm);

        public double[] RatePerLap() => Sorted(one => one.PerLap);

        public double[] Wear() => Sorted(one => (one.PerKm * _km) + (one.PerLap * _laps));

        public double[] Depth() => Searched(-5, 15, (node, mm) => mm - DepthMm(node));

        public double[] MixesLeft() => Left(_km, _laps);

        public double[] Left(double km, double laps) =>
            [.. Searched(0, 1e7, (node, left) => (left * ((km * node.PerKm) + (laps * node.PerLap))) + TreadDepths.LegalLeastMm - DepthMm(node))];

        // The depth when new, as the rates have it by the mean of the readings, less the wear until the last.
        private double DepthMm((double PerKm, double PerLap, double MeanMm, double Weight) node) => node.MeanMm - (node.PerKm * _last.RoadKm) - (node.PerLap * _last.TrackLaps);

        // Where the sum over the nodes of the probability that the error of the mean is at most what remains reaches each share.
        private double[] Searched(double low, double high, Func<(double PerKm, double PerLap, double MeanMm, double Weight), double, double> remainsMm)
        {
            var all = _nodes.Sum(one => one.Weight);
            return [.. new[] { 0.05, 0.5, 0.95 }.Select(share =>
            {
                var (from, to) = (low, high);
                if (Below(from) >= share) return from;
                for (var i = 0; i < 60 && to - from > 1e-6 * Math.Abs(to); i++)
                {
                    var middle = from >= 0 && to > 2 * Math.Max(from, 1e-9) ? Math.Sqrt(Math.Max(from, 1e-9) * to) : (from + to) / 2;
                    if (Below(middle) < share) from = middle;
                    else to = middle;
                }

                return (from + to) / 2;
            })];

            double Below(double value) => _nodes.Sum(one => one.Weight * Normal.CDF(0, _meanErrorMm, remainsMm(one, value))) / all;
        }

        private double[] Sorted(Func<(double PerKm, double PerLap, double MeanMm, double Weight), double> figure)
        {
            var sorted = _nodes.Select(one => (Value: figure(one), one.Weight)).OrderBy(one => one.Value).ToArray();
            var all = sorted.Sum(one => one.Weight);
            return [.. new[] { 0.05, 0.5, 0.95 }.Select(share =>
            {
                var (below, before, beforeShare) = (0.0, sorted[0].Value, 0.0);
                foreach (var (value, weight) in sorted)
                {
                    var here = (below + (weight / 2)) / all;
                    if (here >= share) return before + ((value - before) * (share - beforeShare) / (here - beforeShare));
                    (before, beforeShare, below) = (value, here, below + weight);
                }

                return before;
            })];
        }
    }
}
