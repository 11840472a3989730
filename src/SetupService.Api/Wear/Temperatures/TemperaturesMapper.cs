using SetupService.Api.Http.Shared;
using SetupService.Domain.Answers;
using SetupService.Domain.Wear.Cautions;
using SetupService.Domain.Wear.Pressures;
using SetupService.Domain.Wear.Readings;
using SetupService.Domain.Wear.Temperatures;

namespace SetupService.Api.Wear.Temperatures;

/// <summary>Maps what temperatures and pressures show to the answer.</summary>
internal static class TemperaturesMapper
{
    /// <summary>The answer.</summary>
    public static TemperaturesAnswer ToAnswer(HeatReadings readings, UnitSystem units)
    {
        var heats = readings.Heats(units);
        var pressures = Array.ConvertAll(heats, one => one.Pressure);
        TyreHeatResponse[] tyres = [.. readings.Request.Tyres.Select((reading, index) => Tyre(readings, reading, pressures[index], units))];
        PairComparison[] compared = [.. Enum.GetValues<WheelPairs>().Select(one => PairComparison.Compute(one, readings.Treads, readings.AirC)).OfType<PairComparison>()];
        PairResponse[] pairs = [.. compared.Select(one => PairResponse.From(one, units))];
        TyreCondition[] states = [.. readings.Request.Tyres.Select(tyre => TyreReadingMapper.Condition(tyre, readings.Today))];
        var actions = HeatActions.List(heats, TyreCautions.Unsafe(states, units)?.Text, readings.Conditions, readings.AirC, units);
        return new TemperaturesAnswer
        {
            Summary = HeatSummary.Write(heats, compared, actions, readings.AirC, units),
            Actions = [.. actions.Select(HeatActionResponse.From)],
            Tyres = tyres,
            Comparisons = pairs,
            AirPressureKpa = readings.Conditions.AirKpa,
            Unknown = TemperaturesGaps.Find(readings, tyres, pressures, pairs),
            Method = "tread-temperatures",
            Edition = Edition.Current,
            Next = NextCalls.AfterTemperatures,
            Assumptions = TemperaturesAssumptions.List(readings, pressures, tyres),
            Cautions = CautionResponse.From([.. TyreCautions.Build(states, units), .. PressureCautions.For([.. pressures.OfType<TyrePressure>()])]),
        };
    }

    private static TyreHeatResponse Tyre(HeatReadings readings, TyreReadingDocument reading, TyrePressure? pressure, UnitSystem units) => new()
    {
        Position = reading.Position,
        Tread = HeatReadings.TreadOf(reading) is { } tread ? Tread(tread, reading, readings.AirC, units) : null,
        Pressure = pressure is null ? null : Pressure(pressure, readings.Conditions, units),
    };

    private static TreadHeatResponse Tread(TreadReading tread, TyreReadingDocument reading, double? airC, UnitSystem units) => new()
    {
        OuterLessInnerC = UncertaintyResponse.From(TemperatureFigures.OuterLessInnerC(tread)),
        WidestSpreadC = UncertaintyResponse.From(TemperatureFigures.WidestSpreadC(tread)),
        CentreLessShouldersC = UncertaintyResponse.From(TemperatureFigures.CentreLessShouldersC(tread)),
        MeanC = UncertaintyResponse.From(TemperatureFigures.MeanC(tread)),
        AtLapEndC = AtLapEnd(tread, airC),
        Findings = [.. TemperatureFigures.Judge(tread).Select(one => Finding(tread, one, units))],
        Contradiction = airC is { } air && TemperatureFigures.IsBelowAir(tread, air) ? TreadWords.BelowAir(tread, air, units) : HeatAgainstWear.Find(TyreReadingMapper.Map(reading), units),
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
            ? new TreadAtLapEndResponse { Outer = UncertaintyResponse.From(outer), Centre = UncertaintyResponse.From(centre), Inner = UncertaintyResponse.From(inner) }
            : null;

        Uncertainty? At(double readC) => TreadCooling.AtLapEndC(readC, errorC, air, seconds, tread.By);
    }

    private static TyrePressureResponse Pressure(TyrePressure tyre, in PressureConditions conditions, UnitSystem units) => new()
    {
        LeastColdKpa = tyre.Need.LeastColdKpa,
        PlateKpa = tyre.Need.PlateKpa,
        HotGasC = UncertaintyResponse.From(tyre.HotGasC),
        ColdNow = ColdSettingResponse.From(tyre.ColdNow),
        ColdNext = ColdSettingResponse.From(tyre.ColdNext),
        UntouchedColdKpa = UncertaintyResponse.From(tyre.UntouchedColdKpa),
        UntouchedHotKpa = UncertaintyResponse.From(tyre.UntouchedHotKpa),
        HotNow = HotAdjustmentResponse.From(tyre.HotNow),
        HotOnColdAimKpa = UncertaintyResponse.From(tyre.HotOnColdAimKpa),
        Contradiction = tyre.Contradiction,
        Text = string.Join(' ', PressureWords.Describe(tyre, conditions, units)),
        Method = "tyre-pressure",
    };
}
