using SetupService.Api.Http.Shared;
using SetupService.Domain.Answers;
using SetupService.Domain.Wear.Forecast;
using SetupService.Domain.Wear.Readings;
using SetupService.Domain.Wear.StraightWear;

namespace SetupService.Api.Wear.Forecast;

/// <summary>What a forecast used although nobody gave it.</summary>
internal static class ForecastAssumptions
{
    /// <summary>The list.</summary>
    public static AssumptionResponse[] List(ForecastRequest request, CarForecast car)
    {
        var list = new List<AssumptionResponse>();
        if (request.LimitDepthMm is null)
            Add(new("/limitDepthMm", TreadDepths.LegalLeastMm, null, "the least depth most countries allow, from memory; local law decides", "A tyre counts as done at this depth in any zone."));
        for (var i = 0; i < request.Tyres.Length; i++)
        {
            var (given, forecast, path) = (request.Tyres[i], car.Tyres[i].Tread, FormattableString.Invariant($"/tyres/{i}"));
            if (given.GaugeErrorMm is null)
                Add(new(path + "/gaugeErrorMm", TreadDepths.UsualGaugeErrorMm, null, "judgement: a hand gauge in untrained hands", forecast.Fit is null ? "The ranges rest on it." : "Judges whether a reading strays from the line and whether tread grows; the ranges come from the readings' own scatter."));
            if (given.Readings[0].TrackLaps is null)
                Add(new(path + "/readings/0/trackLaps", null, "not counted", "the request", "Laps are not given: what the track wore, if it was used, is in the wear by road distance."));
            if (given.Readings[0].RoadKm is null)
                Add(new(path + "/readings/0/roadKm", null, "not counted", "the request", "Road distance is not given: what the road wore, if it was used, is in the wear by lap."));
            if (forecast.Fit?.Scatter is { IsFloor: true } scatter)
                Add(new(path + "/readings", scatter.StandardDeviationMm, null, "rounding to 0.1 mm, or 0.3 of the gauge error given; derived", "The readings lie closer to the line than a gauge reads; this scatter in mm is taken in its place, so that chance does not make the ranges too narrow."));
        }

        if (car.Tyres.Any(tyre => tyre.Tread.OfTyre == ForecastStatus.Rough))
        {
            AddUsual(UsualRates.RoadPer1000KmMm, UsualRates.RoadFactor, "wear on the road in mm per 1000 km", "published abrasion of some 300 cars, 0.106 mm per 1000 km, and a government report, 0.088; the width is judgement", UsualRates.RoadPer1000KmMm);
            AddUsual(UsualRates.TrackPerLapMm, UsualRates.TrackFactor, "wear on track in mm per lap", "judgement, no source", UsualRates.TrackPerLapMm);
        }

        if (car.Tyres.Any(tyre => tyre.Tread.Fit is not null))
        {
            Add(new("/tyres", null, "what comes wears like the later half of what was", "a study of 1975, abstract, named in docs/methods/wear-forecast: wear straight over distance, r² above 99 % for 27 tyres", "A new tyre wears faster at first, and another season, track or driver differs by up to 30 %."));
            list.Add(AssumptionResponse.From(new Assumption("/tyres", WearCurve.UsualChange, null, "judgement, no source", "Value is one standard deviation, as a share, of the rate to come against the mean rate where the readings do not show how wear bends.")));
        }

        if (car.Swaps.Count > 0)
            Add(new("/tyres", null, "tyres that swap are of one size, and rates stay with the place on the car", "common practice, no source", "After a swap each tyre goes on at the other's rates, outer shoulder for outer shoulder."));
        return [.. list];

        void Add(Assumption one) => list.Add(AssumptionResponse.From(one));

        void AddUsual(double value, double factor, string what, string source, double middle) => list.Add(
            AssumptionResponse.From(new Assumption("/tyres", value, null, source, $"Value is the usual {what}, which stands beside the readings where there are two or three; they outweigh it as wear exceeds the gauge's error.")) with
            {
                Plausible = new PlausibleResponse { Lower = middle / factor, Upper = middle * factor },
            });
    }
}
