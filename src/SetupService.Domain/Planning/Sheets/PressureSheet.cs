using SetupService.Domain.Answers;
using SetupService.Domain.Vehicles;
using SetupService.Domain.Wear.Pressures;
using SetupService.Domain.Wear.Temperatures;

namespace SetupService.Domain.Planning.Sheets;

/// <summary>The pressures of one wheel; gauge, kPa.</summary>
/// <param name="Position">Which wheel.</param>
/// <param name="Need">What its tyre's load needs, and what the car's plate states.</param>
/// <param name="ColdKpa">What to set cold; null where nothing tells it.</param>
/// <param name="HotKpa">What that comes to hot; null where cold and hot were not both read on this tyre.</param>
/// <param name="AimHotKpa">The hot pressure wanted; null where none was stated for this tyre.</param>
/// <param name="Text">The same in sentences.</param>
public readonly record struct PressureLine(WheelPosition Position, LoadNeed Need, double? ColdKpa, double? HotKpa, double? AimHotKpa, string Text)
{
    // Set in whole kPa.
    private const double LeastKpa = 0.5;

    /// <summary>True where the package puts on another tyre: the plate states nothing for it.</summary>
    public bool IsOther { get; init; }

    /// <summary>True where what is set cold is less than the car's plate asks for: then it is for the track alone.</summary>
    public bool IsForTheTrackOnly => ColdKpa < Need.PlateKpa - LeastKpa;

    /// <summary>What to set cold for every drive on the road: the plate's, where it carries the load; where none is known, or it carries less, what is set; null where nothing tells it.</summary>
    public double? RoadColdKpa => IsOther ? null : Need.PlateKpa is { } plateKpa && !(plateKpa < Need.LeastColdKpa) ? plateKpa : ColdKpa;
}

/// <summary>The pressures of a package, by the code of the call on temperatures: the first step towards a hot aim, never below what the load needs. Method page: docs/methods/tyre-pressure.</summary>
public static class PressureSheet
{
    /// <summary>The line of a wheel.</summary>
    /// <param name="tyre">What was read of its tyre; without pressures where the package puts on another tyre.</param>
    /// <param name="need">What the tyre that is on with the package needs.</param>
    /// <param name="isOther">True where the package puts on another tyre, so that what was read and what the plate states were for another.</param>
    /// <param name="isForRoad">True where the car sees no track: the plate then comes first.</param>
    /// <param name="isMateRead">True where the pressure of the other wheel of the axle was read.</param>
    /// <param name="actions">What is to be done to all tyres.</param>
    /// <param name="conditions">What the pressures were read in.</param>
    /// <param name="units">Units of the sentences.</param>
    public static PressureLine Write(in TyreHeat tyre, LoadNeed need, bool isOther, bool isForRoad, bool isMateRead, IReadOnlyList<HeatAction> actions, in PressureConditions conditions, UnitSystem units)
    {
        ArgumentNullException.ThrowIfNull(need);
        ArgumentNullException.ThrowIfNull(actions);
        var line = new PressureLine(tyre.Position, need, null, null, null, "");
        if (isOther)
        {
            var least = need.LeastColdKpa is { } kpa ? Prose.Write(units, $" The load needs at least {kpa:kPaUp} cold.") : "";
            return line with { IsOther = true, Text = $"Another tyre than was read: set what its maker and the car's papers state for this size, then read cold and hot.{least}" };
        }

        if (isForRoad && need.PlateKpa is { } roadKpa && !(roadKpa < need.LeastColdKpa)) return line with { ColdKpa = roadKpa, Text = Prose.Write(units, $"On the road the car's plate comes first: {roadKpa:kPaUp} cold.") };
        if (tyre.Pressure is not { } pressure)
        {
            if (isMateRead) return line with { Text = "Its pressure was not read, that of the other wheel of the axle was: read it too before either is set." };
            if (need.PlateKpa is { } plateKpa && !(plateKpa < need.LeastColdKpa)) return line with { ColdKpa = plateKpa, Text = Prose.Write(units, $"No pressure was read and no aim stated: set the {plateKpa:kPaUp} of the car's plate, then read hot after a session.") };
            return line with { Text = "No pressure was read and the car's plate was not given: set what the plate states, then read hot after a session." };
        }

        var position = tyre.Position;
        var steps = actions.SelectMany(action => action.Steps).Where(step => step.Position == position && !step.IsHot).Select(step => (PressureStep?)step);
        var kept = (conditions.NextColdC is null ? null : pressure.UntouchedColdKpa?.Value) ?? pressure.Reading.ColdKpa;
        var coldKpa = pressure.Contradiction != PressureContradiction.None ? null
            : steps.FirstOrDefault() is { } first ? first.ToKpa
            : kept < need.FloorKpa ? null : kept;
        return line with { ColdKpa = coldKpa, HotKpa = HotFor(coldKpa, pressure, conditions), AimHotKpa = pressure.Reading.AimHotKpa, Text = string.Join(' ', PressureWords.Describe(pressure, conditions, units)) };
    }

    private static double? HotFor(double? coldKpa, TyrePressure pressure, in PressureConditions conditions)
    {
        if (coldKpa is not { } cold || pressure.Contradiction != PressureContradiction.None || pressure.Reading is not { ColdKpa: { } readKpa, HotKpa: { } hotKpa }) return null;
        var rise = new PressureRise(readKpa, hotKpa, conditions.AirKpa);
        var then = conditions is { ColdC: { } coldC, NextColdC: { } nextC } ? rise.NextHotForColdKpa(cold, coldC, nextC, TyrePressureBuilder.Follows) : rise.HotForColdKpa(cold);
        return PlausiblePressures.Include(then) ? then : null;
    }
}
