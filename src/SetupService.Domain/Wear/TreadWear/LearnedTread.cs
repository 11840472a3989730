using SetupService.Domain.Answers;
using SetupService.Domain.Numerics;
using SetupService.Domain.Numerics.LeastSquares;
using SetupService.Domain.Wear.Readings;
using static SetupService.Domain.Wear.TreadWear.TreadWearParameters;

namespace SetupService.Domain.Wear.TreadWear;

/// <summary>The wear model of an axle after its treads were read.</summary>
public sealed class LearnedTread
{
    // What the model itself leaves uncertain at a place, as a share of the mean wear; judgement.
    private const double ErrorOfModel = 0.1;

    // Of a standard deviation of the readings: closer the fit need not reach rest.
    private const double Settled = 1e-4;

    private const int MostSteps = 200;
    private const int FurthestTenths = 50;

    private readonly AxleUse _axle;
    private readonly double[] _parameters;
    private readonly double[] _factor;
    private readonly double _roadKm;
    private readonly double _trackKm;

    private LearnedTread(AxleUse axle, double[] parameters, double[] factor, double roadKm, double trackKm, int readingCount)
    {
        (_axle, _parameters, _factor, _roadKm, _trackKm) = (axle, parameters, factor, roadKm, trackKm);
        ReadingCount = readingCount;
    }

    /// <summary>How many depths it learned from.</summary>
    public int ReadingCount { get; }

    /// <summary>True when the tyres did anything that wears them.</summary>
    public bool HasUse => _roadKm > 0 || _trackKm > 0;

    /// <summary>Load, angles and use of the axle's wheels.</summary>
    public AxleUse Axle => _axle;

    /// <summary>One parameter as it is believed now.</summary>
    public Estimate Parameter(int index)
    {
        var variance = 0.0;
        foreach (var part in _factor.AsSpan(index * Count, Count)) variance += part * part;
        return new(_parameters[index], Math.Sqrt(variance));
    }

    /// <summary>Learns from what was read; null where the fit does not converge, or the work allowed is spent.</summary>
    /// <param name="axle">Load, angles and use of the axle's wheels.</param>
    /// <param name="left">The left tyre; null = not read.</param>
    /// <param name="right">The right tyre; null = not read.</param>
    /// <param name="roadKm">Kilometres of road.</param>
    /// <param name="trackKm">Kilometres of track.</param>
    /// <param name="budget">Work allowed; null = no limit.</param>
    public static LearnedTread? Fit(AxleUse axle, TyreReading? left, TyreReading? right, double roadKm, double trackKm, WorkBudget? budget = null)
    {
        ArgumentNullException.ThrowIfNull(axle);
        var readings = new List<TreadDepthObservation>();
        Add(left, isLeft: true);
        Add(right, isLeft: false);
        var parameters = new double[Count];
        for (var k = 0; k < Count; k++) parameters[k] = Priors[k].Value;
        var model = new TreadWearFit(axle, [.. readings], roadKm, trackKm);
        var factor = new double[Count * Count];
        return GaussNewton.TryFit(model, parameters, new double[Count], out _, Settled, MostSteps, budget) && GaussNewton.TryCovarianceFactor(model, parameters, factor)
            ? new(axle, parameters, factor, roadKm, trackKm, readings.Count)
            : null;

        void Add(TyreReading? tyre, bool isLeft)
        {
            if (tyre is null || TreadFigures.Compute(tyre) is not { } figures) return;
            var freshMm = tyre.NewDepthMm ?? TreadFigures.UsualNewDepthMm.Value;
            var ofModel = ErrorOfModel * figures.WornMm.Value;
            var errorMm = Math.Sqrt((figures.ReadingErrorMm * figures.ReadingErrorMm) + (ofModel * ofModel));
            foreach (var zone in tyre.Zones) readings.Add(new(isLeft, zone.Inward, freshMm - zone.DepthMm, errorMm, tyre.NewDepthMm is not null));
        }
    }

    /// <summary>Wear predicted at the three usual places of a tyre over the use stated, mm.</summary>
    /// <param name="wheel">What wears it: a wheel of <see cref="Axle"/>, or the same set otherwise.</param>
    public AcrossTread<double> WornMm(WheelUse wheel) => WornMm(wheel, _roadKm, _trackKm);

    /// <summary>
    /// By what the life of the axle's worst place is multiplied where the axle is set otherwise, at the same use: the present fastest wear by the fastest then.
    /// </summary>
    /// <param name="other">The axle set so.</param>
    public double LifeRatio(AxleUse other) => MostWornMm(_axle, _roadKm, _trackKm) / MostWornMm(other, _roadKm, _trackKm);

