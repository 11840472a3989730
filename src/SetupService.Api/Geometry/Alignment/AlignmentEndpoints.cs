using Microsoft.AspNetCore.Http.HttpResults;
using SetupService.Api.Http;
using SetupService.Api.Http.Problems;

namespace SetupService.Api.Geometry.Alignment;

/// <summary>The call about what an alignment sheet says.</summary>
internal static class AlignmentEndpoints
{
    public static void MapAlignment(this RouteGroupBuilder group) =>
        group.MapPost("/alignment", Figures)
            .WithExample("alignment")
            .WithName("alignment")
            .WithSummary("What do the angles of four wheels add up to?")
            .WithDescription("Total toe, thrust angle, each front toe against the thrust line, cross values, included angles and what they suggest, setback angle; toe in degrees, minutes and mm. Every reading may be left out; what then cannot be computed is null with the reason.");

    private static Results<Answer<AlignmentAnswer>, Problem> Figures(Body<AlignmentRequest> body) =>
        body.Value is { } request ? new Answer<AlignmentAnswer>(AlignmentAnswers.Of(request)) : body.Problem!;
}
