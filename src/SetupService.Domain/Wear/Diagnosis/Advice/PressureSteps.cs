using SetupService.Domain.Answers;
using SetupService.Domain.Handling.Cornering;
using SetupService.Domain.Vehicles;
using SetupService.Domain.Wear.Pressures;
using SetupService.Domain.Wear.Readings;

namespace SetupService.Domain.Wear.Diagnosis.Advice;

/// <summary>
/// The steps of pressure the tyres of an axle get: towards their aim, at most 20 kPa at a time, and never against the gauge. A tyre below the cold pressure stated for it is set to
/// that at once: nobody drives on too little air to see what it does.
/// </summary>
public static class PressureSteps
{
    /// <summary>The most of one step, kPa.</summary>
    public const double MostKpa = 20;

    private const double GaugeErrorKpa = 3;

    // Below its stated pressure by more than this, a tyre is not just read on another day; common practice, no source.
    private const double LeastBelowKpa = 10;

    // With no more than this share of its stated cold pressure a tyre leaks or was forgotten, and may be damaged by being driven on: a quarter less is where a car has to warn
    // (49 CFR 571.138, from memory).
    private const double LowShare = 0.75;

    // Light cars on circuits are run a little above it, road cars' plates ask for half as much again; common practice, no source.
    private const double LittleKpa = 120;

    /// <summary>The tyres of an axle that are further below the cold pressure stated for them than a gauge errs, as if found to be under-inflated.</summary>
    internal static CauseFinding BelowAim(WearCase wear, CarAxle at) => new(
        WearCause.UnderInflation, at, 0, [.. wear.Tyres.Where(tyre => tyre.Axle == at && tyre.Pressure is { ColdKpa: { } cold, AimColdKpa: { } aim } && aim - cold > LeastBelowKpa).Select(tyre => tyre.Position)], []);

    /// <summary>True where a tyre has so little air that the leak is looked for before any is added.</summary>
    internal static bool IsLow(TyreReading tyre) => tyre.Pressure is { ColdKpa: { } cold, AimColdKpa: { } aim } && cold <= LowShare * aim;

    /// <summary>True where nobody said what a tyre should have, and hardly a car's plate asks for so little.</summary>
    internal static bool IsDoubtful(TyreReading tyre) => tyre.Pressure is { ColdKpa: < LittleKpa, AimColdKpa: null };

    /// <summary>One action for each tyre that has an aim; one without an amount where none has.</summary>
    internal static IReadOnlyList<WearAction> Build(WearCase wear, CauseFinding finding, UnitSystem units)
    {
        var (list, isUnder) = (new List<WearAction>(), finding.Cause == WearCause.UnderInflation);
        foreach (var position in finding.Tyres)
        {
            if (wear.At(position) is { } tyre && Create(wear, tyre, $"the {CorneringWords.Name(position)} tyre", isUnder, units) is { } action) list.Add(action);
        }

        // Both tyres of an axle alike are told at once, by the one that needs less.
        if (list is [{ StepKpa: not null } first, { StepKpa: not null } second] && IsAlike(first, second)
            && wear.At(finding.Tyres[Math.Abs(first.ColdPressureKpa!.Value.Value) <= Math.Abs(second.ColdPressureKpa!.Value.Value) ? 0 : 1]) is { } one)
            return [Create(wear, one, $"both {(one.Axle == CarAxle.Front ? "front" : "rear")} tyres", isUnder, units)!];
        if (list.Count == 0) list.Add(new("Set the cold pressure the car's plate states for the load. How far it is off is unknown until cold and hot pressures are given with their aim."));
        return list;
    }

    /// <summary>True where the step and where it leads are the same, and the whole changes differ by no more than a gauge errs.</summary>
    private static bool IsAlike(WearAction one, WearAction other) =>
        one.StepKpa == other.StepKpa && one.SettingKpa == other.SettingKpa && Math.Abs(one.ColdPressureKpa!.Value.Value - other.ColdPressureKpa!.Value.Value) <= GaugeErrorKpa;

