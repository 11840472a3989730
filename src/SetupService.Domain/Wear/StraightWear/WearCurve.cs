using SetupService.Domain.Numerics.Statistics;
using SetupService.Domain.Wear.Readings;

namespace SetupService.Domain.Wear.StraightWear;

/// <summary>
/// How wear bends along the use: a quadratic beside the straight fit, orthogonal to it. What counts for the life to come is the rate of the
/// later half, which the quadratic gives at three quarters of the way. Where the readings show the bend, it is what they say. Where they do
/// not, it may still be there: its size is then weighed between the readings and <see cref="UsualChange"/>, so that ranges hold for a tyre
/// that slows or quickens without being seen to.
/// </summary>
public sealed record WearCurve
{
    /// <summary>
    /// How far the rate of the later half may be from the mean rate where nothing is known, one standard deviation as a share: about
    /// what wear that slows by a quarter half way makes. Judgement, no source; repeats weeks apart moved rates by up to 30 % (Tire Sci. Technol. 13(1), abstract).
    /// </summary>
    public const double UsualChange = 0.14;

    /// <summary>
    /// How far the rate of the later half may be from the quadratic's where the bend is shown, one standard deviation as a share: a bend need not
    /// be a quadratic, and one that comes between 0.4 and 0.6 of the way is off by up to this. Derived.
    /// </summary>
    public const double FormError = 0.05;

    // Chance at which straight wear is taken for bent, both sides together.
    private const double FalseAlarm = 0.01;

    // Fewest degrees of freedom left that tell a bend from scatter.
    private const int FewestFree = 3;

    // Share of the way at which the quadratic has the mean rate of the later half.
    private const double LateShare = 0.75;

    private readonly WearClock _clock;
    private readonly double _level;
    private readonly MixShare _slope;
    private readonly double _late;

    private WearCurve(WearDesign design, ReadOnlySpan<DepthReading> readings)
    {
        _clock = design.Clock;
        var (from, to, mean) = (double.MaxValue, double.MinValue, 0.0);
        foreach (var one in readings)
        {
            var way = Way(design.Place(one));
            (from, to, mean) = (Math.Min(from, way), Math.Max(to, way), mean + (way * way / readings.Length));
        }

        var (road, track) = (0.0, 0.0);
        foreach (var one in readings)
        {
            var at = design.Place(one);
            var beyond = (Way(at) * Way(at)) - mean;
            road += at.Road * beyond;
            track += at.Track * beyond;
        }

        _level = mean;
        _slope = design.Solve(road, track);
        _late = from + (LateShare * (to - from));
        foreach (var one in readings)
        {
            var column = Column(design.Place(one));
            Squares += column * column;
        }

        EndColumn = Column((design.End.Road, design.End.Track));
    }

    /// <summary>True when the readings show that wear bends; false where it only may.</summary>
    public bool IsShown { get; private init; }

    /// <summary>The bend of each zone, mm at one mix from the middle; positive = wear slows.</summary>
    private AcrossTread<double> BendMm { get; init; }

    /// <summary>Its variance, mm².</summary>
    private AcrossTread<double> BendVarianceMm2 { get; init; }

    /// <summary>What the mix takes off each zone by the later half's rate, mm; 0 where the bend is not shown.</summary>
    private AcrossTread<double> ShownLateMm { get; init; }

    private double Squares { get; }

    private double EndColumn { get; }

