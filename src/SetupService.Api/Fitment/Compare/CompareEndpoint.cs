using Microsoft.AspNetCore.Http.HttpResults;
using SetupService.Api.Http;
using SetupService.Api.Http.Problems;
using SetupService.Api.Http.Queries;
using SetupService.Domain.Fitment;

namespace SetupService.Api.Fitment.Compare;

/// <summary>The call that compares two fittings on one hub.</summary>
internal static class CompareEndpoint
{
    public static void MapComparison(this RouteGroupBuilder group) =>
        group.MapPost("/comparison", Compare)
            .WithQuery(QueryParameters.Units)
            .WithExample("fitment-comparison")
            .WithProblems(ProblemTypes.NotComputable)
            .WithName("fitmentComparison")
            .WithSummary("What changes with another wheel and tyre?")
            .WithDescription("Compares two fittings on one hub: edges, track, scrub radius, diameter, gearing, mass and true speed. Nominal figures.");

    private static Results<Answer<ComparisonAnswer>, Problem> Compare(Body<ComparisonRequest> body, QueryReader query)
    {
        if (body.Value is not { } request)
            return body.Problem!;
        if (!CompareMapper.Map(request).TryGet(out var fittings, out var refusal))
            return body.Refuse(refusal);

        if (fittings is not { Current.Tyre.Marking.HasDimensions: true, Candidate.Tyre.Marking.HasDimensions: true })
            return SizeProblems.NotKnown(("/current", fittings.Current.Tyre), ("/candidate", fittings.Candidate.Tyre));
        var indicatedKmh = request.IndicatedKmh ?? Comparison.DefaultIndicatedKmh;
        return new Answer<ComparisonAnswer>(
            ComparisonAnswer.From(Comparison.Between(fittings.Current, fittings.Candidate, request.SteeringAxisInclinationDeg, indicatedKmh), query.Units));
    }
}
