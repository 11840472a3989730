using Microsoft.AspNetCore.Http.HttpResults;
using SetupService.Api.Drawings;
using SetupService.Api.Http;
using SetupService.Api.Http.Problems;
using SetupService.Api.Http.Queries;

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
            .WithSummary("How fast do these tyres wear, and how long do they last?")
            .WithDescription("Wear per 1000 km and per lap across up to four treads, with 90 % ranges; what is left, what ends a tyre, what swapping gains. Two readings: roughly.");
        group.MapPost("/forecast/chart", Chart)
            .WithQuery(QueryParameters.Units, QueryParameters.WidthPx)
            .WithExample("wear-forecast")
            .WithName("wearForecastChart")
            .WithSummary("The forecast as charts")
            .WithDescription("Takes the body of forecast and draws the depths read, the lines fitted to them and their 90 % ranges down to the limit.");
    }

    private static Results<Answer<ForecastAnswer>, Problem> Forecast(Body<ForecastRequest> body, QueryReader query) => body.Value is { } request
        ? new Answer<ForecastAnswer>(ForecastMapper.ToAnswer(request, ForecastMapper.Compute(request), query.Units))
        : body.Problem!;

    private static Results<SvgAnswer, Problem> Chart(Body<ForecastRequest> body, QueryReader query)
    {
        if (body.Value is not { } request)
            return body.Problem!;
        var car = ForecastMapper.Compute(request);
        return new SvgAnswer(ForecastChart.Draw(request, car, query.Units, query.WidthPx));
    }
}
