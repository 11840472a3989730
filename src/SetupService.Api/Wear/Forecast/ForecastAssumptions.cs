using SetupService.Api.Http.Shared;
using SetupService.Domain.Answers;
using SetupService.Domain.Wear.Forecast;
using SetupService.Domain.Wear.Readings;

namespace SetupService.Api.Wear.Forecast;

/// <summary>What a forecast used although nobody gave it.</summary>
internal static class ForecastAssumptions
{
    /// <summary>The list.</summary>
    public static AssumptionResponse[] List(ForecastRequest request, TreadForecast forecast)
    {
        var list = new List<Assumption>();
        if (request.LimitDepthMm is null)
            list.Add(new("/limitDepthMm", TreadDepths.LegalLeastMm, null, "the least depth most countries allow, from memory; local law decides", "The tyre counts as done at this depth in any zone."));
        if (request.GaugeErrorMm is null)
            list.Add(new("/gaugeErrorMm", TreadDepths.UsualGaugeErrorMm, null, "judgement: a hand gauge in untrained hands", "Judges whether a reading strays from the line and whether tread grows; the ranges come from the readings' own scatter."));
        if (forecast.Fit is not { } fit) return AssumptionResponse.From(list);
        list.Add(new("/readings", null, "wear is a straight line over distance", "a study of 1975, abstract, named in docs/methods/wear-forecast: r² above 99 % for 27 tyres", "What comes wears like what was; a new tyre wears faster over its first kilometres, and another season, track or driver differs by up to 30 %."));
        if (fit.Scatter.IsFloor)
            list.Add(new("/readings", fit.Scatter.StandardDeviationMm, null, "rounding to 0.1 mm, or 0.3 of the gauge error given; derived", "The readings lie closer to the line than a gauge reads; this scatter in mm is taken in its place, so that chance does not make the ranges too narrow."));
        if (forecast.Swapping is not null)
            list.Add(new("/otherTyre", null, "rates stay with the place on the car", "common practice, no source", "After a swap each tyre goes on at the other's rates, outer shoulder for outer shoulder."));
        return AssumptionResponse.From(list);
    }
}
