using SetupService.Api.Fitment.Batch;
using SetupService.Api.Fitment.CarCheck;
using SetupService.Api.Fitment.Catalogue;
using SetupService.Api.Fitment.Check;
using SetupService.Api.Fitment.Compare;
using SetupService.Api.Fitment.Pictures;
using SetupService.Api.Fitment.Report;
using SetupService.Api.Fitment.Window;

namespace SetupService.Api.Fitment;

/// <summary>The calls that check whether wheels and tyres fit.</summary>
internal static class FitmentEndpoints
{
    public static void MapFitment(this IEndpointRouteBuilder routes)
    {
        var group = routes.MapGroup("/v1/fitment").WithTags("Fitment");
        group.MapComparison();
        group.MapCheck();
        group.MapReport();
        group.MapCarCheck();
        group.MapPictures();
        group.MapWindow();
        group.MapFitmentBatch();
        group.MapCatalogue();
    }
}
