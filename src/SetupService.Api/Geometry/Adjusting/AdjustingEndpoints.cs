using Microsoft.AspNetCore.Http.HttpResults;
using SetupService.Api.Geometry.Sweeps;
using SetupService.Api.Http;
using SetupService.Api.Http.Problems;
using SetupService.Api.Vehicles;

namespace SetupService.Api.Geometry.Adjusting;

/// <summary>The calls that adjust a corner, and that find the adjustment for wanted angles.</summary>
internal static class AdjustingEndpoints
{
    public static void MapAdjusting(this RouteGroupBuilder group)
    {
        group.MapPost("/top-mount-move", MoveTopMount)
            .WithExample("top-mount-move")
            .WithProblems(ProblemTypes.NotComputable)
            .WithName("topMountMove")
            .WithSummary("What does moving the strut's top mount do, or which movement gives the angles wanted?")
            .WithDescription("Moves a strut's top mount at an unchanged wheel-centre height, toe reset when asked, and says what it costs elsewhere; or finds the least movement within limits that reaches a camber, a caster or both.");
        group.MapPost("/adjustment", Adjust)
            .WithExample("adjustment")
            .WithProblems(ProblemTypes.NotComputable)
            .WithName("adjustment")
            .WithSummary("The same for everything else a workshop can turn, shim or swap")
            .WithDescription("Knuckle eccentric, ball joints, arm, link and tie-rod lengths, rack height, pivots, hub shims, ride height: what they do together, or the least of them that reaches wanted angles.");
    }

    private static Results<Answer<TopMountMoveAnswer>, Problem> MoveTopMount(Body<TopMountMoveRequest> body, CancellationToken cancellation)
    {
        if (body.Value is not { } request)
            return body.Problem!;
        var asked = ChangeAsked.Of(request);
        var suspension = SuspensionMapper.Model(request.Suspension, request.Alignment);
        var setup = SweepInputs.Setup(suspension, request.Alignment, request.LoadedRadiusMm);
        return CornerChanges.Of(suspension, setup, asked, cancellation, out var problem) is { } change
            ? new Answer<TopMountMoveAnswer>(new(change, AdjustingAssumptions.Of(request, suspension)))
            : problem!;
    }

    private static Results<Answer<AdjustmentAnswer>, Problem> Adjust(Body<AdjustmentRequest> body, CancellationToken cancellation)
    {
        if (body.Value is not { } request)
            return body.Problem!;
        var asked = ChangeAsked.Of(request);
        var suspension = SuspensionMapper.Model(request.Suspension, request.Alignment);
        var setup = SweepInputs.Setup(suspension, request.Alignment, request.LoadedRadiusMm, request.Motion);
        return CornerChanges.Of(suspension, setup, asked, cancellation, out var problem) is { } change
            ? new Answer<AdjustmentAnswer>(new(change, AdjustingAssumptions.Of(request, suspension)))
            : problem!;
    }
}