    /// <summary>Wear of the axle's worst place over a use, mm.</summary>
    /// <param name="axle">The axle, as it is or set otherwise.</param>
    /// <param name="roadKm">Kilometres of road.</param>
    /// <param name="trackKm">Kilometres of track.</param>
    public double MostWornMm(AxleUse axle, double roadKm, double trackKm)
    {
        ArgumentNullException.ThrowIfNull(axle);
        return Math.Max(Most(WornMm(axle.Left, roadKm, trackKm)), Most(WornMm(axle.Right, roadKm, trackKm)));

        static double Most(AcrossTread<double> worn) => Math.Max(worn.Outer, Math.Max(worn.Centre, worn.Inner));
    }

    /// <summary>The same, with what it is not known by.</summary>
    /// <param name="axle">The axle, as it is or set otherwise.</param>
    /// <param name="roadKm">Kilometres of road.</param>
    /// <param name="trackKm">Kilometres of track.</param>
    /// <param name="effects">By how much one standard error of each of the fit's independent unknowns moves the natural logarithm of that wear, <see cref="Count"/> of them; alike for all uses of this fit.</param>
    public double MostWornMm(AxleUse axle, double roadKm, double trackKm, Span<double> effects)
    {
        ArgumentNullException.ThrowIfNull(axle);
        Span<double> gradient = stackalloc double[Count];
        Span<double> most = stackalloc double[Count];
        var mostMm = 0.0;
        foreach (var wheel in (ReadOnlySpan<WheelUse>)[axle.Left, axle.Right])
        {
            foreach (var acrossPct in (ReadOnlySpan<double>)[TreadZone.UsualPct.Outer, TreadZone.UsualPct.Centre, TreadZone.UsualPct.Inner])
            {
                var wornMm = TreadWearModel.WornMm(wheel, new TreadZone(acrossPct, 0).Inward, roadKm, trackKm, _parameters, gradient);
                if (wornMm <= mostMm) continue;
                mostMm = wornMm;
                gradient.CopyTo(most);
            }
        }

        effects.Clear();
        if (mostMm > 0)
        {
            for (var row = 0; row < Count; row++)
            {
                for (var column = 0; column <= row; column++) effects[column] += most[row] / mostMm * _factor[(row * Count) + column];
            }
        }

        return mostMm;
    }

    /// <summary>
    /// The change of the static camber, degrees, with which the axle's worst place lasts longest at the same use, to a tenth, and the axle set so; null where it has no equilibrium
    /// there.
    /// </summary>
    /// <param name="set">The axle with its camber changed so, solved; null where it has no equilibrium.</param>
    public (double ChangeDeg, AxleUse Set)? LongestLife(Func<double, AxleUse?> set)
    {
        ArgumentNullException.ThrowIfNull(set);

        // To first order it is found at no cost; from there the solved axle is followed while it wears less.
        var (nearest, leastMm) = (0, MostWornMm(_axle, _roadKm, _trackKm));
        for (var tenths = -FurthestTenths; tenths <= FurthestTenths; tenths++)
        {
            var mostMm = MostWornMm(_axle.Leaned(tenths / 10.0), _roadKm, _trackKm);
            if (mostMm < leastMm) (nearest, leastMm) = (tenths, mostMm);
        }

        var best = Solved(nearest);
        foreach (var way in (ReadOnlySpan<int>)[-1, 1])
        {
            while (Math.Abs(best.Tenths + way) <= FurthestTenths && Solved(best.Tenths + way) is var next && next.MostMm < best.MostMm) best = next;
        }

        return best.Set is { } found ? (best.Tenths / 10.0, found) : null;

        (int Tenths, AxleUse? Set, double MostMm) Solved(int tenths) =>
            set(tenths / 10.0) is { } axle ? (tenths, axle, MostWornMm(axle, _roadKm, _trackKm)) : (tenths, null, double.PositiveInfinity);
    }

    private AcrossTread<double> WornMm(WheelUse wheel, double roadKm, double trackKm)
    {
        ArgumentNullException.ThrowIfNull(wheel);
        var at = TreadZone.UsualPct;
        return new(Worn(at.Outer), Worn(at.Centre), Worn(at.Inner));

        double Worn(double acrossPct) => TreadWearModel.WornMm(wheel, new TreadZone(acrossPct, 0).Inward, roadKm, trackKm, _parameters);
    }
}