    /// <summary>A straight fit with its bend; as it was where the clocks leave none to be told.</summary>
    internal static WearFit Bend(WearFit straight, ReadOnlySpan<DepthReading> readings, double? gaugeErrorMm)
    {
        const double Least = 1e-9;
        var curve = new WearCurve(straight.Design, readings);
        if (!(curve.Squares > Least)) return straight;
        var seen = new AcrossTread<double>(curve.Seen(straight, readings, TreadPlace.Outer), curve.Seen(straight, readings, TreadPlace.Centre), curve.Seen(straight, readings, TreadPlace.Inner));
        var free = straight.Scatter.DegreesOfFreedom - WearFit.ZoneCount;
        if (free >= FewestFree)
        {
            var squaresMm2 = straight.Zones.Outer.SquaresMm2 + straight.Zones.Centre.SquaresMm2 + straight.Zones.Inner.SquaresMm2;
            var bentMm2 = curve.Squares * ((seen.Outer * seen.Outer) + (seen.Centre * seen.Centre) + (seen.Inner * seen.Inner));
            var scatter = GaugeScatter.Estimate(Math.Max(0, squaresMm2 - bentMm2), free, gaugeErrorMm);
            var bendErrorMm = scatter.StandardDeviationMm * Math.Sqrt(WearFit.ZoneCount / curve.Squares);
            if (Math.Abs(seen.Outer + seen.Centre + seen.Inner) > bendErrorMm * StudentT.UpperQuantile(1 - (FalseAlarm / 2), free))
            {
                var variance = scatter.StandardDeviationMm * scatter.StandardDeviationMm / curve.Squares;
                var shown = curve with { IsShown = true, BendMm = seen, BendVarianceMm2 = new(variance, variance, variance) };
                var bent = straight with { Scatter = scatter, Curve = shown };
                var mix = straight.Design.Share(straight.Design.Mix)!.Value;
                return bent with { Curve = shown with { ShownLateMm = new(bent.LostMm(TreadPlace.Outer, mix), bent.LostMm(TreadPlace.Centre, mix), bent.LostMm(TreadPlace.Inner, mix)) } };
            }
        }

        var (outer, centre, inner) = (Weighed(TreadPlace.Outer), Weighed(TreadPlace.Centre), Weighed(TreadPlace.Inner));
        return straight with
        {
            Curve = curve with { BendMm = new(outer.Value, centre.Value, inner.Value), BendVarianceMm2 = new(outer.Variance, centre.Variance, inner.Variance) },
        };

        (double Value, double Variance) Weighed(TreadPlace place)
        {
            var mix = straight.Design.Share(straight.Design.Mix)!.Value;
            var usualMm = UsualChange * straight.Zones.At(place).LostOfMixMm.Dot(mix) / Math.Abs(curve.Slope(mix));
            if (!(usualMm > 0) || !double.IsFinite(usualMm)) return (0, 0);
            var gaugeMm2 = straight.Scatter.StandardDeviationMm * straight.Scatter.StandardDeviationMm;
            var variance = 1 / ((curve.Squares / gaugeMm2) + (1 / (usualMm * usualMm)));
            return (variance * curve.Squares * seen.At(place) / gaugeMm2, variance);
        }
    }

    /// <summary>How much less than by the straight fit a late stretch of use takes off a zone, mm.</summary>
    internal double Late(TreadPlace place, in MixShare share) => BendMm.At(place) * Slope(share);

    /// <summary>Variance of that, mm².</summary>
    internal double LateVariance(TreadPlace place, in MixShare share)
    {
        var ofForm = FormError * ShownLateMm.At(place) * Way((share.Road, share.Track));
        return (BendVarianceMm2.At(place) * Slope(share) * Slope(share)) + (ofForm * ofForm);
    }

    /// <summary>How much deeper than by the straight fit a zone is at the last reading, mm.</summary>
    internal double End(TreadPlace place) => BendMm.At(place) * EndColumn;

    /// <summary>Variance of that, mm².</summary>
    internal double EndVariance(TreadPlace place) => BendVarianceMm2.At(place) * EndColumn * EndColumn;

    /// <summary>Covariance of the depth at the last reading with the wear of a late stretch, mm².</summary>
    internal double EndCovariance(TreadPlace place, in MixShare share) => -BendVarianceMm2.At(place) * EndColumn * Slope(share);

    /// <summary>How much deeper than by the straight fit a zone is at a place of the clocks, mm.</summary>
    internal double At(TreadPlace place, (double Road, double Track) at) => BendMm.At(place) * Column(at);

    /// <summary>Variance of that, mm².</summary>
    internal double AtVariance(TreadPlace place, (double Road, double Track) at) => BendVarianceMm2.At(place) * Column(at) * Column(at);

    /// <summary>How much of its own error the bend takes over at a reading beside the straight fit; 0 where it is not what the readings say.</summary>
    internal double Leverage((double Road, double Track) at) => IsShown ? Column(at) * Column(at) / Squares : 0;

    private double Slope(in MixShare share) => (2 * _late * Way((share.Road, share.Track))) - _slope.Dot(share);

    private double Column((double Road, double Track) at) => (Way(at) * Way(at)) - _level - _slope.Dot(at.Road, at.Track);

    /// <summary>One number for how far along the use a place of the clocks is.</summary>
    private double Way((double Road, double Track) at) => _clock == WearClock.Both ? (at.Road + at.Track) / 2 : at.Road + at.Track;

    private double Seen(WearFit straight, ReadOnlySpan<DepthReading> readings, TreadPlace place)
    {
        var sum = 0.0;
        foreach (var one in readings) sum += Column(straight.Design.Place(one)) * one.DepthMm.At(place);
        return sum / Squares;
    }
}
