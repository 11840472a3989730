using Microsoft.AspNetCore.Http.HttpResults;
using SetupService.Api.Drawings;
using SetupService.Api.Drawings.Corners;
using SetupService.Api.Geometry.Sweeps;
using SetupService.Api.Http;
using SetupService.Api.Http.Problems;
using SetupService.Api.Http.Queries;
using SetupService.Api.Vehicles;
using SetupService.Domain.Suspension.Kinematics;
using SetupService.Domain.Suspension.Sweep;

namespace SetupService.Api.Geometry.Views;

/// <summary>The call that draws a corner.</summary>
internal static class ViewEndpoints
{
    public static void MapViews(this RouteGroupBuilder group) =>
        group.MapPost("/drawing", Draw)
            .WithQuery(QueryParameters.Units)
            .WithExample("geometry-drawing")
            .WithProblems(ProblemTypes.NotComputable)
            .WithName("geometryDrawing")
            .WithSummary("The corner as a picture, from behind and from its side")
            .WithDescription("The left corner at one wheel position as SVG in millimetres: links, wheel, steering axis, instant centres, roll centre, scrub radius and trail.");

    private static Results<SvgAnswer, Problem> Draw(Body<CornerDrawingRequest> body, QueryReader query)
    {
        if (body.Value is not { } request)
            return body.Problem!;
        if (!SuspensionMapper.Map(request.Suspension).Under("suspension").TryGet(out var suspension, out var refusal))
            return body.Refuse(refusal);

        var corner = MechanismBuilder.Build(SweepInputs.Setting(suspension, request.Alignment, request.LoadedRadiusMm, request.Motion));
        if (PositionTracker.Start(corner) is not { } tracker)
            return GeometryProblems.NothingHolds();
        var (travelMm, rackMm) = (request.TravelMm ?? 0, request.RackMm ?? 0);
        return tracker.TryReach(travelMm, rackMm, out var state)
            ? new SvgAnswer(CornerViewsDrawing.Draw(ViewsOfCorner.Of(request, corner, state, query.Units), query.Units))
            : GeometryProblems.NothingReached(ReachableTravel.Of(corner), UnreachablePosition.Of(corner, travelMm, rackMm, state));
    }
}
