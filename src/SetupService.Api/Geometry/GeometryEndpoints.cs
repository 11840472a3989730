using SetupService.Api.Geometry.Adjusting;
using SetupService.Api.Geometry.Alignment;
using SetupService.Api.Geometry.Steering;
using SetupService.Api.Geometry.Sweeps;
using SetupService.Api.Geometry.Views;

namespace SetupService.Api.Geometry;

/// <summary>The calls about what a suspension does with its wheel.</summary>
internal static class GeometryEndpoints
{
    public static void MapGeometry(this IEndpointRouteBuilder routes)
    {
        var group = routes.MapGroup("/v1/geometry").WithTags("Geometry");
        group.MapSweeps();
        group.MapAdjusting();
        group.MapSteering();
        group.MapAlignment();
        group.MapViews();
    }
}
