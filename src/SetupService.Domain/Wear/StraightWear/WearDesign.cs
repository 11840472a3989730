using SetupService.Domain.Wear.Readings;

namespace SetupService.Domain.Wear.StraightWear;

/// <summary>
/// When a tyre was read: what least squares needs of the clocks, the same for every zone of the tread. Each clock runs about its
/// mean in units of how far it moved in all, so that kilometres and laps have one size; the mix is how far both moved.
/// </summary>
public sealed class WearDesign
{
    // A clock that moved less than this, km or laps, counts as not moving: a rate from less would be amplified noise.
    private const double LeastMove = 0.1;

    // Share of a clock's movement that the other does not explain, below which the two are one.
    private const double ToldApart = 1e-4;

    // A use counts as the mix where its parts agree with the mix' to this share.
    private const double SameMix = 0.02;

    private readonly double _meanRoadKm;
    private readonly double _meanLaps;
    private readonly double _squaresRoad;
    private readonly double _products;
    private readonly double _squaresTrack;
    private readonly double _factorRoad;
    private readonly double _factorBoth;
    private readonly double _factorTrack;
    private readonly double _endRoad;
    private readonly double _endTrack;

    private WearDesign(ReadOnlySpan<DepthReading> readings)
    {
        Count = readings.Length;
        var (low, high) = (new TyreUse(double.MaxValue, double.MaxValue), new TyreUse(0, 0));
        foreach (var one in readings)
        {
            _meanRoadKm += one.RoadKm / Count;
            _meanLaps += one.TrackLaps / Count;
            low = new(Math.Min(low.RoadKm, one.RoadKm), Math.Min(low.TrackLaps, one.TrackLaps));
            high = new(Math.Max(high.RoadKm, one.RoadKm), Math.Max(high.TrackLaps, one.TrackLaps));
        }

        if (Count == 0) return;
        var (roadKm, laps) = (high.RoadKm - low.RoadKm, high.TrackLaps - low.TrackLaps);
        Mix = new(roadKm >= LeastMove ? roadKm : 0, laps >= LeastMove ? laps : 0);
        Clock = Mix switch
        {
            { RoadKm: 0, TrackLaps: 0 } => WearClock.None,
            { TrackLaps: 0 } => WearClock.Road,
            { RoadKm: 0 } => WearClock.Track,
            _ => WearClock.Both,
        };
        var (road, both, track) = (0.0, 0.0, 0.0);
        foreach (var one in readings)
        {
            var (u, v) = Raw(one);
            road += u * u;
            both += u * v;
            track += v * v;
        }

        (_squaresRoad, _products, _squaresTrack) = (road, both, track);
        if (Clock == WearClock.Both && (road * track) - (both * both) <= ToldApart * road * track) Clock = WearClock.InProportion;
        (_factorRoad, _factorBoth, _factorTrack) = Clock switch
        {
            WearClock.Road => (1 / road, 0.0, 0.0),
            WearClock.Track => (0.0, 0.0, 1 / track),
            WearClock.Both => Inverse(road, both, track),

            // Both clocks as one: the mean of the two.
            WearClock.InProportion => (4 / (road + (2 * both) + track), 0.0, 0.0),
            _ => (0.0, 0.0, 0.0),
        };
        LastLaps = high.TrackLaps;
        (_endRoad, _endTrack) = Place(new(high.RoadKm, high.TrackLaps, default));
    }

    /// <summary>How many readings.</summary>
    public int Count { get; }

    /// <summary>What wear is counted against.</summary>
    public WearClock Clock { get; }

    /// <summary>How far each clock moved over all readings; 0 for one that does not move.</summary>
    public TyreUse Mix { get; }

    /// <summary>Laps at the last reading.</summary>
    public double LastLaps { get; }

    /// <summary>Where the fitted clocks are at the last reading, about their means in units of the mix.</summary>
    internal MixShare End => new(_endRoad, _endTrack);

