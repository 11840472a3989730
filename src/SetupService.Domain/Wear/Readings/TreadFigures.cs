using SetupService.Domain.Answers;
using SetupService.Domain.Numerics.LeastSquares;

namespace SetupService.Domain.Wear.Readings;

/// <summary>
/// What depths across a tread come down to: a parabola through them, with what the gauge leaves uncertain. Three places are met exactly; more are fitted.
/// </summary>
public readonly record struct TreadFigures
{
    /// <summary>
    /// Depth of a new tyre where not stated, mm, and its standard deviation: only the scale of wear depends on it. Common practice, no source: road tyres
    /// begin with 7 to 8.5 mm.
    /// </summary>
    public static readonly Estimate UsualNewDepthMm = new(8, 0.6);

    // Less wear than this, mm, is not known from none.
    private const double LeastWornMm = 0.2;
    private const int Unknowns = 3;
    private const int LeastForWave = 4;
    private const double ErrorOfWave = 0.4;

    /// <summary>Depth at the three usual places, mm.</summary>
    public required AcrossTread<double> DepthMm { get; init; }

    /// <summary>Mean wear over the tread, mm; by a usual new depth where none is given.</summary>
    public required Estimate WornMm { get; init; }

    /// <summary>Outer less inner wear divided by the mean wear.</summary>
    public required Estimate ShoulderDifference { get; init; }

    /// <summary>Centre's wear less the mean of the shoulders' divided by the mean wear.</summary>
    public required Estimate CrownDifference { get; init; }

    /// <summary>Root-mean-square difference of depth round the tyre beyond the gauge's, mm; null where it was read at one place only.</summary>
    public required Estimate? RoundSpreadMm { get; init; }

    /// <summary>
    /// Share of the difference round the tyre that goes once round it, from 0 to 1, the places taken as evenly spaced in their order; null where it was read at fewer
    /// than four places or differs by nothing.
    /// </summary>
    public required Estimate? OncePerTurnShare { get; init; }

    /// <summary>Standard error of the mean depth by the gauge alone, mm.</summary>
    public required double GaugeErrorMm { get; init; }

    /// <summary>True when the new depth was stated.</summary>
    public required bool IsFreshStated { get; init; }

    /// <summary>Standard deviation of one depth as it was taken, mm.</summary>
    public required double ReadingErrorMm { get; init; }

    /// <summary>The figures; null where fewer than three places were read.</summary>
    public static TreadFigures? Compute(TyreReading tyre)
    {
        ArgumentNullException.ThrowIfNull(tyre);
        if (tyre.Zones.Count < Unknowns) return null;
        var gaugeMm = tyre.GaugeErrorMm ?? TreadDepths.UsualGaugeErrorMm;
        var errorMm = gaugeMm / Math.Sqrt(Math.Max(1, tyre.AroundMm.Count));
        var equations = new NormalEquations(stackalloc double[NormalEquations.MemoryFor(Unknowns)], Unknowns);
        Span<double> row = stackalloc double[Unknowns];
        Span<double> depth = stackalloc double[Unknowns];
        foreach (var zone in tyre.Zones)
        {
            var y = zone.Inward;
            (row[0], row[1], row[2]) = (1, y, (y * y) - (1.0 / 3));
            equations.Add(row, zone.DepthMm);
        }

        if (!equations.TryFactor()) return null;
        equations.Solve(depth);
        var at = TreadZone.UsualPct;
        var worn = Worn(tyre.NewDepthMm, depth[0], errorMm, tyre.Zones.Count);
        var shoulderY = new TreadZone(at.Inner, 0).Inward;
        var square = shoulderY * shoulderY;
        return new TreadFigures
        {
            DepthMm = new(Depth(depth, -shoulderY), Depth(depth, 0), Depth(depth, shoulderY)),
            WornMm = worn,
            ShoulderDifference = Share(2 * shoulderY * depth[1], 2 * shoulderY * Spread(equations, 1) * errorMm, worn),
            CrownDifference = Share(square * depth[2], square * Spread(equations, 2) * errorMm, worn),
            RoundSpreadMm = Round(tyre.AroundMm, gaugeMm),
            OncePerTurnShare = Once(tyre.AroundMm, gaugeMm),
            GaugeErrorMm = errorMm / Math.Sqrt(tyre.Zones.Count),
            IsFreshStated = tyre.NewDepthMm is not null,
            ReadingErrorMm = errorMm,
        };
    }

    private static double Depth(ReadOnlySpan<double> depth, double y) => depth[0] + (depth[1] * y) + (depth[2] * ((y * y) - (1.0 / 3)));

    private static double Spread(in NormalEquations equations, int unknown)
    {
        Span<double> factors = stackalloc double[Unknowns];
        equations.StandardFactors(factors);
        return factors[unknown];
    }

    private static Estimate Worn(double? newDepthMm, double meanMm, double errorMm, int count)
    {
        var fresh = newDepthMm is { } stated ? new Estimate(stated, 0) : UsualNewDepthMm;
        var gauge = errorMm / Math.Sqrt(count);
        return new(Math.Max(LeastWornMm, fresh.Value - meanMm), Math.Sqrt((gauge * gauge) + (fresh.StandardError * fresh.StandardError)));
    }

    /// <summary>A difference of depth divided by the mean wear; both are uncertain.</summary>
    private static Estimate Share(double differenceMm, double errorMm, in Estimate worn)
    {
        var share = differenceMm / worn.Value;
        var ofScale = share * Math.Min(1, worn.StandardError / worn.Value);
        return new(share, Math.Sqrt((errorMm / worn.Value * (errorMm / worn.Value)) + (ofScale * ofScale)));
    }

    private static Estimate? Round(IReadOnlyList<AcrossTread<double>> aroundMm, double gaugeMm)
    {
        if (aroundMm.Count < 2) return null;
        var sum = MeanAt(aroundMm, TreadPlace.Outer) + MeanAt(aroundMm, TreadPlace.Centre) + MeanAt(aroundMm, TreadPlace.Inner);
        var freedom = 3.0 * (aroundMm.Count - 1);
        var variance = sum / freedom;
        var beyond = Math.Sqrt(Math.Max(0, variance - (gaugeMm * gaugeMm)));

        // A variance from so few readings is open by this; near nothing its root is as open as the root of that.
        var open = variance * Math.Sqrt(2 / freedom);
        return new(beyond, Math.Min(open / (2 * Math.Max(beyond, 1e-3)), Math.Sqrt(open) / 2));
    }

    private static Estimate? Once(IReadOnlyList<AcrossTread<double>> aroundMm, double gaugeMm)
    {
        if (aroundMm.Count < LeastForWave) return null;
        var (all, wave, count) = (0.0, 0.0, aroundMm.Count);
        foreach (var place in (ReadOnlySpan<TreadPlace>)[TreadPlace.Outer, TreadPlace.Centre, TreadPlace.Inner])
        {
            var (cos, sin) = (0.0, 0.0);
            for (var i = 0; i < count; i++)
            {
                var (s, c) = Math.SinCos(2 * Math.PI * i / count);
                (cos, sin) = (cos + (c * aroundMm[i].At(place)), sin + (s * aroundMm[i].At(place)));
            }

            all += MeanAt(aroundMm, place);
            wave += 2 * ((cos * cos) + (sin * sin)) / count;
        }

        if (all <= 0) return null;

        // Where the gauge causes most of the variation, the share is the gauge's.
        var ofGauge = Math.Min(1, 3 * (count - 1) * gaugeMm * gaugeMm / all);
        return new(Math.Min(1, wave / all), ofGauge * ErrorOfWave);
    }

    private static double MeanAt(IReadOnlyList<AcrossTread<double>> aroundMm, TreadPlace place)
    {
        var (mean, sum) = (0.0, 0.0);
        for (var i = 0; i < aroundMm.Count; i++) mean += aroundMm[i].At(place) / aroundMm.Count;
        for (var i = 0; i < aroundMm.Count; i++) sum += (aroundMm[i].At(place) - mean) * (aroundMm[i].At(place) - mean);
        return sum;
    }
}
