using Microsoft.AspNetCore.Http.HttpResults;
using SetupService.Api.Http;
using SetupService.Api.Http.Problems;
using SetupService.Api.Vehicles;

namespace SetupService.Api.Geometry.Alignment;

/// <summary>The call about what an alignment sheet says.</summary>
internal static class AlignmentEndpoint
{
    public static void MapAlignment(this RouteGroupBuilder group) =>
        group.MapPost("/alignment", Figures)
            .WithExample("alignment")
            .WithName("alignment")
            .WithSummary("What do the angles of four wheels add up to?")
            .WithDescription("Total toe, thrust angle, each front toe against the thrust line, cross values, included angles and what they suggest, setback angle; toe in degrees, minutes and mm; each angle beside the range given for it. Every reading may be left out; what then cannot be computed is null with the reason.")
            .WithProblems(ProblemTypes.NotComputable);

    private static Results<Answer<AlignmentAnswer>, Problem> Figures(Body<AlignmentRequest> body)
    {
        if (body.Value is not { } request)
            return body.Problem!;
        if (!VehicleMapper.Map(request.Vehicle).Under("vehicle").TryGet(out var vehicle, out var refusal))
            return body.Refuse(refusal);
        return AlignmentMapper.ToAnswer(request, vehicle, out var problem) is { } answer ? new Answer<AlignmentAnswer>(answer) : problem!;
    }
}
