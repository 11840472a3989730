using Microsoft.AspNetCore.Http.HttpResults;
using SetupService.Api.Drawings;
using SetupService.Api.Http;
using SetupService.Api.Http.Problems;
using SetupService.Api.Http.Queries;
using SetupService.Domain.Wear.Forecast;
using SetupService.Domain.Wear.Readings;

namespace SetupService.Api.Wear.Forecast;

/// <summary>The call that tells how long a tyre lasts.</summary>
internal static class ForecastEndpoints
{
    private static readonly ForecastRules Rules = new();

    public static void MapForecast(this RouteGroupBuilder group) =>
        group.MapPost("/forecast", Forecast)
            .WithQuery(QueryParameters.Units)
            .WithExample("wear-forecast")
            .WithName("wearForecast")
            .WithSummary("How fast does this tyre wear, and how long does it last?")
            .WithDescription("Wear per 1000 km of road and per lap for both shoulders and the centre, from tread depths read as the clocks ran on, with 90 % ranges; what is left to the limit, which zone ends the tyre, what turning it on its rim or swapping it gains, what a lap costs. Fewer than four readings at different distances give the wear so far and no forecast. With Accept: image/svg+xml the same as charts.");

    private static Results<PictureOr<ForecastAnswer>, Problem> Forecast(Body<ForecastRequest> body, PictureChoice picture, QueryReader query)
    {
        if (body.Value is not { } request)
            return body.Problem!;
        if (!Rules.Validate(request).IsValid)
            return body.Refuse();
        var forecast = TreadForecast.Of(new ForecastQuestion
        {
            Readings = DepthReadingDocument.ToDomain(request.Readings),
            LimitDepthMm = request.LimitDepthMm ?? TreadDepths.LegalLeastMm,
            GaugeErrorMm = request.GaugeErrorMm,
            OtherReadings = DepthReadingDocument.ToDomain(request.OtherTyre?.Readings),
        });
        var answer = ForecastAnswers.Of(request, forecast, query.Units);
        return picture.IsWanted
            ? new PictureOr<ForecastAnswer>(new SvgAnswer(ForecastChart.Draw(request, forecast, answer, query.Units)))
            : new PictureOr<ForecastAnswer>(answer);
    }
}
