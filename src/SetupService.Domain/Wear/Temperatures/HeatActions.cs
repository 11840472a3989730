using SetupService.Domain.Answers;
using SetupService.Domain.Handling.Cornering;
using SetupService.Domain.Tyres;
using SetupService.Domain.Vehicles;
using SetupService.Domain.Wear.Pressures;

namespace SetupService.Domain.Wear.Temperatures;

/// <summary>What kind of thing to do.</summary>
public enum HeatActionKind
{
    /// <summary>Put right what makes a tyre unsafe before driving.</summary>
    MakeSafe,

    /// <summary>Raise a cold pressure that is below what the load needs.</summary>
    RaisePressure,

    /// <summary>Read again what contradicts itself or came too late.</summary>
    ReadAgain,

    /// <summary>Set pressures, by at most a step.</summary>
    SetPressure,

    /// <summary>Have camber and toe measured.</summary>
    MeasureAlignment,

    /// <summary>Nothing to change.</summary>
    Keep,
}

/// <summary>A pressure to set.</summary>
/// <param name="Position">Of which wheel's tyre.</param>
/// <param name="FromKpa">What it has, gauge, kPa.</param>
/// <param name="ToKpa">What to set now.</param>
/// <param name="TowardsKpa">Where that is going.</param>
/// <param name="IsHot">True where both are while it is as hot as read; else cold.</param>
public readonly record struct PressureStep(WheelPosition Position, double FromKpa, double ToKpa, double TowardsKpa, bool IsHot)
{
    /// <summary>True where it leads to the least the load allows, which is rounded up.</summary>
    public bool IsLeast { get; init; }
}

/// <summary>One thing to do.</summary>
/// <param name="Kind">What kind.</param>
/// <param name="Text">As an instruction.</param>
/// <param name="Tyres">The tyres it is about.</param>
/// <param name="Steps">The pressures to set; empty where none are.</param>
public sealed record HeatAction(HeatActionKind Kind, string Text, IReadOnlyList<WheelPosition> Tyres, IReadOnlyList<PressureStep> Steps);

/// <summary>
/// What to do, in the order a careful technician does it: what is unsafe, what was misread, pressures by a step, alignment measured before it is changed, and
/// read again. At most five.
/// </summary>
public static class HeatActions
{
    /// <summary>The most actions named.</summary>
    public const int Most = 5;

    // What a middle hotter or colder than the shoulders asks for where no aim is stated, kPa; common practice, no source.
    private const double CrownStepKpa = 10;

    // Less than this, kPa, no gauge shows.
    private const double LeastStepKpa = 1;

    /// <summary>The actions.</summary>
    /// <param name="tyres">The tyres, in the order of the readings.</param>
    /// <param name="unsafeTyre">What makes a tyre unsafe beside its pressure, as a sentence; null where nothing does.</param>
    /// <param name="conditions">Air and temperatures of the pressures.</param>
    /// <param name="airC">Air around the treads, °C; null where it is not known.</param>
    /// <param name="units">Units of the texts.</param>
    public static IReadOnlyList<HeatAction> List(IReadOnlyList<TyreHeat> tyres, string? unsafeTyre, in PressureConditions conditions, double? airC, UnitSystem units)
    {
        ArgumentNullException.ThrowIfNull(tyres);
        var list = new List<HeatAction>();
        if (unsafeTyre is not null) list.Add(new(HeatActionKind.MakeSafe, unsafeTyre, [], []));
        Overloaded(list, tyres);
        Raise(list, tyres, units);
        var misread = tyres.Where(tyre => IsMisread(tyre with { ShoulderDoubt = null }, airC)).Select(tyre => tyre.Position).ToList();
        if (misread.Count > 0) list.Add(new(HeatActionKind.ReadAgain, $"Read the {Names(misread)} again before changing anything there: the readings contradict each other.{Why(tyres)}", misread, []));
        foreach (var tyre in tyres)
        {
            if (tyre.ShoulderDoubt is { } doubt) list.Add(new(HeatActionKind.ReadAgain, $"Read depths and temperatures of both shoulders of the {CorneringWords.Name(tyre.Position)} again before changing camber or toe. {doubt}", [tyre.Position], []));
        }

        Set(list, tyres, conditions, misread, units);
        Alignment(list, tyres, CarAxle.Front, airC, units);
        Alignment(list, tyres, CarAxle.Rear, airC, units);
        var late = tyres.Where(tyre => tyre.Tread is { IsTooLate: true } or { SecondsAfterLap: null }).Select(tyre => tyre.Position).ToList();
        if (late.Count > 0)
            list.Add(new(HeatActionKind.ReadAgain, Prose.Write(units, $"Next time read all treads within {TreadReading.TooLateAfterS:n} s of the lap and note when: the {Names(late)} {(late.Count == 1 ? "was" : "were")} read later than that, or at no stated time."), late, []));
        if (list.Count == 0) list.Add(new(HeatActionKind.Keep, "Nothing to change: keep the settings and read again after the next session.", [], []));
        return list.Count <= Most ? list : list.GetRange(0, Most);
    }

