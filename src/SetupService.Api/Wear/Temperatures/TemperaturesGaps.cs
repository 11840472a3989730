using SetupService.Api.Http.Shared;
using SetupService.Domain.Answers;
using SetupService.Domain.Handling.Cornering;
using SetupService.Domain.Vehicles;
using SetupService.Domain.Wear.Pressures;
using SetupService.Domain.Wear.Temperatures;

namespace SetupService.Api.Wear.Temperatures;

/// <summary>What an answer on temperatures leaves null, each with the reason.</summary>
internal static class TemperaturesGaps
{
    private static readonly string OutsideTold = FormattableString.Invariant($"it would be outside {PlausiblePressures.LeastKpa} to {PlausiblePressures.MostKpa} kPa (12 to 73 psi)");

    /// <summary>The gaps, in the order of the answer.</summary>
    public static UnknownResponse[] Find(HeatReadings readings, TyreHeatResponse[] tyres, TyrePressure?[] pressures, PairResponse[] pairs)
    {
        var gaps = new List<UnknownResponse>();
        for (var i = 0; i < tyres.Length; i++)
        {
            AddTread(gaps, readings, tyres[i], i);
            AddPressure(gaps, readings, pressures[i], i);
        }

        AddPairs(gaps, readings, pairs);
        return [.. gaps];
    }

    private static void AddTread(List<UnknownResponse> gaps, HeatReadings readings, TyreHeatResponse tyre, int index)
    {
        var (output, input) = (FormattableString.Invariant($"/tyres/{index}/tread"), FormattableString.Invariant($"/tyres/{index}"));
        if (tyre.Tread is not { } tread)
        {
            gaps.Add(Lacking(output, input + "/temperatureC"));
            return;
        }

        var reading = HeatReadings.TreadOf(readings.Request.Tyres[index])!.Value;
        if (tread.AtLapEndC is null)
        {
            var missing = new List<string>();
            if (reading.SecondsAfterLap is null) missing.Add(input + "/secondsAfterLap");
            if (readings.AirC is null) missing.Add("/airTemperatureC");
            gaps.Add(missing.Count > 0 ? Lacking(output + "/atLapEndC", missing) : Gap(output + "/atLapEndC", reading.IsTooLate ? TooLate() : "a place of the tread reads colder than the air, so it has not cooled towards it"));
        }

        if (reading.IsTooLate) gaps.Add(Gap("findings", $"{CorneringWords.Name(readings.Request.Tyres[index].Position)}: {TooLate()}"));
        if (reading.WindowC is null) gaps.Add(Gap(FormattableString.Invariant($"{output}/findings/{(int)TreadAspect.MeanInWindow}/rangeC"), Needs.Describe([input + "/temperatureWindowC"]), input + "/temperatureWindowC"));
    }

    private static void AddPressure(List<UnknownResponse> gaps, HeatReadings readings, TyrePressure? tyre, int index)
    {
        var (output, input) = (FormattableString.Invariant($"/tyres/{index}/pressure"), FormattableString.Invariant($"/tyres/{index}/pressureKpa"));
        if (tyre is null)
        {
            gaps.Add(Lacking(output, input));
            return;
        }

        if (tyre.Need.Gap != LoadGap.None) gaps.Add(Gap(output + "/leastColdKpa", PressureWords.Gap(tyre.Need.Gap)));
        if (tyre.Need.PlateKpa is null) gaps.Add(Lacking(output + "/plateKpa", FormattableString.Invariant($"/vehicle/{(WheelPositions.AxleOf(readings.Request.Tyres[index].Position) == CarAxle.Front ? "front" : "rear")}/placardPressureKpa")));
        var (cold, hot) = ((input + "/cold", tyre.Reading.ColdKpa), (input + "/hot", tyre.Reading.HotKpa));
        var aimHot = (input + "/aimHot", tyre.Reading.AimHotKpa);
        var coldC = ("/coldTemperatureC", readings.Request.ColdTemperatureC);
        var nextC = ("/nextColdTemperatureC", readings.Request.NextColdTemperatureC);
        Add(tyre.HotGasC is null, "/hotGasC", null, cold, hot, coldC);
        Add(tyre.ColdNow is null, "/coldNow", null, cold, hot, aimHot);
        Add(tyre.ColdNow is { SetKpa: null }, "/coldNow/setKpa", OutsideTold);
        Add(tyre.ColdNow is { NeededKpa: null }, "/coldNow/neededKpa", OutsideTold);
        Add(tyre.ColdNext is null, "/coldNext", null, cold, hot, aimHot, coldC, nextC);
        Add(tyre.ColdNext is { SetKpa: null }, "/coldNext/setKpa", OutsideTold);
        Add(tyre.ColdNext is { NeededKpa: null }, "/coldNext/neededKpa", OutsideTold);
        Add(tyre.UntouchedColdKpa is null, "/untouchedColdKpa", OutsideTold, cold, hot, coldC, nextC);
        Add(tyre.UntouchedHotKpa is null, "/untouchedHotKpa", OutsideTold, cold, hot, coldC, nextC);
        Add(tyre.HotNow is null, "/hotNow", "the cold or the hot pressure would be outside the plausible range", hot, aimHot);
        Add(tyre.HotOnColdAimKpa is null, "/hotOnColdAimKpa", null, cold, hot, (input + "/aimCold", tyre.Reading.AimColdKpa));

        void Add(bool isMissing, string member, string? otherwise, params ReadOnlySpan<(string Input, double? Value)> inputs)
        {
            if (!isMissing) return;
            var missing = new List<string>();
            foreach (var (place, value) in inputs)
            {
                if (value is null) missing.Add(place);
            }

            gaps.Add(missing.Count > 0 ? Lacking(output + member, missing) : Gap(output + member, tyre.Contradiction != PressureContradiction.None ? PressureWords.Gap(tyre.Contradiction)
                : tyre.Need.Gap == LoadGap.BeyondLoad && IsSetting(member) ? PressureWords.Gap(LoadGap.BeyondLoad) : otherwise ?? ""));
        }
    }

    private static bool IsSetting(string member) => member is "/coldNow" or "/coldNext" or "/hotNow";

    private static void AddPairs(List<UnknownResponse> gaps, HeatReadings readings, PairResponse[] pairs)
    {
        foreach (var pair in Enum.GetValues<WheelPairs>())
        {
            if (WheelGroups.Create(pair, readings.Treads) is null) gaps.Add(Gap("comparisons", PairWords.Lacking(pair)));
        }

        for (var i = 0; i < pairs.Length; i++)
        {
            if (pairs[i].AtLapEndC is null)
                gaps.Add(Gap(FormattableString.Invariant($"/comparisons/{i}/atLapEndC"), "needs airTemperatureC, and secondsAfterLap of every wheel in it, none of them too late and no tread colder than the air"));
            if (pairs[i].WaitedS is null) gaps.Add(Gap(FormattableString.Invariant($"/comparisons/{i}/waitedS"), "needs secondsAfterLap of every wheel in it"));
        }
    }

    private static string TooLate() => FormattableString.Invariant($"it was read more than {TreadReading.TooLateAfterS} s after the lap, too late to show what it was");

    private static UnknownResponse Gap(string output, string reason, params string[] needs) => UnknownResponse.Create(output, reason, needs);

    private static UnknownResponse Lacking(string output, params List<string> missing) => UnknownResponse.Create(output, Needs.Describe(missing), [.. missing]);
}