    /// <summary>How many figures a zone's fit finds: its depth, and a rate for each separable clock.</summary>
    public int UnknownCount => Clock switch { WearClock.None => 1, WearClock.Both => 3, _ => 2 };

    /// <summary>Variance of a fitted depth at the last reading, per that of one reading.</summary>
    public double EndVariance => (1.0 / Count) + Variance(_endRoad, _endTrack);

    /// <summary>The design of readings; the depths in them do not matter.</summary>
    public static WearDesign Create(ReadOnlySpan<DepthReading> readings) => new(readings);

    /// <summary>How many readings differ from the one before by either clock, and the first.</summary>
    public static int DistinctCount(ReadOnlySpan<DepthReading> readings)
    {
        var count = 0;
        for (var i = 0; i < readings.Length; i++)
        {
            if (i == 0 || readings[i].RoadKm != readings[i - 1].RoadKm || readings[i].TrackLaps != readings[i - 1].TrackLaps) count++;
        }

        return count;
    }

    /// <summary>
    /// The same use in units of the mix, along both fitted clocks; null where the readings do not determine the wear of such use: a clock
    /// that stood still, or one of two that always moved together.
    /// </summary>
    public MixShare? Share(TyreUse use)
    {
        switch (Clock)
        {
            case WearClock.Road: return use.TrackLaps == 0 ? new(use.RoadKm / Mix.RoadKm, 0) : null;
            case WearClock.Track: return use.RoadKm == 0 ? new(0, use.TrackLaps / Mix.TrackLaps) : null;
            case WearClock.Both: return new(use.RoadKm / Mix.RoadKm, use.TrackLaps / Mix.TrackLaps);
            case WearClock.InProportion:
                var (road, track) = (use.RoadKm / Mix.RoadKm, use.TrackLaps / Mix.TrackLaps);
                return Math.Abs(road - track) <= SameMix * Math.Max(Math.Abs(road), Math.Abs(track)) ? new((road + track) / 2, 0) : null;
            default: return null;
        }
    }

    /// <summary>Variance of the wear of a use, per that of one reading.</summary>
    public double Variance(in MixShare share) => Variance(share.Road, share.Track);

    /// <summary>Covariance of the depth at the last reading with the wear of a use, per the variance of one reading.</summary>
    public double EndCovariance(in MixShare share) =>
        -((_endRoad * ((_factorRoad * share.Road) + (_factorBoth * share.Track))) + (_endTrack * ((_factorBoth * share.Road) + (_factorTrack * share.Track))));

    /// <summary>The combination of columns that fits values with these sums of products with both clocks.</summary>
    internal MixShare Solve(double road, double track) => new((_factorRoad * road) + (_factorBoth * track), (_factorBoth * road) + (_factorTrack * track));

    /// <summary>How much larger the sum of squares is where the wear of the mix is off its least-squares value by this much, mm².</summary>
    internal double Squares(in MixShare offMm) => Clock == WearClock.InProportion
        ? offMm.Road * offMm.Road / _factorRoad
        : (offMm.Road * offMm.Road * _squaresRoad) + (2 * offMm.Road * offMm.Track * _products) + (offMm.Track * offMm.Track * _squaresTrack);

    /// <summary>Variance of a fitted depth at a place, per that of one reading.</summary>
    internal double DepthVariance(double road, double track) => (1.0 / Count) + Variance(road, track);

    /// <summary>How much of its own error the fit takes over at a reading: 1 where it follows that reading alone.</summary>
    public double Leverage(in DepthReading reading)
    {
        var (road, track) = Place(reading);
        return (1.0 / Count) + Variance(road, track);
    }