    private static string Why(IReadOnlyList<TyreHeat> tyres)
    {
        var fell = tyres.Any(tyre => tyre.Pressure is { Contradiction: PressureContradiction.HotBelowCold }) ? " A tyre whose pressure fell as it warmed may be losing air." : "";
        return fell + (tyres.Any(tyre => tyre.Pressure is { Contradiction: PressureContradiction.HotAsCold }) ? " A cold pressure that is no less than the hot one was probably read hot: read it with the tyre cold, before the first drive." : "");
    }

    private static void Overloaded(List<HeatAction> list, IReadOnlyList<TyreHeat> tyres)
    {
        List<TyreHeat> beyond = [.. tyres.Where(tyre => tyre.Pressure is { Need.Gap: LoadGap.BeyondLoad })];
        if (beyond.Count == 0) return;
        List<WheelPosition> positions = [.. beyond.Select(tyre => tyre.Position)];
        var pounds = beyond[0].Pressure!.Need is { MayBePounds: true, LoadKg: { } loadKg } ? " " + PoundsForKilograms.Question(loadKg) : "";
        list.Add(new(HeatActionKind.MakeSafe, $"Do not drive: no pressure lets the {Names(positions)} carry {(beyond.Count == 1 ? "its" : "their")} load. Fit tyres of a higher load index, or take load out.{pounds}", positions, []));
    }

    private static void Raise(List<HeatAction> list, IReadOnlyList<TyreHeat> tyres, UnitSystem units)
    {
        var steps = new List<PressureStep>();
        foreach (var tyre in tyres)
        {
            if (tyre.Pressure is { IsColdBelowLoad: true, Need.LeastColdKpa: { } leastKpa, Reading.ColdKpa: { } coldKpa }) steps.Add(new(tyre.Position, coldKpa, Math.Ceiling(leastKpa), Math.Ceiling(leastKpa), false));
        }

        if (steps.Count == 0) return;
        var each = string.Join(", ", steps.Select(step => Prose.Write(units, $"{CorneringWords.Name(step.Position)} to {step.ToKpa:kPaUp} cold (it has {step.FromKpa:kPa})")));
        list.Add(new(HeatActionKind.RaisePressure, $"Before driving raise the pressure to what the load needs: {each}.", [.. steps.Select(step => step.Position)], steps));
    }

