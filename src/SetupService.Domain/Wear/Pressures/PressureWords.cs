using SetupService.Domain.Answers;
using SetupService.Domain.Tyres;

namespace SetupService.Domain.Wear.Pressures;

/// <summary>Describes what a tyre's pressures mean.</summary>
public static class PressureWords
{
    /// <summary>All sentences, what is unsafe first.</summary>
    public static IReadOnlyList<string> Describe(TyrePressure tyre, in PressureConditions conditions, UnitSystem units)
    {
        ArgumentNullException.ThrowIfNull(tyre);
        var list = new List<string>();
        AddLoad(list, tyre, units);
        if (tyre.Contradiction != PressureContradiction.None) list.Add(Contradiction(tyre, conditions, units));
        if (tyre.HotGasC is { } gas) list.Add(Gas(tyre, gas, conditions, units));
        if (tyre.ColdNow is { } now) list.Add(Setting(now, "On a day like this", tyre, units));
        if (tyre is { UntouchedColdKpa: { } cold, UntouchedHotKpa: { } hot } && conditions.NextColdC is { } nextC)
        {
            list.Add(Prose.Write(units, $"Left alone it reads {cold.Value:kPa} cold at {nextC:c} and comes to {hot.Value:kPa} hot ({hot.Lower:kPa} to {hot.Upper:kPa})."));
        }

        if (tyre.ColdNext is { } next && conditions.NextColdC is { } thenC) list.Add(Setting(next, Prose.Write(units, $"At {thenC:c} cold"), tyre, units));
        if (tyre.HotNow is { } hotNow) list.Add(HotNow(hotNow, tyre, units));
        if (tyre is { Need: { FloorKpa: null, Gap: not LoadGap.BeyondLoad } } and ({ ColdNow: not null } or { ColdNext: not null } or { HotNow: not null })) list.Add("The load was not checked.");
        if (tyre.AimsDisagree && tyre.HotOnColdAimKpa is { } onAim)
        {
            list.Add(Prose.Write(units, $"The two aims do not go together: {tyre.Reading.AimColdKpa ?? 0:kPa} cold comes to {onAim.Value:kPa} hot ({onAim.Ninety.Lower:kPa} to {onAim.Ninety.Upper:kPa}), not to {tyre.Reading.AimHotKpa ?? 0:kPa}."));
        }

        return list;
    }

    /// <summary>A pressure to be set, as every text tells it: the least the load allows rounded up, any other as the gauge shows it.</summary>
    /// <param name="kpa">The pressure, gauge, kPa.</param>
    /// <param name="isLeast">True where it is the least the load allows.</param>
    /// <param name="units">Units of the text.</param>
    public static string Set(double kpa, bool isLeast, UnitSystem units) => isLeast ? Prose.Write(units, $"{kpa:kPaUp}") : Prose.Write(units, $"{kpa:kPa}");

    /// <summary>True where rounding down might leave a cold pressure below what the load needs.</summary>
    internal static bool IsLeast(double coldKpa, LoadNeed need) => coldKpa - need.FloorKpa < 1;

    /// <summary>That a cold setting is below the plate's, as a sentence: it is no setting for the road.</summary>
    /// <param name="plateKpa">What the plate states, cold, kPa; null where it is not the same for all.</param>
    /// <param name="units">Units of the text.</param>
    public static string OnTrackOnly(double? plateKpa, UnitSystem units) =>
        $"Below the {(plateKpa is { } plate ? Prose.Write(units, $"{plate:kPa}") + " of the car's plate" : "car's plate")} is for the session on the track only: set the plate's pressure again, cold, before driving on the road.";

    /// <summary>Why the least pressure is not known.</summary>
    public static string Gap(LoadGap gap) => gap switch
    {
        LoadGap.NoVehicle => "needs the car: the tyre's marking and the axle's load",
        LoadGap.NoTyre => "needs the marking of the axle's tyre",
        LoadGap.NoLoad => "needs the axle's load: maximumAxleLoadKg, or the load as driven",
        LoadGap.MarkingSilent => "the tyre's marking has no load index or no speed symbol",
        LoadGap.ReferenceUnknown => "the reference pressure of this tyre's load index is marked on its sidewall only",
        LoadGap.BeyondSpeed => "the car is faster than the tyre's speed symbol allows; what it carries then is not published",
        LoadGap.BeyondLoad => "no pressure lets this tyre carry the load",
        _ => "",
    };

    /// <summary>Why cold and hot pressure cannot be used together.</summary>
    public static string Gap(PressureContradiction contradiction) => contradiction switch
    {
        PressureContradiction.HotBelowCold => "the hot pressure is below the cold one",
        PressureContradiction.HotAsCold => "the hot pressure is no more than the cold one, although the tread is hot",
        _ => "by these pressures the gas would be hotter or colder than any tyre",
    };

    /// <summary>That a hot tread's pressure did not rise, as sentences.</summary>
    public static string AsCold(double coldKpa, double hotKpa, UnitSystem units) => Prose.Write(
        units, $"The tread is hot, but {hotKpa:kPa} hot is no more than {coldKpa:kPa} cold, and a tyre gains pressure as it warms. Was the cold one read while the tyre was still hot? Read it again with the tyre cold, before the first drive.");

