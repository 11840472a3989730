using SetupService.Domain.Answers;
using SetupService.Domain.Vehicles;
using SetupService.Domain.Wear.Readings;

namespace SetupService.Domain.Wear.Diagnosis;

/// <summary>
/// Assigns wear to the places where it happened. A tread that was worn at two places is the sum of both: what it says of one is as much less sure as the other's share is
/// larger, and nothing where the history does not tell the shares.
/// </summary>
internal sealed class WornHere
{
    /// <summary>From this share a place is where a tyre was worn, for what is counted and not measured.</summary>
    public const double Mostly = 0.8;

    private const double Half = 0.5;

    // Below this share a tread says nothing of a place.
    private const double Least = 0.1;

    // How far the signs of an unknown place scatter; judgement.
    private const double ShoulderScatter = 0.4;
    private const double CrownScatter = 0.2;

    private readonly (TyreReading Tyre, IReadOnlyList<WornLeg> Legs, TreadFigures? Figures)[] _tyres;

    public WornHere(WearCase wear)
    {
        var lapKm = wear.Use.LapKm ?? TrackShare.UsualLapKm;
        _tyres = new (TyreReading, IReadOnlyList<WornLeg>, TreadFigures?)[wear.Tyres.Count];
        for (var i = 0; i < _tyres.Length; i++)
            _tyres[i] = (wear.Tyres[i], WornLegs.Compute(wear.Tyres[i], wear.Use, lapKm, TrackShare.TrackByRoad), TreadFigures.Compute(wear.Tyres[i]));
    }

    /// <summary>The tyre that shows a cause of a wheel: what is set now by the tyre on it, what was worn by the one worn there.</summary>
    public TyreReading? TyreOf(WheelPosition position, WearCause cause)
    {
        if (cause is WearCause.UnderInflation or WearCause.OverInflation or WearCause.BelowTemperatureWindow or WearCause.AboveTemperatureWindow) return On(position);
        return TyreAt(position) ?? On(position);
    }

    /// <summary>True when a tyre read now tells anything of an axle: one that is on it, or was for a good part of its wear.</summary>
    public bool Tells(CarAxle at)
    {
        foreach (var (tyre, legs, _) in _tyres)
        {
            if (tyre.Axle == at) return true;
            foreach (var leg in legs)
            {
                if (leg.Share >= Mostly && WheelPositions.AxleOf(leg.Position) == at) return true;
            }
        }

        return false;
    }

    /// <summary>The tyre whose marks tell of a wheel: one worn mostly there; null where there is none.</summary>
    public TyreReading? TyreAt(WheelPosition position)
    {
        foreach (var (tyre, legs, _) in _tyres)
        {
            if (ShareAt(legs, position, null) >= Mostly) return tyre;
        }

        // A tyre worn here and there shows marks of here, unless it was elsewhere nearly always.
        foreach (var (tyre, legs, _) in _tyres)
        {
            if (tyre.Position == position && !IsMostlyElsewhere(legs, position)) return tyre;
        }

        return null;
    }

    /// <summary>The figures of a tyre worn at a wheel alone; null where none was.</summary>
    public TreadFigures? FiguresAt(WheelPosition position)
    {
        foreach (var (_, legs, figures) in _tyres)
        {
            if (ShareAt(legs, position, null) >= Mostly) return figures;
        }

        return null;
    }

    /// <summary>Share of its wear that the tyre on a wheel had at another place or side, by its history; a half where it was elsewhere and nobody told how far; null where no history is told.</summary>
    public double? ElsewhereShare(WheelPosition position)
    {
        foreach (var (tyre, legs, _) in _tyres)
        {
            if (tyre.Position == position && tyre.History.Count > 0) return legs.Count == 0 ? Half : 1 - ShareAt(legs, position, false);
        }

        return null;
    }

    /// <summary>The tyre on a wheel, where it was mostly worn there; null else.</summary>
    public TyreReading? StayedAt(WheelPosition position)
    {
        foreach (var (tyre, legs, _) in _tyres)
        {
            if (tyre.Position == position && ShareAt(legs, position, false) >= Mostly) return tyre;
        }

        return null;
    }

    /// <summary>The shoulders' difference of both wheels of an axle.</summary>
    public Estimate? ShoulderDifference(CarAxle at) => at == CarAxle.Front
        ? EvidenceExtractor.Mean(ShoulderDifference(WheelPosition.FrontLeft), ShoulderDifference(WheelPosition.FrontRight))
        : EvidenceExtractor.Mean(ShoulderDifference(WheelPosition.RearLeft), ShoulderDifference(WheelPosition.RearRight));

    /// <summary>Wear of the outer shoulder of a wheel's tyre less that of the inner one, by the mean wear.</summary>
    public Estimate? ShoulderDifference(WheelPosition position) => Pool(position, ShoulderScatter, turns: true, figures => figures.ShoulderDifference);

    /// <summary>Wear of the centre of a wheel's tyre less that of its shoulders, by the mean wear.</summary>
    public Estimate? CrownDifference(WheelPosition position) => Pool(position, CrownScatter, turns: false, figures => figures.CrownDifference);

    private Estimate? Pool(WheelPosition position, double scatter, bool turns, Func<TreadFigures, Estimate> sign)
    {
        var (sum, precision) = (0.0, 0.0);
        foreach (var (_, legs, read) in _tyres)
        {
            if (read is not { } figures) continue;
            var (straight, turned) = (ShareAt(legs, position, false), ShareAt(legs, position, true));
            var share = turns ? straight - turned : straight + turned;
            if (Math.Abs(share) < Least) continue;
            var one = sign(figures);
            var elsewhere = Math.Max(0, 1 - straight - turned) * scatter;
            var error = Math.Sqrt((one.StandardError * one.StandardError) + (elsewhere * elsewhere)) / Math.Abs(share);
            (sum, precision) = (sum + (one.Value / share / (error * error)), precision + (1 / (error * error)));
        }

        return precision > 0 ? new(sum / precision, 1 / Math.Sqrt(precision)) : null;
    }

    private TyreReading? On(WheelPosition position)
    {
        foreach (var (tyre, _, _) in _tyres)
        {
            if (tyre.Position == position) return tyre;
        }

        return null;
    }

    private static bool IsMostlyElsewhere(IReadOnlyList<WornLeg> legs, WheelPosition position)
    {
        foreach (var leg in legs)
        {
            if (leg.Share >= Mostly && leg.Position != position) return true;
        }

        return false;
    }

    private static double ShareAt(IReadOnlyList<WornLeg> legs, WheelPosition position, bool? isTurned)
    {
        var share = 0.0;
        foreach (var leg in legs)
        {
            if (leg.Position == position && (isTurned is null || leg.IsTurned == isTurned)) share += leg.Share;
        }

        return share;
    }
}