    private static void Set(List<HeatAction> list, IReadOnlyList<TyreHeat> tyres, in PressureConditions conditions, List<WheelPosition> misread, UnitSystem units)
    {
        var (cold, hot, held) = (new List<PressureStep>(), new List<PressureStep>(), new List<string>());
        var nextC = conditions.NextColdC;
        foreach (var tyre in tyres)
        {
            // What is below the load's need is raised before anything else is sought.
            if (tyre.Pressure is not { IsColdBelowLoad: false, Need.Gap: not LoadGap.BeyondLoad } pressure || misread.Contains(tyre.Position)) continue;
            if (((nextC is null ? null : pressure.ColdNext) ?? pressure.ColdNow) is { SetKpa: { } setKpa } setting && pressure.Reading.ColdKpa is { } coldKpa)
            {
                var from = (nextC is null ? null : pressure.UntouchedColdKpa?.Value) ?? coldKpa;
                var to = ColdSetting.Step(from, setKpa, pressure.Need.FloorKpa);
                if (Math.Abs(to - from) >= LeastStepKpa) cold.Add(new(tyre.Position, from, to, setKpa, false) { IsLeast = PressureWords.IsLeast(setKpa, pressure.Need) });
                if (setting.IsHeldByLoad) held.Add(Prose.Write(units, $"{CorneringWords.Name(tyre.Position)} by {setting.OverAimKpa:kPa}"));
            }
            else if (pressure is { IsRiseAssumed: true, HotNow: { } now, Reading.HotKpa: { } hotKpa })
            {
                var to = Math.Clamp(now.HotThenKpa, hotKpa - ColdSetting.MostStepKpa, hotKpa + ColdSetting.MostStepKpa);
                if (Math.Abs(to - hotKpa) >= LeastStepKpa) hot.Add(new(tyre.Position, hotKpa, to, now.HotThenKpa, true) { IsLeast = now.IsHeldByLoad });
                if (now.IsHeldByLoad) held.Add(Prose.Write(units, $"{CorneringWords.Name(tyre.Position)} by {now.HotThenKpa - pressure.Reading.AimHotKpa!.Value:kPa}"));
            }
            else if (pressure.Reading is { AimHotKpa: null, AimColdKpa: { } aimKpa, ColdKpa: { } nowKpa } && !(aimKpa < pressure.Need.FloorKpa) && Math.Abs(aimKpa - nowKpa) >= LeastStepKpa)
            {
                // A cold aim that was stated is set at once.
                cold.Add(new(tyre.Position, nowKpa, aimKpa, aimKpa, false) { IsLeast = PressureWords.IsLeast(aimKpa, pressure.Need) });
            }
            else if (pressure.Reading is { AimHotKpa: null, AimColdKpa: null, ColdKpa: { } readKpa } && Crown(tyre) is { } by)
            {
                var to = Math.Max(readKpa + by, Math.Min(pressure.Need.FloorKpa ?? 0, readKpa));
                if (Math.Abs(to - readKpa) >= LeastStepKpa) cold.Add(new(tyre.Position, readKpa, to, to, false) { IsLeast = PressureWords.IsLeast(to, pressure.Need) });
            }
        }

        if (cold.Count > 0)
        {
            var day = nextC is { } c ? Prose.Write(units, $"For the next session, at {c:c} cold, set cold: ") : "Set cold: ";
            list.Add(new(HeatActionKind.SetPressure, $"{day}{Each(cold, units)}{OutOfReach(held)}. {(nextC is null ? "" : "What each is set from is what it then reads if left alone. ")}{Unchecked(tyres)}{BelowPlate(tyres, cold, units)}Drive, read hot again, then take the next step.", [.. cold.Select(step => step.Position)], cold));
        }

        if (hot.Count > 0)
            list.Add(new(HeatActionKind.SetPressure, $"While as hot as read, set: {Each(hot, units)}{(cold.Count > 0 ? "" : OutOfReach(held))}. {Unchecked(tyres)}Measure cold before driving again: what that leaves cold is known roughly only.", [.. hot.Select(step => step.Position)], hot));
    }

    private static string Each(List<PressureStep> steps, UnitSystem units) => string.Join(", ", steps.Select(step => Math.Abs(step.TowardsKpa - step.ToKpa) >= LeastStepKpa
        ? Prose.Write(units, $"{CorneringWords.Name(step.Position)} from {step.FromKpa:kPa} to {PressureWords.Set(step.ToKpa, step.IsLeast, units)}, a first step towards {PressureWords.Set(step.TowardsKpa, step.IsLeast, units)}")
        : Prose.Write(units, $"{CorneringWords.Name(step.Position)} from {step.FromKpa:kPa} to {PressureWords.Set(step.ToKpa, step.IsLeast, units)}")));

