using System.Diagnostics.CodeAnalysis;
using Microsoft.AspNetCore.Http.HttpResults;
using SetupService.Api.Drawings;
using SetupService.Api.Http;
using SetupService.Api.Http.Problems;
using SetupService.Api.Http.Queries;
using SetupService.Domain.Wear.Forecast;
using SetupService.Domain.Wear.Readings;

namespace SetupService.Api.Wear.Forecast;

/// <summary>The calls that forecast a tyre's life and draw it.</summary>
internal static class ForecastEndpoint
{
    public static void MapForecast(this RouteGroupBuilder group)
    {
        group.MapPost("/forecast", Forecast)
            .WithQuery(QueryParameters.Units)
            .WithExample("wear-forecast")
            .WithName("wearForecast")
            .WithSummary("How fast does this tyre wear, and how long does it last?")
            .WithDescription("Wear per 1000 km of road and per lap for both shoulders and the centre, from tread depths read at several distances, with 90 % ranges; what is left to the limit, which zone ends the tyre, what turning it on its rim or swapping it gains, what a lap costs. Fewer than four readings at different distances give the wear so far and no forecast.");
        group.MapPost("/forecast/chart", Chart)
            .WithQuery(QueryParameters.Units, QueryParameters.WidthPx)
            .WithExample("wear-forecast")
            .WithName("wearForecastChart")
            .WithSummary("The forecast as charts")
            .WithDescription("Takes the body of forecast and draws the depths read, the lines fitted to them and their 90 % ranges down to the limit.");
    }

    private static Results<Answer<ForecastAnswer>, Problem> Forecast(Body<ForecastRequest> body, QueryReader query) =>
        TryForecast(body, out var forecast, out var problem)
            ? new Answer<ForecastAnswer>(ForecastMapper.ToAnswer(body.Value!, forecast, query.Units))
            : problem;

    private static Results<SvgAnswer, Problem> Chart(Body<ForecastRequest> body, QueryReader query)
    {
        if (!TryForecast(body, out var forecast, out var problem))
            return problem;
        var answer = ForecastMapper.ToAnswer(body.Value!, forecast, query.Units);
        return new SvgAnswer(ForecastChart.Draw(body.Value!, forecast, answer, query.Units, query.WidthPx));
    }

    private static bool TryForecast(
        Body<ForecastRequest> body, [NotNullWhen(true)] out TreadForecast? forecast, [NotNullWhen(false)] out Problem? problem)
    {
        forecast = null;
        problem = body.Problem!;
        if (body.Value is not { } request)
            return false;
        forecast = TreadForecast.Compute(new ForecastQuestion
        {
            Readings = DepthReadingDocument.ToDomain(request.Readings),
            LimitDepthMm = request.LimitDepthMm ?? TreadDepths.LegalLeastMm,
            GaugeErrorMm = request.GaugeErrorMm,
            OtherReadings = DepthReadingDocument.ToDomain(request.OtherTyre?.Readings),
        });
        return true;
    }
}
