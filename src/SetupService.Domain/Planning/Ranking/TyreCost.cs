using SetupService.Domain.Answers;
using SetupService.Domain.Wear.Forecast;

namespace SetupService.Domain.Planning.Ranking;

/// <summary>How long the tyres fitted now last, by which others' lives are told from their treadwear grades.</summary>
/// <param name="TreadwearGrade">Their grade, above 0.</param>
/// <param name="LifeKm">Their life on the road, km; null where it is not known.</param>
/// <param name="LifeLaps">Their life on the track, laps; null where it is not known.</param>
public readonly record struct KnownLife(double TreadwearGrade, double? LifeKm, double? LifeLaps);

/// <summary>What driving on a tyre costs.</summary>
public static class TyreCost
{
    // How far a life somebody states may be off, as a factor either way; judgement, no source.
    private const double StatedFactor = 1.25;

    /// <summary>Cost of a unit of use of one tyre, in the price's currency, with its range (90 %); null where price or life is not known.</summary>
    /// <param name="tyre">The tyre.</param>
    /// <param name="life">Its own life, in units of use; null where it is not known.</param>
    /// <param name="present">The life of the tyres fitted now and their grade; null where either is not known.</param>
    public static Uncertainty? PerUnit(TyreOffer tyre, double? life, (double TreadwearGrade, double Life)? present)
    {
        ArgumentNullException.ThrowIfNull(tyre);
        if (tyre.Price is not { } price) return null;
        if (life is { } own) return new(price / own, price / (own * StatedFactor), price / (own / StatedFactor), Uncertainty.NinetyPct);
        if (present is not { } now || tyre.TreadwearGrade is not { } grade) return null;
        var ratio = TreadwearGrade.LifeRatio(now.TreadwearGrade, grade);
        return new(price / (now.Life * ratio.Value), price / (now.Life * ratio.Upper), price / (now.Life * ratio.Lower), Uncertainty.NinetyPct);
    }
}
