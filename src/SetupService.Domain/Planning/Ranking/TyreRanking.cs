using SetupService.Domain.Answers;
using SetupService.Domain.Numerics.Statistics;

namespace SetupService.Domain.Planning.Ranking;

/// <summary>One criterion's part in a tyre's score.</summary>
/// <param name="Criterion">Which.</param>
/// <param name="Weight">How much it counts, points of 100.</param>
/// <param name="Merit">How good the tyre is by it, 0 to 1: as told, or the middle of the list's where it is not.</param>
/// <param name="HalfWidth">Half the width of the range that may lie in; of one not told the whole scale is open.</param>
/// <param name="ToldBy">What told it; null where nothing did.</param>
public readonly record struct ScorePart(TyreCriterion Criterion, double Weight, double Merit, double HalfWidth, string? ToldBy)
{
    /// <summary>What it adds to the score.</summary>
    public double Points => Weight * Merit;

    /// <summary>What its range adds to the score's variance, anywhere in it alike.</summary>
    internal double Variance => Weight * Weight * HalfWidth * HalfWidth / 3;
}

/// <summary>A tyre with its score.</summary>
/// <param name="Index">Its place in the list as given.</param>
/// <param name="Score">The score of 100, with the range (90 %) that classes and what is not told leave open.</param>
/// <param name="Parts">What it is made of, in order of the criteria, those that count for nothing left out.</param>
public sealed record RankedTyre(int Index, Uncertainty Score, IReadOnlyList<ScorePart> Parts);

/// <summary>What weight makes the second tyre the first.</summary>
/// <param name="Criterion">The criterion weighed otherwise, the others kept in proportion.</param>
/// <param name="Share">Its share now.</param>
/// <param name="FlipsAtShare">Its share at which both have the same score; null where none does.</param>
public readonly record struct WeightFlip(TyreCriterion Criterion, double Share, double? FlipsAtShare);

/// <summary>
/// Ranks tyres by simple additive weighting: the score is the sum of weight times merit. Method page: docs/methods/tyre-ranking.
/// </summary>
public sealed class TyreRanking
{
    private const double Points = 100;

    // Where nothing tells, a merit lies anywhere on the scale.
    private const double OpenHalfWidth = 0.5;

    private TyreRanking(IReadOnlyList<RankedTyre> tyres, double? firstIsBest, IReadOnlyList<WeightFlip> flips) => (Tyres, FirstIsBest, Flips) = (tyres, firstIsBest, flips);

    /// <summary>The tyres, the highest score first; alike ones in the order given.</summary>
    public IReadOnlyList<RankedTyre> Tyres { get; }

    /// <summary>Places in the list as given of those that have no place in the order: nothing is told of them but at most their price.</summary>
    public IReadOnlyList<int> Unranked { get; private init; } = [];

    /// <summary>Probability that the first is truly ahead of the second; null where there is no second.</summary>
    public double? FirstIsBest { get; }

    /// <summary>For each criterion that counts, the weight at which second and first change places; empty where there is no second.</summary>
    public IReadOnlyList<WeightFlip> Flips { get; }

