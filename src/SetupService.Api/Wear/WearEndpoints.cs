using SetupService.Api.Wear.BeforeAfter;
using SetupService.Api.Wear.Diagnosis;
using SetupService.Api.Wear.Forecast;
using SetupService.Api.Wear.Temperatures;

namespace SetupService.Api.Wear;

/// <summary>The calls about what tyres say, how long they last, and whether a change worked.</summary>
internal static class WearEndpoints
{
    public static void MapWear(this IEndpointRouteBuilder routes)
    {
        var group = routes.MapGroup("/v1/wear").WithTags("Wear");
        group.MapDiagnosis();
        group.MapTemperatures();
        group.MapForecast();
        group.MapBeforeAfter();
    }
}