    private static void AddLoad(List<string> list, TyrePressure tyre, UnitSystem units)
    {
        if (tyre.Need.Gap == LoadGap.BeyondLoad) list.Add("No pressure lets this tyre carry the load: do not drive on it." + Pounds(tyre.Need));
        if (tyre.Need is not { LeastColdKpa: { } leastKpa, LoadKg: { } loadKg })
        {
            if (tyre.Need is { Gap: not LoadGap.BeyondLoad, PlateKpa: { } plate }) list.Add(Prose.Write(units, $"The car's plate states {plate:kPa} cold; what the load as driven needs is not known."));
            return;
        }

        if (tyre.Need.PlateKpa is { } plateKpa) list.Add(Prose.Write(units, $"The load as driven needs {leastKpa:kPaUp} cold, the car's plate states {plateKpa:kPa}: go back to the plate's before driving on the road."));
        if (tyre.IsColdBelowLoad) list.Add(Prose.Write(units, $"Raise the pressure before driving: {tyre.Reading.ColdKpa ?? 0:kPa} cold is below the {leastKpa:kPaUp} that {loadKg:kg} on this tyre needs."));
        if (tyre.Reading.AimColdKpa < leastKpa) list.Add(Prose.Write(units, $"Do not set the aim of {tyre.Reading.AimColdKpa ?? 0:kPa} cold: it is below the {leastKpa:kPaUp} that {loadKg:kg} on this tyre needs."));
    }

    private static string Contradiction(TyrePressure tyre, in PressureConditions conditions, UnitSystem units)
    {
        var (coldKpa, hotKpa) = (tyre.Reading.ColdKpa ?? 0, tyre.Reading.HotKpa ?? 0);
        return tyre.Contradiction switch
        {
            PressureContradiction.HotBelowCold => Prose.Write(units, $"{hotKpa:kPa} hot is below {coldKpa:kPa} cold, but a tyre that gets warm gains pressure. It loses air, was bled, or the readings are mixed up: find out which before driving."),
            PressureContradiction.HotAsCold => AsCold(coldKpa, hotKpa, units),
            _ => Prose.Write(units, $"From {coldKpa:kPa} at {conditions.ColdC ?? 0:c} to {hotKpa:kPa} the gas would be at a temperature no tyre has. Pressures or temperature were read wrong, or air was let in between."),
        };
    }

    private static string Gas(TyrePressure tyre, in Estimate gas, in PressureConditions conditions, UnitSystem units) => Prose.Write(
        units, $"From {tyre.Reading.ColdKpa ?? 0:kPa} at {conditions.ColdC ?? 0:c} to {tyre.Reading.HotKpa ?? 0:kPa} the gas came to {gas.Value:c} ({gas.Ninety.Lower:c} to {gas.Ninety.Upper:c}); that is the gas, not the tread.");

    private static string Setting(in ColdSetting setting, string when, TyrePressure tyre, UnitSystem units)
    {
        var aimKpa = tyre.Reading.AimHotKpa ?? 0;
        if (setting is not { SetKpa: { } setKpa, HotThenKpa: { } hot })
        {
            return Prose.Write(units, $"{when} {aimKpa:kPa} hot would need a cold pressure outside {PlausiblePressures.LeastKpa:kPa} to {PlausiblePressures.MostKpa:kPa}: check the aim and the readings.");
        }

        if (setting.IsHeldByLoad)
        {
            return Prose.Write(units, $"{when} {setKpa:kPaUp} cold is the safe minimum{WhoseFloor(tyre)}, so {aimKpa:kPa} hot is out of reach by {setting.OverAimKpa:kPa}; expect {hot.Value:kPa} hot ({hot.Lower:kPa} to {hot.Upper:kPa}).");
        }

        var needed = setting.NeededKpa!.Value;
        return Prose.Write(units, $"{when} set {Set(setKpa, IsLeast(setKpa, tyre.Need), units)} ({needed.Lower:kPa} to {needed.Upper:kPa}) for {aimKpa:kPa} hot.");
    }

    private static string HotNow(in HotAdjustment hot, TyrePressure tyre, UnitSystem units)
    {
        var does = hot.ChangeKpa < 0
            ? Prose.Write(units, $"While it is as hot as read, let {-hot.ChangeKpa:kPa} out, to {Set(hot.HotThenKpa, hot.IsHeldByLoad, units)}")
            : hot.ChangeKpa > 0
                ? Prose.Write(units, $"While it is as hot as read, put {hot.ChangeKpa:kPa} in, to {Set(hot.HotThenKpa, hot.IsHeldByLoad, units)}, never above the maximum on its sidewall")
                : Prose.Write(units, $"It is at its hot aim of {hot.HotThenKpa:kPa}");
        var cold = tyre.IsRiseAssumed
            ? Prose.Write(units, $"; cold it will then read about {hot.ColdThenKpa.Value:kPa} ({hot.ColdThenKpa.Lower:kPa} to {hot.ColdThenKpa.Upper:kPa}), by how much tyres usually warm: measure it cold before driving again.")
            : Prose.Write(units, $"; cold it will then read {hot.ColdThenKpa.Value:kPa} ({hot.ColdThenKpa.Lower:kPa} to {hot.ColdThenKpa.Upper:kPa}).");
        var held = hot.IsHeldByLoad ? Prose.Write(units, $" The aim of {tyre.Reading.AimHotKpa ?? 0:kPa} hot is out of reach by {hot.HotThenKpa - (tyre.Reading.AimHotKpa ?? 0):kPa}: it would leave less than the {tyre.Need.FloorKpa ?? 0:kPaUp} cold {(tyre.Need.LeastColdKpa is null ? "the plate states" : "its load needs")}.") : "";
        return Prose.Write(units, $"{does}{cold}{held}");
    }

    private static string WhoseFloor(TyrePressure tyre) => tyre.Need.LeastColdKpa is null ? " (the plate's)" : "";

    private static string Pounds(LoadNeed need) => need is { MayBePounds: true, LoadKg: { } loadKg } ? " " + PoundsForKilograms.Question(loadKg) : "";
}
