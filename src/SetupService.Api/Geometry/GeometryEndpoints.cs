using SetupService.Api.Geometry.Adjustments;
using SetupService.Api.Geometry.Alignment;
using SetupService.Api.Geometry.Drawing;
using SetupService.Api.Geometry.Steering;
using SetupService.Api.Geometry.TravelSweeps;

namespace SetupService.Api.Geometry;

/// <summary>The calls about what a suspension does with its wheel.</summary>
internal static class GeometryEndpoints
{
    public static void MapGeometry(this IEndpointRouteBuilder routes)
    {
        var group = routes.MapGroup("/v1/geometry").WithTags("Geometry");
        group.MapTravelSweep();
        group.MapAdjustment();
        group.MapSteering();
        group.MapAlignment();
        group.MapDrawing();
    }
}