    private static string OutOfReach(List<string> held) => held.Count == 0 ? "" : $"; no lower, so the hot aim is out of reach: {string.Join(", ", held)}";

    private static string Unchecked(IReadOnlyList<TyreHeat> tyres) =>
        tyres.Any(tyre => tyre.Pressure is { Need: { FloorKpa: null, Gap: not LoadGap.BeyondLoad } }) ? "Never below the pressure on the car's plate: the load was not checked. " : "";

    private static string BelowPlate(IReadOnlyList<TyreHeat> tyres, List<PressureStep> steps, UnitSystem units)
    {
        List<double> plates = [.. from step in steps from tyre in tyres where tyre.Position == step.Position && step.ToKpa < tyre.Pressure!.Need.PlateKpa select tyre.Pressure!.Need.PlateKpa!.Value];
        return plates.Count == 0 ? "" : PressureWords.OnTrackOnly(plates.Distinct().Count() == 1 ? plates[0] : null, units) + " ";
    }

    /// <summary>The step a middle clearly hotter or colder than the shoulders asks for, kPa; null where none.</summary>
    private static double? Crown(in TyreHeat tyre)
    {
        if (tyre.Tread is not { } tread) return null;
        var finding = TemperatureFigures.Judge(tread)[(int)TreadAspect.CentreLessShoulders];
        return (finding.IsClear, finding.Verdict) switch { (true, RangeVerdict.Above) => -CrownStepKpa, (true, RangeVerdict.Below) => CrownStepKpa, _ => null };
    }

    private static void Alignment(List<HeatAction> list, IReadOnlyList<TyreHeat> tyres, CarAxle axle, double? airC, UnitSystem units)
    {
        var isDoubted = tyres.Any(tyre => WheelPositions.AxleOf(tyre.Position) == axle && IsMisread(tyre, airC));
        var outside = new List<(WheelPosition Position, TreadFinding Finding)>();
        foreach (var tyre in tyres)
        {
            if (WheelPositions.AxleOf(tyre.Position) != axle || (airC is { } air && tyre.Tread is { } cold && TemperatureFigures.IsBelowAir(cold, air)) || tyre.Tread is not { } tread) continue;
            var finding = TemperatureFigures.Judge(tread)[(int)TreadAspect.OuterLessInner];
            if (finding.IsClear && finding.Verdict is RangeVerdict.Above or RangeVerdict.Below) outside.Add((tyre.Position, finding));
        }

        if (outside.Count == 0) return;
        var end = CorneringWords.Name(axle);
        var each = string.Join(", ", outside.Select(one => Prose.Write(units, $"{CorneringWords.Name(one.Position)} {(one.Finding.FigureC.Value > 0 ? "outer" : "inner")} shoulder {Math.Abs(one.Finding.FigureC.Value):cDiff} hotter")));
        var isOuter = outside.All(one => one.Finding.Verdict == RangeVerdict.Above);
        var isInner = outside.All(one => one.Finding.Verdict == RangeVerdict.Below);
        var then = isDoubted
            ? "Change neither before the readings that contradict each other were read again"
            : outside.Count < 2
            ? "One side alone first calls for comparing left with right"
            : isOuter
                ? "If toe is as wanted and the camber can be set, half a degree more negative is a step; a diagnosis of the wear says whether the treads want it"
                : isInner
                    ? "If toe is as wanted and the camber can be set, half a degree less negative is a step; a diagnosis of the wear says whether the treads want it"
                    : "The two sides differ, which first calls for comparing left with right";
        list.Add(new(HeatActionKind.MeasureAlignment, $"Have the {end} camber and toe measured ({each}). {then}.", [.. outside.Select(one => one.Position)], []));
    }

    private static bool IsMisread(in TyreHeat tyre, double? airC) => tyre.Pressure is { Contradiction: not PressureContradiction.None } || tyre.IsTreadDoubted(airC);

    private static string Names(List<WheelPosition> positions) => string.Join(" and the ", positions.Select(CorneringWords.Name));
}
