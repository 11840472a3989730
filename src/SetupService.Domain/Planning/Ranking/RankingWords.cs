using System.Globalization;
using SetupService.Domain.Answers;
using SetupService.Domain.Tyres;

namespace SetupService.Domain.Planning.Ranking;

/// <summary>Says how tyres rank, as a shop would to a customer.</summary>
public static class RankingWords
{
    // The order of first and second is told as sure from here on.
    private const double Sure = 0.9;

    /// <summary>What the ranking says, at most five sentences.</summary>
    /// <param name="ranking">The ranking.</param>
    /// <param name="tyres">The tyres it ranks, in the order given to it.</param>
    /// <param name="leftOutCount">How many do not fit.</param>
    public static string Summary(TyreRanking ranking, IReadOnlyList<TyreOffer> tyres, int leftOutCount)
    {
        ArgumentNullException.ThrowIfNull(ranking);
        ArgumentNullException.ThrowIfNull(tyres);
        var first = ranking.Tyres[0];
        var sentences = new List<string> { FormattableString.Invariant($"First for this use: {tyres[first.Index].Id}, {first.Score.Value:0} of 100 points{Best(first)}.") };
        if (ranking is { FirstIsBest: { } ahead, Tyres: [_, var second, ..] })
        {
            var name = tyres[second.Index].Id;
            sentences.Add(ahead >= Sure
                ? FormattableString.Invariant($"{name} follows with {second.Score.Value:0}.")
                : FormattableString.Invariant($"{name} is as good as level ({second.Score.Value:0} points; the order holds in {100 * ahead:0} of 100 cases): choose by price, or by a test of both."));
            if (Nearest(ranking.Flips) is { } flip)
                sentences.Add(FormattableString.Invariant($"They change places where {Name(flip.Criterion)} counts {Pct(flip.FlipsAtShare!.Value)} instead of {Pct(flip.Share)}."));
        }

        if (first.Parts is [{ Criterion: TyreCriterion.Price }]) sentences.Add("Nothing but prices counts here: this is an order of price.");
        if (ranking.Unranked.Count > 0) sentences.Add($"{string.Join(" and ", ranking.Unranked.Select(place => tyres[place].Id))} cannot be ranked: {OnlyPriced}.");
        if (leftOutCount > 0) sentences.Add(leftOutCount == 1 ? "1 tyre is not ranked: it does not fit, or may not carry the car." : FormattableString.Invariant($"{leftOutCount} tyres are not ranked: they do not fit, or may not carry the car."));
        return string.Join(' ', sentences);
    }

    /// <summary>Why a tyre has no place in the order, as a clause.</summary>
    public const string OnlyPriced = "of what counts, nothing but the price is known";

    /// <summary>What is said where none fits.</summary>
    /// <param name="count">How many were asked about.</param>
    public static string NothingFits(int count) => count == 1 ? "This tyre does not fit, or may not carry the car: its fit says why." : "None of these tyres fits, or none may carry the car: the fit of each says why.";

    /// <summary>A criterion as it stands in a sentence.</summary>
    public static string Name(TyreCriterion criterion) => criterion switch
    {
        TyreCriterion.WetGrip => "grip in the wet",
        TyreCriterion.DryGrip => "grip in the dry",
        TyreCriterion.TreadLife => "tread life",
        TyreCriterion.HeatResistance => "resistance to heat",
        TyreCriterion.RollingResistance => "rolling resistance",
        TyreCriterion.Noise => "noise",
        _ => "price",
    };

    private static string Pct(double share) => (100 * share).ToString("0", CultureInfo.InvariantCulture) + " %";

    private static string Best(RankedTyre tyre)
    {
        var told = tyre.Parts.Where(part => part.ToldBy is not null).OrderByDescending(part => part.Points).Take(2).Select(part => Name(part.Criterion)).ToArray();
        return told.Length == 0 ? "" : $", most of them for {string.Join(" and ", told)}";
    }

    private static WeightFlip? Nearest(IReadOnlyList<WeightFlip> flips)
    {
        WeightFlip? nearest = null;
        foreach (var flip in flips)
        {
            if (flip.FlipsAtShare is { } at && !(Math.Abs(at - flip.Share) >= Math.Abs((nearest?.FlipsAtShare - nearest?.Share) ?? double.PositiveInfinity))) nearest = flip;
        }

        return nearest;
    }
}

/// <summary>The cautions that go with a choice of tyres.</summary>
public static class RankingCautions
{
    private static readonly Caution Grades = new(
        "gradesAreMakersOwn",
        "Treadwear, traction and temperature grades are given by each maker to its own tyres: they compare tyres of one maker better than those of two. No grade or label says how a tyre behaves on a track or when worn.");

    private static readonly Caution Track = new(
        "trackTyresOnTheRoad",
        "Semi-slick and slick tyres may be forbidden on the road, grip poorly when cold and lose far more grip in standing water. Local law decides where they may be used.");

    private static readonly Caution Rating = new(
        "checkRatings",
        "Load index and speed symbol must be at least what the vehicle's papers ask for, whatever the ranking says; have tyres fitted by a trained workshop.");

    /// <summary>The cautions for a list of tyres.</summary>
    public static IReadOnlyList<Caution> For(IReadOnlyList<TyreOffer> tyres)
    {
        ArgumentNullException.ThrowIfNull(tyres);
        return tyres.Any(tyre => tyre.Category is TyreCategory.SemiSlick or TyreCategory.Slick) ? [Track, Rating, Grades] : [Rating, Grades];
    }
}
