using System.Globalization;
using SetupService.Api.Http.Shared;
using SetupService.Domain.Answers;
using SetupService.Domain.Wear.Diagnosis;
using SetupService.Domain.Wear.Pressures;
using SetupService.Domain.Wear.Readings;
using SetupService.Domain.Wear.TreadWear;

namespace SetupService.Api.Wear.Diagnosis;

/// <summary>What a diagnosis used although nobody gave it.</summary>
internal static class DiagnosisAssumptions
{
    private const string CommonPractice = "common practice, no source";
    private const string Judgement = "judgement, no source";

    /// <summary>All of it.</summary>
    public static AssumptionResponse[] List(DiagnosedCar car)
    {
        var list = new List<AssumptionResponse>();
        var use = car.Request.Use;
        var share = TrackShare.Compute(car.Study.Case.Use);
        if (use?.RoadKm is null || use.TrackLaps is null)
            list.Add(Part("/use", share.Value, null, Judgement, "Value is the share of wear expected of the track, because the road distance or the laps are not given; a clock not given is unknown, so that what is ordinary is taken wider."));
        else if (use.TrackLaps > 0)
            list.Add(Part("/use", share.Value, null, Judgement, FormattableString.Invariant($"Value is the share of wear that comes of the track, a given distance of it taken to wear {TrackShare.TrackByRoad:0} times as fast as one of road.")));
        if (use is { TrackLaps: > 0, LapKm: null }) list.Add(Part("/use/lapKm", TrackShare.UsualLapKm, null, Judgement, "The length of a lap is not given."));
        AddTyres(list, car);
        if (car.Request.ReadOn is null && car.Request.Tyres.Any(tyre => tyre.MadeWeek is not null))
            list.Add(Part("/readOn", null, car.Today.ToString("yyyy-MM-dd", CultureInfo.InvariantCulture), "the service's clock", "Ages are counted to today."));
        AddModel(list, car);
        return [.. list];
    }

    private static void AddTyres(List<AssumptionResponse> list, DiagnosedCar car)
    {
        for (var i = 0; i < car.Request.Tyres.Length; i++)
        {
            var (tyre, place) = (car.Request.Tyres[i], FormattableString.Invariant($"/tyres/{i}"));
            var hasDepths = tyre.DepthMm is not null || tyre.Zones is not null;
            if (hasDepths && tyre.NewDepthMm is null)
                list.Add(Part(place + "/newDepthMm", TreadFigures.UsualNewDepthMm.Value, null, CommonPractice, "It only sets the scale of wear; its uncertainty is taken as a twelfth of it."));
            if (hasDepths && tyre.GaugeErrorMm is null)
                list.Add(Part(place + "/gaugeErrorMm", TreadDepths.UsualGaugeErrorMm, null, Judgement, "A hand gauge in ordinary use; a laboratory's reading is some six times as close (Tire Sci. Technol. 4(2))."));
            if (tyre.DepthMm is not null)
                list.Add(Part(place + "/depthMm", TreadZone.UsualPct.Outer, null, CommonPractice, "Value is where outer was read, percent across from the outer edge; centre is taken at 50, inner at 85."));
            if (tyre.PressureKpa is { Cold: null, Hot: not null, AimHot: not null })
            {
                list.Add(Part(place + "/pressureKpa/cold", TypicalRise.ColdByHot.Value, null, TypicalRise.Source, "Without the cold pressure the warming is unknown. Value is the change of the cold setting by the change hot that it makes, by absolute temperatures of a gas that warms as it usually does on a track.")
                    with
                { Plausible = new PlausibleResponse { Lower = TypicalRise.ColdByHot.Lower, Upper = TypicalRise.ColdByHot.Upper } });
            }

            if (tyre is { TemperatureC: not null, TemperatureBy: null })
                list.Add(Part(place + "/temperatureBy", null, "infrared", Judgement, "The less exact thermometer is taken."));
        }
    }

    private static void AddModel(List<AssumptionResponse> list, DiagnosedCar car)
    {
        if (car.Car is not { } reading) return;
        if (car.Request.Use?.LateralG is null) list.Add(Part("/use/lateralG", TrackBends.UsualLateralG, null, CommonPractice, "Corners of the track are taken at 1.1, 0.95 and 0.75 times this, left and right alike; the wear model counts what that misses, and what nobody told, as 1.8° of inclination."));
        if (car.Request.Use?.CornerRadiusM is null) list.Add(Part("/use/cornerRadiusM", TrackBends.UsualRadiusM, null, CommonPractice, "Tighter corners steer the wheels more, and lean them by their caster."));
        list.Add(Part("/use/leftShare", 0.5, null, Judgement, "Left and right corners are taken to be equally many; a track with more of one kind wears one side more."));
        list.AddRange(reading.Assumed.Select(one => AssumptionResponse.From(one.ToAssumption()) with { Plausible = new PlausibleResponse { Lower = one.Lower, Upper = one.Upper } }));
        list.AddRange(reading.Notes.Select(AssumptionResponse.From));
    }

    private static AssumptionResponse Part(string input, double? value, string? text, string source, string reason) =>
        AssumptionResponse.From(new Assumption(input, value, text, source, reason));
}
