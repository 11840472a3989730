using Microsoft.AspNetCore.Http.HttpResults;
using SetupService.Api.Http;
using SetupService.Api.Http.Problems;
using SetupService.Api.Http.Queries;
using SetupService.Api.Http.Work;

namespace SetupService.Api.Geometry.Adjustments;

/// <summary>The call that adjusts a corner, and that finds the adjustment for wanted angles.</summary>
internal static class AdjustmentEndpoint
{
    public static void MapAdjustment(this RouteGroupBuilder group) =>
        group.MapPost("/adjustment", Adjust)
            .WithWork()
            .WithQuery(QueryParameters.Units)
            .WithExample("adjustment")
            .WithProblems(ProblemTypes.NotComputable)
            .WithName("adjustment")
            .WithSummary("What does an adjustment do, or which one gives the angles wanted?")
            .WithDescription("Top mount, knuckle eccentric, ball joints, arm, link and tie-rod lengths, rack height, pivots, hub shims, ride height: what they do together and what it costs elsewhere, toe reset where asked; or the least of them, within ranges, that reaches camber, caster or toe.");

    private static Results<Answer<AdjustmentAnswer>, Problem> Adjust(Body<AdjustmentRequest> body, QueryReader query, RequestWork work)
    {
        if (body.Value is not { } request)
            return body.Problem!;
        if (!CornerMapper.Map(request, request.Motion).TryGet(out var corner, out var refusal))
            return body.Refuse(refusal);
        return AdjustmentMapper.ToAnswer(request, corner, query.Units, work, out var problem) is { } answer
            ? new Answer<AdjustmentAnswer>(answer)
            : problem!;
    }
}