    /// <summary>
    /// Fits one zone twice: freely, which says how well the readings determine the rates, and with no rate below zero, since no use makes a
    /// tread grow.
    /// </summary>
    public ZoneWear Fit(ReadOnlySpan<DepthReading> readings, TreadPlace place)
    {
        var meanMm = 0.0;
        foreach (var one in readings) meanMm += one.DepthMm.At(place) / Count;
        var (road, track) = (0.0, 0.0);
        foreach (var one in readings)
        {
            var (u, v) = Place(one);
            var lostMm = meanMm - one.DepthMm.At(place);
            road += u * lostMm;
            track += v * lostMm;
        }

        var free = Solve(road, track);
        var lost = NotNegative(free, road, track);
        var squares = 0.0;
        foreach (var one in readings)
        {
            var (u, v) = Place(one);
            var missMm = one.DepthMm.At(place) - meanMm + free.Dot(u, v);
            squares += missMm * missMm;
        }

        return new(meanMm, lost, meanMm - lost.Dot(_endRoad, _endTrack), squares) { FreeLostOfMixMm = free, FreeEndDepthMm = meanMm - free.Dot(_endRoad, _endTrack) };
    }

    /// <summary>Least squares with neither rate below zero: where the free minimum has one, the minimum is on an edge.</summary>
    private MixShare NotNegative(in MixShare free, double road, double track)
    {
        if (free is { Road: >= 0, Track: >= 0 }) return free;
        if (Clock != WearClock.Both) return new(Math.Max(0, free.Road), Math.Max(0, free.Track));
        var (byRoad, byTrack) = (Math.Max(0, road / _squaresRoad), Math.Max(0, track / _squaresTrack));
        return byRoad * byRoad * _squaresRoad >= byTrack * byTrack * _squaresTrack ? new(byRoad, 0) : new(0, byTrack);
    }

    /// <summary>The fitted depth of a zone at the clocks of a reading, mm.</summary>
    public double DepthMm(in ZoneWear zone, in DepthReading reading)
    {
        var (road, track) = Place(reading);
        return zone.MeanDepthMm - zone.LostOfMixMm.Dot(road, track);
    }

    private double Variance(double road, double track) => (_factorRoad * road * road) + (2 * _factorBoth * road * track) + (_factorTrack * track * track);

    private static (double Road, double Both, double Track) Inverse(double road, double both, double track)
    {
        var determinant = (road * track) - (both * both);
        return (track / determinant, -both / determinant, road / determinant);
    }

    private (double Road, double Track) Raw(in DepthReading reading) => (
        Mix.RoadKm > 0 ? (reading.RoadKm - _meanRoadKm) / Mix.RoadKm : 0,
        Mix.TrackLaps > 0 ? (reading.TrackLaps - _meanLaps) / Mix.TrackLaps : 0);

    /// <summary>Where both clocks are at a reading, about their means in units of the mix; where they move in proportion the first holds their mean.</summary>
    internal (double Road, double Track) Place(in DepthReading reading)
    {
        var (road, track) = Raw(reading);
        return Clock == WearClock.InProportion ? ((road + track) / 2, 0) : (road, track);
    }
}

/// <summary>One number for each fitted clock: a stretch of use in units of the mix, or what the mix takes off the tread by each clock, mm.</summary>
/// <param name="Road">By the road clock, or by both where they move in proportion.</param>
/// <param name="Track">By the track clock; 0 where both move in proportion.</param>
public readonly record struct MixShare(double Road, double Track)
{
    /// <summary>Sum of the products.</summary>
    internal double Dot(double road, double track) => (Road * road) + (Track * track);

    /// <summary>Sum of the products.</summary>
    internal double Dot(in MixShare other) => Dot(other.Road, other.Track);
}

/// <summary>What wear is counted against.</summary>
public enum WearClock
{
    /// <summary>Nothing: neither clock moves between the readings.</summary>
    None,

    /// <summary>Kilometres on the road alone; the laps do not move.</summary>
    Road,

    /// <summary>Laps alone; the kilometres do not move.</summary>
    Track,

    /// <summary>Both, separable.</summary>
    Both,

    /// <summary>Both, always in the same proportion: only their joint wear can be determined.</summary>
    InProportion,
}
