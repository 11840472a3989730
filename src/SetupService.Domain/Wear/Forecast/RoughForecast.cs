using SetupService.Domain.Answers;
using SetupService.Domain.Numerics.Statistics;
using SetupService.Domain.Wear.Readings;
using SetupService.Domain.Wear.StraightWear;

namespace SetupService.Domain.Wear.Forecast;

/// <summary>
/// What wear rates are before a tyre is read, as log-normal distributions. Road: the mean abrasion of some 300 published measurements comes to
/// 0.106 mm per 1000 km, a government report on tyre pressure has 0.088. Their widths, and all of the track, are judgement without a source.
/// </summary>
public static class UsualRates
{
    /// <summary>Median on the road, mm per 1000 km.</summary>
    public const double RoadPer1000KmMm = 0.1;

    /// <summary>Nine zones in ten wear between a third and three times that.</summary>
    public const double RoadFactor = 3;

    /// <summary>Median on track, mm per lap.</summary>
    public const double TrackPerLapMm = 0.015;

    /// <summary>Nine zones in ten wear between a fifth and five times that.</summary>
    public const double TrackFactor = 5;
}

/// <summary>
/// A forecast from two or three readings, which leave no scatter to judge them by: the gauge's error gives the likelihood of the rates,
/// <see cref="UsualRates"/> their prior, and their product is summed over a grid.
/// </summary>
internal static class RoughForecast
{
    private const int OneClockNodes = 41;
    private const int TwoClockNodes = 19;

    // Standard deviations that the grid reaches over to each side.
    private const double Reach = 4.5;

    // Three nodes that stand for a normal distribution: its mean, and √3 standard deviations to either side (Gauss and Hermite).
    private const double OuterWeight = 1.0 / 6;

    /// <summary>The three zones; null where no clock moves. A zone is null where by its readings tread grows by more than the gauge errs.</summary>
    public static AcrossTread<ZoneForecast?>? Compute(ReadOnlySpan<DepthReading> readings, double gaugeErrorMm, double limitMm)
    {
        var design = WearDesign.Create(readings);
        if (design.Clock == WearClock.None) return null;
        var fits = new AcrossTread<ZoneWear>(design.Fit(readings, TreadPlace.Outer), design.Fit(readings, TreadPlace.Centre), design.Fit(readings, TreadPlace.Inner));
        return new(Zone(design, fits.Outer, gaugeErrorMm, limitMm), Zone(design, fits.Centre, gaugeErrorMm, limitMm), Zone(design, fits.Inner, gaugeErrorMm, limitMm));
    }

    private static ZoneForecast? Zone(WearDesign design, in ZoneWear fit, double gaugeErrorMm, double limitMm)
    {
        var isBoth = design.Clock == WearClock.Both;
        var (road, track) = (Prior.Road(design.Mix), Prior.Track(design.Mix));
        var first = design.Clock switch { WearClock.Track => track, WearClock.InProportion => Prior.Together(road, track), _ => road };
        var freeFirst = design.Clock == WearClock.Track ? fit.FreeLostOfMixMm.Track : fit.FreeLostOfMixMm.Road;
        var one = Grid(first, freeFirst, gaugeErrorMm * Math.Sqrt(Variance(design, isFirst: true)), isBoth ? TwoClockNodes : OneClockNodes);
        var two = isBoth ? Grid(track, fit.FreeLostOfMixMm.Track, gaugeErrorMm * Math.Sqrt(Variance(design, isFirst: false)), TwoClockNodes) : [new Node(0, 0)];
        if (one.Length == 0 || two.Length == 0) return null;
        var sums = new Sums(design, fit, gaugeErrorMm, limitMm, one, two);
        return sums.ToForecast();
    }

    private static double Variance(WearDesign design, bool isFirst) =>
        design.Variance(isFirst && design.Clock != WearClock.Track ? new MixShare(1, 0) : new MixShare(0, 1));

    /// <summary>Wear of the mix by one clock, mm, with the logarithm of the prior's weight, spaced evenly in the logarithm over where prior and readings both leave it possible.</summary>
    private static Node[] Grid(in Prior prior, double freeMm, double errorMm, int count)
    {
        var (most, least) = (freeMm + (Reach * errorMm), freeMm - (Reach * errorMm));
        if (most <= 0) return [];
        var from = Math.Max(prior.MedianMm * Math.Exp(-Reach * prior.LogDeviation), least);
        var to = Math.Min(prior.MedianMm * Math.Exp(Reach * prior.LogDeviation), most);

        // Readings beyond all that is usual are believed, as far as they reach.
        if (to <= from) (from, to) = (Math.Max(least, most / 100), most);
        var nodes = new Node[count];
        var step = Math.Log(to / from) / (count - 1);
        for (var i = 0; i < count; i++)
        {
            var mm = from * Math.Exp(i * step);
            var away = Math.Log(mm / prior.MedianMm) / prior.LogDeviation;
            nodes[i] = new(mm, -away * away / 2);
        }

        return nodes;
    }

    /// <summary>A value of the grid and the logarithm of its weight.</summary>
    private readonly record struct Node(double Mm, double LogWeight);

    /// <summary>What the mix usually wears by one clock.</summary>
    private readonly record struct Prior(double MedianMm, double LogDeviation)
    {
        public static Prior Road(TyreUse mix) => new(UsualRates.RoadPer1000KmMm * mix.RoadKm / 1000, Deviation(UsualRates.RoadFactor));

        public static Prior Track(TyreUse mix) => new(UsualRates.TrackPerLapMm * mix.TrackLaps, Deviation(UsualRates.TrackFactor));

        /// <summary>Both together, as wide as the wider.</summary>
        public static Prior Together(in Prior one, in Prior other) => new(one.MedianMm + other.MedianMm, Math.Max(one.LogDeviation, other.LogDeviation));

        private static double Deviation(double factor) => Math.Log(factor) / Uncertainty.StandardErrorsAtNinetyPct;
    }