    /// <summary>Ranks a list.</summary>
    /// <param name="tyres">The tyres, at least one.</param>
    /// <param name="weights">How much each criterion counts.</param>
    public static TyreRanking Compute(IReadOnlyList<TyreOffer> tyres, CriterionWeights weights)
    {
        ArgumentNullException.ThrowIfNull(tyres);
        double? cheapest = null;
        foreach (var tyre in tyres)
        {
            if (tyre.Price is { } price && !(price >= cheapest)) cheapest = price;
        }

        var best = TyreMerits.FrictionOfBest(tyres);
        var merits = new TyreMerit?[tyres.Count][];
        Span<double> sum = stackalloc double[TyreMerits.Count];
        Span<int> told = stackalloc int[TyreMerits.Count];
        sum.Clear();
        told.Clear();
        for (var i = 0; i < merits.Length; i++)
        {
            merits[i] = new TyreMerit?[TyreMerits.Count];
            for (var of = 0; of < TyreMerits.Count; of++)
            {
                merits[i][of] = TyreMerits.Find(tyres[i], (TyreCriterion)of, cheapest, best);
                if (merits[i][of] is not { } merit) continue;
                sum[of] += merit.Value;
                told[of]++;
            }
        }

        // A criterion that nothing tells of any tyre tells none from another: it counts for nothing.
        Span<double> share = stackalloc double[TyreMerits.Count];
        var counted = 0.0;
        for (var of = 0; of < share.Length; of++) counted += share[of] = told[of] > 0 ? weights[(TyreCriterion)of] : 0;
        var ranked = new RankedTyre[merits.Length];
        for (var i = 0; i < ranked.Length; i++)
        {
            var parts = new List<ScorePart>(TyreMerits.Count);
            var (score, variance) = (0.0, 0.0);
            for (var of = 0; of < share.Length; of++)
            {
                if (share[of] <= 0) continue;
                var weight = Points * share[of] / counted;
                var part = merits[i][of] is { } merit
                    ? new ScorePart((TyreCriterion)of, weight, merit.Value, merit.HalfWidth, merit.ToldBy)
                    : new ScorePart((TyreCriterion)of, weight, sum[of] / told[of], OpenHalfWidth, null);
                parts.Add(part);
                score += part.Points;
                variance += part.Variance;
            }

            ranked[i] = new(i, Estimated(score, variance), parts);
        }

        // Of a tyre of which nothing but its price is told nobody knows what the money buys: beside others it has no place.
        var known = Array.FindAll(ranked, one => one.Parts.All(part => part.ToldBy is not null) || one.Parts.Any(part => part is { ToldBy: not null, Criterion: not TyreCriterion.Price }));
        var order = known.Select((tyre, place) => (tyre, place)).OrderByDescending(one => one.tyre.Score.Value).ThenBy(one => one.place).Select(one => one.tyre).ToArray();
        var unranked = ranked.Except(known).Select(one => one.Index).ToArray();
        return order.Length < 2 ? new(order, null, []) { Unranked = unranked } : new(order, Ahead(order[0], order[1]), Flipping(order[0], order[1], share, counted)) { Unranked = unranked };
    }

    private static Uncertainty Estimated(double score, double variance)
    {
        var reach = Uncertainty.StandardErrorsAtNinetyPct * Math.Sqrt(variance);
        return new(score, Math.Max(0, score - reach), Math.Min(Points, score + reach), Uncertainty.NinetyPct);
    }

    private static double Ahead(RankedTyre first, RankedTyre second)
    {
        var (lead, variance) = (first.Score.Value - second.Score.Value, first.Parts.Sum(part => part.Variance) + second.Parts.Sum(part => part.Variance));
        return variance > 0 ? NormalDistribution.Below(lead / Math.Sqrt(variance)) : lead > 0 ? 1 : 0.5;
    }

    // With weight w of a criterion and the others in proportion, the lead is w·d + (1 − w)·D, D the lead by the others alone: none at w = D / (D − d).
    private static WeightFlip[] Flipping(RankedTyre first, RankedTyre second, ReadOnlySpan<double> share, double counted)
    {
        var flips = new WeightFlip[first.Parts.Count];
        var lead = (first.Score.Value - second.Score.Value) / Points;
        for (var i = 0; i < flips.Length; i++)
        {
            var (of, now) = (first.Parts[i].Criterion, share[(int)first.Parts[i].Criterion] / counted);
            var ownLead = first.Parts[i].Merit - second.Parts[i].Merit;
            double? at = null;
            if (now < 1)
            {
                var othersLead = (lead - (now * ownLead)) / (1 - now);
                var root = othersLead / (othersLead - ownLead);
                if (root is >= 0 and <= 1) at = root;
            }

            flips[i] = new(of, now, at);
        }

        return flips;
    }
}