    private static WearAction? Create(WearCase wear, TyreReading tyre, string which, bool isUnder, UnitSystem units)
    {
        var (coldKpa, byHot) = (tyre.Pressure.ColdKpa, false);
        Estimate change;
        if (tyre.Pressure is { ColdKpa: { } cold, AimColdKpa: { } aimCold })
        {
            change = new(aimCold - cold, GaugeErrorKpa);
        }
        else if (tyre.Pressure is { HotKpa: { } hot, AimHotKpa: { } aimHot })
        {
            // At the same warming gauge pressure and its change scale alike, nearly: both are counted from the atmosphere's.
            var byWarming = coldKpa is { } now ? (now + StandardAtmosphere.SeaLevelKpa) / (hot + StandardAtmosphere.SeaLevelKpa) : TypicalRise.ColdByHot.Value;
            var ofWarming = coldKpa is null ? (aimHot - hot) * (TypicalRise.ColdByHot.Upper - TypicalRise.ColdByHot.Lower) / (2 * Uncertainty.StandardErrorsAtNinetyPct) : 0;
            (change, byHot) = (new((aimHot - hot) * byWarming, Math.Sqrt((GaugeErrorKpa * GaugeErrorKpa) + (ofWarming * ofWarming))), true);
        }
        else
        {
            return null;
        }

        if (isUnder != change.Value > 0 || Math.Abs(change.Value) < GaugeErrorKpa)
            return new($"Check the gauge, and read the pressures of {which} and their aim again: the tread points to {(isUnder ? "too little" : "too much")} air, the readings do not.");
        var need = LoadNeed.Compute(wear.Vehicle, tyre.Position);
        if (change.Value < 0 && need.Gap == LoadGap.BeyondLoad) return new($"Leave the pressure of {which}: no pressure lets them carry the load stated. Settle load and tyre first.");
        if (change.Value < 0 && coldKpa is { } from && Floor(wear, need) is { } floorKpa && from + change.Value < floorKpa)
        {
            change = change with { Value = Math.Min(0, floorKpa - from) };
            if (change.Value > -GaugeErrorKpa)
                return new(Prose.Write(units, $"Leave {which} at {from:kPa} cold: less is not safe, as {(need.LeastColdKpa >= floorKpa ? "the load needs" : "the car's plate states")} {floorKpa:kPaUp}, so the aim is out of reach."));
        }

        var stepKpa = Math.Round(byHot || change.Value < 0 ? Math.Clamp(change.Value, -MostKpa, MostKpa) : change.Value);
        var amount = Math.Abs(stepKpa);
        var settingKpa = coldKpa + stepKpa;
        var isBelowPlate = stepKpa < 0 && settingKpa < need.PlateKpa;
        var what = settingKpa is { } set ? Prose.Write(units, $"{(IsLow(tyre) ? "Look for a leak, then set" : "Set")} {which} to {set:kPa} cold{(isBelowPlate ? " for the track alone" : "")}, {amount:kPa} {(stepKpa < 0 ? "less" : "more")} than now")
            : Prose.Write(units, $"{(stepKpa < 0 ? "Lower" : "Raise")} the cold setting of {which} by {amount:kPa}");
        var heading = Math.Abs(change.Value) <= amount + 0.5 ? ""
            : coldKpa is null ? " More steps will follow; how many is known once the cold pressure is read too."
            : Prose.Write(units, $" It is heading for {Math.Abs(change.Value):kPa} in all, one step at a time.");
        var hotText = byHot ? " Never go below what the load needs: the temperatures call works it out for the day." : "";
        var plateText = isBelowPlate ? " " + PressureWords.OnTrackOnly(need.PlateKpa, units) : "";
        return new($"{what}, and read the pressure again straight after driving.{plateText}{heading}{hotText}")
        {
            ColdPressureKpa = change,
            StepKpa = stepKpa,
            SettingKpa = settingKpa,
            Until = $"Read cold and hot pressures at the next drive, and the depths {NextReading.When(wear, tyre.Axle, units)}, before the next step.",
        };
    }

    /// <summary>No step leads below this cold pressure, kPa: what the load needs, else what the plate states; on a car known to see no track never below the plate.</summary>
    private static double? Floor(WearCase wear, LoadNeed need) =>
        wear.Use.TrackLaps is 0 && need.PlateKpa is { } plateKpa ? Math.Max(plateKpa, need.LeastColdKpa ?? 0) : need.FloorKpa;
}
