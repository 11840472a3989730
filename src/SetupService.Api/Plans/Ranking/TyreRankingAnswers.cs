using SetupService.Api.Http.Shared;
using SetupService.Domain.Answers;
using SetupService.Domain.Fitment.Words;
using SetupService.Domain.Planning.Ranking;

namespace SetupService.Api.Plans.Ranking;

/// <summary>Puts down a ranking with all it rests on.</summary>
internal static class TyreRankingAnswers
{
    private const string Judgement = "common practice, no source";

    /// <summary>The answer.</summary>
    public static TyreRankingAnswer Create(TyreRankingRequest request, MappedTyres tyres, UnitSystem units)
    {
        // What does not fit or may not carry the car is no choice, however well it grips.
        var fitting = Enumerable.Range(0, tyres.Offers.Count).Where(i => tyres.Fits?[i].Sheet.Verdict != CheckStatus.Fail).ToArray();
        var offers = Array.ConvertAll(fitting, i => tyres.Offers[i]);
        var leftOut = Enumerable.Range(0, tyres.Offers.Count).Except(fitting).ToArray();
        var ranking = offers.Length == 0 ? null : TyreRanking.Compute(offers, tyres.Weights);
        var rows = new List<RankedTyreResponse>(tyres.Offers.Count);
        for (var place = 0; place < ranking?.Tyres.Count; place++) rows.Add(Row(fitting[ranking.Tyres[place].Index], place + 1, ranking.Tyres[place]));
        rows.AddRange((ranking?.Unranked ?? []).Select(i => Row(fitting[i], null, null)));
        rows.AddRange(leftOut.Select(i => Row(i, null, null)));
        return new TyreRankingAnswer
        {
            Summary = ranking is null ? RankingWords.NothingFits(tyres.Offers.Count) : RankingWords.Summary(ranking, offers, leftOut.Length),
            Tyres = [.. rows],
            FirstIsBestPct = 100 * ranking?.FirstIsBest,
            Criteria = ranking is null ? [] : Criteria(ranking),
            Unknown = [.. Gaps(request, tyres.Offers, fitting, rows, ranking)],
            Method = "tyre-ranking",
            Edition = Edition.Current,
            Next = NextCalls.AfterRanking,
            Assumptions = [.. Assumptions(request, offers)],
            Cautions = CautionResponse.From(RankingCautions.For(offers)),
        };

        RankedTyreResponse Row(int i, int? place, RankedTyre? ranked)
        {
            var offer = tyres.Offers[i];
            return new()
            {
                Id = offer.Id,
                Place = place,
                Score = UncertaintyResponse.From(ranked?.Score),
                Parts = ranked is null ? [] : [.. ranked.Parts.Select(part => new ScorePartResponse { Criterion = part.Criterion, Merit = part.Merit, ToldBy = part.ToldBy, Points = part.Points })],
                CostPer1000Km = UncertaintyResponse.From(TyreCost.PerUnit(offer, offer.LifeKm / 1000, Present(request.Present?.LifeKm / 1000))),
                CostPerLap = UncertaintyResponse.From(TyreCost.PerUnit(offer, offer.LifeLaps, Present(request.Present?.LifeLaps))),
                Fit = tyres.Fits?[i] is { } fit
                    ? new() { Verdict = fit.Sheet.Verdict, DecidedBy = fit.Sheet.DecidedBy.ToArray(), Summary = SummaryWords.Write(tyres.Car!, fit.Fitting, fit.Sheet, units) }
                    : null,
            };
        }

        (double TreadwearGrade, double Life)? Present(double? life) => life is { } known ? (request.Present!.TreadwearGrade, known) : null;
    }

    private static CriterionResponse[] Criteria(TyreRanking ranking) =>
    [
        .. ranking.Tyres[0].Parts.Select(part => new CriterionResponse
        {
            Criterion = part.Criterion,
            SharePct = part.Weight,
            FlipsAtSharePct = ranking.Flips.Where(flip => flip.Criterion == part.Criterion).Select(flip => 100 * flip.FlipsAtShare).FirstOrDefault(),
        }),
    ];

    private static IEnumerable<UnknownResponse> Gaps(TyreRankingRequest request, IReadOnlyList<TyreOffer> offers, int[] fitting, List<RankedTyreResponse> rows, TyreRanking? ranking)
    {
        if (request.Vehicle is null) yield return UnknownResponse.Create("fit", "needs the car the tyres are to go on", "/vehicle");
        if (ranking is { FirstIsBest: null }) yield return UnknownResponse.Create("/firstIsBestPct", "only one tyre is ranked");
        for (var i = 0; i < ranking?.Unranked.Count; i++)
            yield return UnknownResponse.Create(FormattableString.Invariant($"/tyres/{ranking.Tyres.Count + i}/place"), $"cannot be ranked: {RankingWords.OnlyPriced}", FormattableString.Invariant($"/tyres/{fitting[ranking.Unranked[i]]}"));
        if (ranking is null) yield return UnknownResponse.Create("/firstIsBestPct", "no tyre is ranked");
        if (Cost("costPer1000Km", rows.Count(row => row.CostPer1000Km is null), "lifeKm") is { } road) yield return road;
        if (Cost("costPerLap", rows.Count(row => row.CostPerLap is null), "lifeLaps") is { } track) yield return track;

        UnknownResponse? Cost(string name, int count, string life) => count == 0 ? null : UnknownResponse.Create(
            name,
            FormattableString.Invariant($"of {count} of {rows.Count} tyres: needs {(offers.All(offer => offer.Price is not null) ? "" : "the price, and ")}{life} of the tyre itself or its treadwear grade with {life} of those fitted now"),
            $"/present/{life}");
    }

    private static IEnumerable<AssumptionResponse> Assumptions(TyreRankingRequest request, TyreOffer[] offers)
    {
        if (request.Weights is null)
        {
            yield return Assumed("/weights", "the share of each criterion in criteria", Judgement, "What each use asks for, mixed by its share: how much grip, life, noise and price count is a matter of taste. Give weights to set your own.");
        }

        yield return Assumed(
            "/tyres", "scales from 0 to 1", "bounds of the classes: Regulation (EU) 1222/2009, Annex I, those of 2020/740 from memory; traction grades: 49 CFR 575.104, second-hand, temperature grades from memory; ends of the scales common practice, no source",
            "Each class is taken as the range it stands for, wherever in it the tyre lies.");
        if (Array.Exists(offers, offer => offer.DryTestPct is null && offer.Category is not null))
            yield return Assumed("/tyres/dryTestPct", "typical grip of the category", Judgement, "Without a test grip in the dry is told by what a tyre is made for; tyres of one category differ by a tenth.");
        if (Array.Exists(offers, offer => offer.TreadwearGrade is not null))
            yield return Assumed("/tyres/treadwearGrade", "off by a factor of 1.5 either way in the score, 2 in the cost", "judgement, no source", "Makers grade their own tyres, on the road and not on a track.");
    }

    private static AssumptionResponse Assumed(string input, string text, string source, string reason) => new() { Input = input, Value = null, Text = text, Source = source, Reason = reason };
}
