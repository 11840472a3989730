using SetupService.Api.Http.Shared;
using SetupService.Domain.Answers;
using SetupService.Domain.Handling.Cornering;
using SetupService.Domain.Wear.Pressures;
using SetupService.Domain.Wear.Temperatures;

namespace SetupService.Api.Wear.Temperatures;

/// <summary>Maps what temperatures and pressures show to the answer.</summary>
internal static class TemperaturesMapper
{
    private const string NothingStandsOut = "All readings are as usual.";

    /// <summary>The answer.</summary>
    public static TemperaturesAnswer ToAnswer(HeatReadings readings, UnitSystem units)
    {
        TyrePressure?[] pressures = [.. readings.Request.Readings.Select(readings.PressureOf)];
        TyreHeatResponse[] tyres = [.. readings.Request.Readings.Select((reading, index) => Tyre(readings, reading, pressures[index], units))];
        PairResponse[] pairs = [.. Enum.GetValues<WheelPairs>().Select(one => PairComparison.Compute(one, readings.Treads, readings.AirC)).OfType<PairComparison>().Select(one => PairResponse.From(one, units))];
        return new TemperaturesAnswer
        {
            Tyres = tyres,
            Comparisons = pairs,
            AirPressureKpa = readings.Conditions.AirKpa,
            Summary = Summary(tyres, pairs),
            Unknown = TemperaturesGaps.Find(readings, tyres, pressures, pairs),
            Method = "tread-temperatures",
            Edition = Edition.Current,
            Assumptions = TemperaturesAssumptions.List(readings, pressures, tyres),
            Cautions = CautionResponse.Of(PressureCautions.For([.. pressures.OfType<TyrePressure>()])),
        };
    }

    private static TyreHeatResponse Tyre(HeatReadings readings, TyreHeatDocument reading, TyrePressure? pressure, UnitSystem units) => new()
    {
        Position = reading.Position,
        Tread = HeatReadings.TreadOf(reading) is { } tread ? Tread(tread, readings.AirC, units) : null,
        Pressure = pressure is null ? null : Pressure(pressure, readings.Conditions, units),
    };

    private static TreadHeatResponse Tread(TreadReading tread, double? airC, UnitSystem units) => new()
    {
        OuterLessInnerC = UncertaintyResponse.Of(TemperatureFigures.OuterLessInnerC(tread)),
        WidestSpreadC = UncertaintyResponse.Of(TemperatureFigures.WidestSpreadC(tread)),
        CentreLessShouldersC = UncertaintyResponse.Of(TemperatureFigures.CentreLessShouldersC(tread)),
        MeanC = UncertaintyResponse.Of(TemperatureFigures.MeanC(tread)),
        AtLapEndC = AtLapEnd(tread, airC),
        Findings = [.. TemperatureFigures.Judge(tread).Select(one => Finding(tread, one, units))],
        Contradiction = airC is { } air && TemperatureFigures.IsBelowAir(tread, air) ? TreadWords.BelowAir(tread, air, units) : null,
    };

    private static TreadFindingResponse Finding(in TreadReading tread, in TreadFinding one, UnitSystem units) => new()
    {
        Aspect = one.Aspect,
        Verdict = one.Verdict,
        IsClear = one.IsClear,
        RangeC = one.RangeC is { } range ? new RangeResponse { From = range.FromC, To = range.ToC } : null,
        Source = one.Aspect != TreadAspect.MeanInWindow ? UsualTemperatures.Source : one.RangeC is null ? "not given" : "the request",
        Text = TreadWords.Describe(tread, one, units),
    };

    private static TreadAtLapEndResponse? AtLapEnd(TreadReading tread, double? airC)
    {
        if (airC is not { } air || tread.SecondsAfterLap is not { } seconds) return null;
        var errorC = ThermometerErrors.StandardErrorC(tread.By);
        return (At(tread.ReadC.Outer), At(tread.ReadC.Centre), At(tread.ReadC.Inner)) is ({ } outer, { } centre, { } inner)
            ? new TreadAtLapEndResponse { Outer = UncertaintyResponse.Of(outer), Centre = UncertaintyResponse.Of(centre), Inner = UncertaintyResponse.Of(inner) }
            : null;

        Uncertainty? At(double readC) => TreadCooling.AtLapEndC(readC, errorC, air, seconds, tread.By);
    }

    private static TyrePressureResponse Pressure(TyrePressure tyre, in PressureConditions conditions, UnitSystem units) => new()
    {
        LeastColdKpa = tyre.Need.LeastColdKpa,
        HotGasC = UncertaintyResponse.Of(tyre.HotGasC),
        ColdNow = ColdSettingResponse.From(tyre.ColdNow),
        ColdNext = ColdSettingResponse.From(tyre.ColdNext),
        UntouchedColdKpa = UncertaintyResponse.Of(tyre.UntouchedColdKpa),
        UntouchedHotKpa = UncertaintyResponse.Of(tyre.UntouchedHotKpa),
        HotNow = HotAdjustmentResponse.From(tyre.HotNow),
        HotOnColdAimKpa = UncertaintyResponse.Of(tyre.HotOnColdAimKpa),
        Contradiction = tyre.Contradiction,
        Texts = [.. PressureWords.Describe(tyre, conditions, units)],
        Method = "tyre-pressure",
    };

    /// <summary>The sentences of the summary: contradictions, values outside their range, and every finding about pressures.</summary>
    private static string[] Summary(TyreHeatResponse[] tyres, PairResponse[] pairs)
    {
        var list = new List<string>();
        foreach (var tyre in tyres)
        {
            var wheel = CorneringWords.Name(tyre.Position);
            var name = char.ToUpperInvariant(wheel[0]) + wheel[1..];
            if (tyre.Tread?.Contradiction is { } contradiction) list.Add($"{name}: {contradiction}");
            foreach (var finding in tyre.Tread?.Findings ?? [])
            {
                if (finding.Verdict is RangeVerdict.Below or RangeVerdict.Above) list.Add($"{name}: {finding.Text}");
            }

            foreach (var text in tyre.Pressure?.Texts ?? []) list.Add($"{name}: {text}");
        }

        foreach (var pair in pairs)
        {
            if (pair.Verdict is RangeVerdict.Below or RangeVerdict.Above) list.Add(pair.Text);
        }

        return list.Count == 0 ? [NothingStandsOut] : [.. list];
    }
}