    /// <summary>The posterior summed up.</summary>
    private sealed class Sums
    {
        private readonly WearDesign _design;
        private readonly Node[] _one;
        private readonly Node[] _two;
        private readonly double[] _ofOne;
        private readonly double[] _ofTwo;
        private readonly double[] _weights;
        private readonly double _meanMm;
        private readonly double _meanErrorMm;
        private readonly double _limitMm;

        public Sums(WearDesign design, in ZoneWear fit, double gaugeErrorMm, double limitMm, Node[] one, Node[] two)
        {
            (_design, _one, _two, _meanMm, _limitMm) = (design, one, two, fit.MeanDepthMm, limitMm);
            _meanErrorMm = gaugeErrorMm / Math.Sqrt(design.Count);
            (_ofOne, _ofTwo, _weights) = (new double[one.Length], new double[two.Length], new double[one.Length * two.Length]);
            var most = double.NegativeInfinity;
            for (var k = 0; k < _weights.Length; k++)
            {
                var (i, j) = (k / two.Length, k % two.Length);
                var lost = Lost(i, j);
                var off = new MixShare(lost.Road - fit.FreeLostOfMixMm.Road, lost.Track - fit.FreeLostOfMixMm.Track);
                _weights[k] = one[i].LogWeight + two[j].LogWeight - (design.Squares(off) / (2 * gaugeErrorMm * gaugeErrorMm));
                most = Math.Max(most, _weights[k]);
            }

            for (var k = 0; k < _weights.Length; k++)
            {
                _weights[k] = Math.Exp(_weights[k] - most);
                _ofOne[k / two.Length] += _weights[k];
                _ofTwo[k % two.Length] += _weights[k];
            }
        }

        private bool IsTrack => _design.Clock == WearClock.Track;

        public ZoneForecast ToForecast()
        {
            var mix = _design.Mix;
            var first = Quantiles([.. _one.Select(node => node.Mm)], _ofOne);
            var second = Quantiles([.. _two.Select(node => node.Mm)], _ofTwo);
            var isBoth = _design.Clock == WearClock.Both;
            var isRoad = isBoth || _design.Clock == WearClock.Road;
            var ofTrack = isBoth ? second : first;
            return new ZoneForecast(
                Quantiles(static (end, lost) => end),
                isRoad ? Scaled(first, 1000 / mix.RoadKm) : null,
                isBoth || IsTrack ? Scaled(ofTrack, 1 / mix.TrackLaps) : null,
                isRoad ? Left(static lost => lost.Road, mix.RoadKm) : null,
                isBoth || IsTrack ? Left(static lost => lost.Track, mix.TrackLaps) : null,
                Left(static lost => lost.Road + lost.Track, 1))
            { WearPerMixMm = Quantiles(static (end, lost) => lost.Road + lost.Track) };
        }

        private MixShare Lost(int i, int j) => IsTrack ? new(0, _one[i].Mm) : new(_one[i].Mm, _two[j].Mm);

        private RatioRange Left(Func<MixShare, double> lost, double factor)
        {
            var left = Quantiles((endMm, share) => factor * Math.Max(0, endMm - _limitMm) / lost(share));
            return new(left.Value, left.Lower, left.Upper);
        }

        private static Uncertainty Scaled(in Uncertainty range, double factor) => new(range.Value * factor, range.Lower * factor, range.Upper * factor, range.LevelPct);

        /// <summary>Median and 90 % range of a figure of the depth at the last reading and the wear of the mix.</summary>
        private Uncertainty Quantiles(Func<double, MixShare, double> figure)
        {
            var count = _weights.Length * 3;
            var (values, weights) = (new double[count], new double[count]);
            var at = 0;
            for (var i = 0; i < _one.Length; i++)
            {
                for (var j = 0; j < _two.Length; j++)
                {
                    var (lost, weight) = (Lost(i, j), _weights[(i * _two.Length) + j]);
                    var endMm = _meanMm - lost.Dot(_design.End);
                    for (var node = -1; node <= 1; node++)
                    {
                        values[at] = figure(endMm + (node * Math.Sqrt(3) * _meanErrorMm), lost);
                        weights[at++] = weight * (node == 0 ? 1 - (2 * OuterWeight) : OuterWeight);
                    }
                }
            }

            return Quantiles(values, weights);
        }

        private static Uncertainty Quantiles(double[] values, double[] weights)
        {
            Array.Sort(values, weights);
            var total = 0.0;
            foreach (var weight in weights) total += weight;
            return new(At(0.5), At(0.05), At(0.95), Uncertainty.NinetyPct);

            // Each value stands for the middle of its weight; between them the line.
            double At(double share)
            {
                var (below, lastValue, lastShare) = (0.0, values[0], 0.0);
                for (var i = 0; i < values.Length; i++)
                {
                    var here = (below + (weights[i] / 2)) / total;
                    if (here >= share) return i == 0 || here <= lastShare ? values[i] : lastValue + ((values[i] - lastValue) * (share - lastShare) / (here - lastShare));
                    (lastValue, lastShare) = (values[i], here);
                    below += weights[i];
                }

                return values[^1];
            }
        }
    }
}
