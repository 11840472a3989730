using SetupService.Api.Wear.BeforeAfter;
using SetupService.Api.Wear.Diagnosis;
using SetupService.Api.Wear.Forecast;
using SetupService.Api.Wear.Temperatures;

namespace SetupService.Api.Wear;

/// <summary>The calls about tyre wear: its causes, temperatures and pressures, life, and the effect of a change.</summary>
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
