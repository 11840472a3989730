using Microsoft.AspNetCore.Http.HttpResults;
using SetupService.Api.Http;
using SetupService.Api.Http.Problems;
using SetupService.Api.Http.Queries;

namespace SetupService.Api.Plans.Ranking;

/// <summary>The call that ranks tyres for a use.</summary>
internal static class TyreRankingEndpoint
{
    public static void MapTyreRanking(this IEndpointRouteBuilder routes) =>
        routes.MapPost("/v1/tyres/ranking", Rank)
            .WithTags("Tyres")
            .WithQuery(QueryParameters.Units)
            .WithExample("tyre-ranking")
            .WithName("tyreRanking")
            .WithSummary("Which of these tyres suits this use best?")
            .WithDescription("Ranks a list of tyres by what sidewall, label, tests and price tell, for a mix of daily, wet and track use, by simple additive weighting: each score with its parts and what it leaves open, the weight at which first and second change places, what a lap and 1000 km cost, and whether the size fits and carries the car.");

    private static Results<Answer<TyreRankingAnswer>, Problem> Rank(Body<TyreRankingRequest> body, QueryReader query)
    {
        if (body.Value is not { } request)
            return body.Problem!;
        return TyreRankingMapper.Map(request).TryGet(out var tyres, out var refusal)
            ? new Answer<TyreRankingAnswer>(TyreRankingAnswers.Create(request, tyres, query.Units))
            : body.Refuse(refusal);
    }
}
