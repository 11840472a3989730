using Microsoft.AspNetCore.Http.HttpResults;
using SetupService.Api.Drawings;
using SetupService.Api.Drawings.Corners;
using SetupService.Api.Http;
using SetupService.Api.Http.Problems;
using SetupService.Api.Http.Queries;
using SetupService.Api.Http.Work;
using SetupService.Domain.Suspension.Kinematics;
using SetupService.Domain.Suspension.Sweep;

namespace SetupService.Api.Geometry.Drawing;

/// <summary>The call that draws a corner.</summary>
internal static class DrawingEndpoint
{
    public static void MapDrawing(this RouteGroupBuilder group) =>
        group.MapPost("/drawing", Draw)
            .WithWork()
            .WithQuery(QueryParameters.Units)
            .WithExample("geometry-drawing")
            .WithProblems(ProblemTypes.NotComputable)
            .WithName("geometryDrawing")
            .WithSummary("The corner as a picture, from behind and from its side")
            .WithDescription("The left corner at one wheel position as SVG in millimetres: links, wheel, steering axis, instant centres, roll centre, scrub radius and trail.");

    private static Results<SvgAnswer, Problem> Draw(Body<DrawingRequest> body, QueryReader query, RequestWork work)
    {
        if (body.Value is not { } request)
            return body.Problem!;
        if (!CornerMapper.Map(request, request.Motion).TryGet(out var corner, out var refusal))
            return body.Refuse(refusal);

        var mechanism = corner.Suspension.Mechanism(corner.Setup)!;
        var rideMm = -corner.Setup.RideHeightChangeMm;
        if (!PoseContinuation.TryStart(mechanism, out var stated))
            return GeometryProblems.NotKnownHere(corner);
        var last = stated;
        if (!PoseContinuation.TryReach(mechanism, stated, rideMm, 0, ref last, out _, work.Budget))
            return GeometryProblems.NotKnownHere(corner);
        var (travelMm, rackMm) = (request.TravelMm ?? 0, request.RackMm ?? 0);
        if (PoseContinuation.TryReach(mechanism, stated, rideMm + travelMm, rackMm, ref last, out var pose, work.Budget))
            return new SvgAnswer(CornerViewsDrawing.Draw(DrawingMapper.Views(corner, mechanism, pose, query.Units), query.Units));
        var (fromMm, toMm) = ReachableTravel.Find(mechanism);
        var missed = UnreachablePosition.From(mechanism, rideMm + travelMm, rackMm, pose);
        return GeometryProblems.NothingReached((fromMm - rideMm, toMm - rideMm), missed with { TravelMm = travelMm, LastTravelMm = missed.LastTravelMm - rideMm });
    }
}
