using SetupService.Api.Http.Shared;
using SetupService.Domain.Answers;
using SetupService.Domain.Handling.Cornering;
using SetupService.Domain.Vehicles;
using SetupService.Domain.Wear.Pressures;
using SetupService.Domain.Wear.Readings;
using SetupService.Domain.Wear.Temperatures;

namespace SetupService.Api.Wear.Temperatures;

/// <summary>What a call on temperatures and pressures assumes.</summary>
internal static class TemperaturesAssumptions
{
    private const string CommonPractice = "common practice, no source";

    private static readonly Assumption DryGas = new(
        "/tyres", null, "dry ideal gas in a fixed room, hot pressures read right after the lap", "ideal gas law",
        "Moist air rises a little more, as water in the tyre turns to vapour; a tyre that stretches rises a little less; gas read late has cooled.");

    /// <summary>All of it.</summary>
    public static AssumptionResponse[] List(HeatReadings readings, TyrePressure?[] pressures, TyreHeatResponse[] tyres)
    {
        var list = new List<AssumptionResponse>();
        AddTreads(list, readings, tyres);
        list.AddRange(OfPressures(readings, pressures));
        return [.. list];
    }

    /// <summary>What the pressures alone rest on.</summary>
    public static List<AssumptionResponse> OfPressures(HeatReadings readings, TyrePressure?[] pressures)
    {
        var list = new List<AssumptionResponse>();
        TyrePressure[] given = [.. pressures.OfType<TyrePressure>()];
        if (given.Any(tyre => tyre.Reading is { ColdKpa: not null, HotKpa: not null })) AddGas(list, readings, given);
        if (given.Any(tyre => tyre.IsRiseAssumed))
        {
            list.Add(Part("/tyres", TypicalRise.RiseC, null, TypicalRise.Source, "Value is how much hotter, in °C, the gas gets than the cold tyre, where only the hot pressure was read: what is left cold rests on it.") with
            {
                Plausible = new PlausibleResponse { Lower = TypicalRise.LeastRiseC, Upper = TypicalRise.MostRiseC },
            });
        }

        AddLoads(list, readings, pressures);
        return list;
    }

    private static void AddTreads(List<AssumptionResponse> list, HeatReadings readings, TyreHeatResponse[] tyres)
    {
        for (var i = 0; i < tyres.Length; i++)
        {
            if (tyres[i].Tread is null || readings.Request.Tyres[i].TemperatureBy is not null) continue;
            list.Add(Part(FormattableString.Invariant($"/tyres/{i}/temperatureBy"), null, "infrared", CommonPractice, "What it was read with is not given; infrared is the less exact."));
        }

        foreach (var by in readings.Treads.Select(tread => tread.By).Distinct().Order())
        {
            var with = by == Thermometer.Probe ? "with a needle" : "by infrared";
            list.Add(Part("/tyres", ThermometerErrors.StandardErrorC(by), null, ThermometerErrors.Source, $"Value is one standard deviation, in °C, of one reading {with}; every range of the tread rests on it."));
        }

        if (tyres.All(tyre => tyre.Tread?.AtLapEndC is null)) return;
        if (readings.Request.AirTemperatureC is null)
            list.Add(Part("/airTemperatureC", readings.AirC, null, "coldTemperatureC of the request", "The air the treads cooled towards is not given; it is taken to be as cold as the tyres were."));
        foreach (var by in readings.Treads.Where(tread => tread.SecondsAfterLap is not null).Select(tread => tread.By).Distinct().Order())
        {
            var (leastS, mostS) = TreadCooling.PlausibleTimeConstantS(by);
            var with = by == Thermometer.Probe ? ", as a needle reads it under the surface," : ", as infrared reads its surface,";
            list.Add(Part("/tyres", TreadCooling.TimeConstantS(by), null, TreadCooling.Source, $"Value is the time, in s, in which the tread{with} loses all but 37 % of its excess over the air; only atLapEndC rests on it.") with
            {
                Plausible = new PlausibleResponse { Lower = leastS, Upper = mostS },
            });
        }
    }

    private static void AddGas(List<AssumptionResponse> list, HeatReadings readings, TyrePressure[] tyres)
    {
        var request = readings.Request;
        list.Add(AssumptionResponse.From(DryGas));
        if (request.GaugeErrorKpa is null)
            list.Add(Part("/gaugeErrorKpa", PressureErrors.UsualGaugeErrorKpa, null, CommonPractice, "One standard deviation of one reading of a hand gauge; every range of the pressures rests on it."));
        if (request.AirPressureKpa is null)
        {
            list.Add(Part("/airPressureKpa", readings.Conditions.AirKpa, null, "ISO 2533 standard atmosphere, constants from memory", request.AltitudeM is null
                ? "Neither air pressure nor altitude is given; sea level is taken."
                : "The air's pressure is not given; it is the standard atmosphere's at the altitude, which the weather moves by a few percent."));
        }

        if (request.ColdTemperatureC is not null)
            list.Add(Part("/coldTemperatureC", PressureErrors.UsualColdErrorC, null, "judgement", "Value is one standard deviation, in °C, of taking the cold gas to be as warm as said; sun on one side or a drive to the track makes more."));
        if (tyres.Any(tyre => tyre.UntouchedHotKpa is not null || tyre.ColdNext is not null))
        {
            list.Add(Part("/nextColdTemperatureC", TyrePressureBuilder.Follows, null, CommonPractice, "Value is how many degrees the hot gas gets hotter for each degree the next session is: driven the same, its rise over the air stays. The ranges reach down to none.") with
            {
                Plausible = new PlausibleResponse { Lower = TyrePressureBuilder.LeastFollows, Upper = TyrePressureBuilder.Follows },
            });
        }
    }

    private static void AddLoads(List<AssumptionResponse> list, HeatReadings readings, TyrePressure?[] pressures)
    {
        var isToldAnywhere = false;
        for (var i = 0; i < pressures.Length; i++)
        {
            if (pressures[i]?.Need is not { LeastColdKpa: not null } need) continue;
            isToldAnywhere = true;
            if (need.IsAsDriven) continue;
            var wheel = readings.Request.Tyres[i].Position;
            var axle = WheelPositions.AxleOf(wheel) == CarAxle.Front ? "front" : "rear";
            list.Add(Part($"/vehicle/{axle}AxleLoadKg", 2 * need.LoadKg, null, "the axle's greatest load", $"The load as driven is not given; the {CorneringWords.Name(wheel)} tyre's least pressure is that of half the axle's greatest."));
        }

        if (isToldAnywhere && readings.Vehicle?.TopSpeedKmh is null)
            list.Add(Part("/vehicle/topSpeedKmh", null, "the speed of each tyre's symbol", CommonPractice, "The car's top speed is not given; at its symbol's speed a tyre carries least."));
    }

    private static AssumptionResponse Part(string input, double? value, string? text, string source, string reason) => AssumptionResponse.From(new Assumption(input, value, text, source, reason));
}
