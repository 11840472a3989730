using SetupService.Domain.Answers;
using SetupService.Domain.Vehicles;
using SetupService.Domain.Wear.Readings;

namespace SetupService.Domain.Wear.Diagnosis;

/// <summary>Finds readings that contradict each other.</summary>
public static class ReadingContradictions
{
    private const double ToeBeyondDoubtDeg = 0.12;
    private const double HeatBeyondDoubtC = 10;
    private const double TiltBeyondDoubt = 0.35;
    private const double MoreByHistory = 1.05;

    // A hot pressure below the cold one by no more than the gauge's error, kPa.
    private const double GaugeKpa = 5;

    /// <summary>All of a case.</summary>
    public static IReadOnlyList<ReadingContradiction> Find(WearCase wear, UnitSystem units)
    {
        ArgumentNullException.ThrowIfNull(wear);
        var list = new List<ReadingContradiction>();
        foreach (var tyre in wear.Tyres)
        {
            Feather(list, tyre, wear.Vehicle.At(tyre.Axle), units);
            Pressure(list, tyre, units);
            Heat(list, tyre, units);
            History(list, tyre, wear.Use, units);
        }

        return list;
    }

    private static void Feather(List<ReadingContradiction> list, TyreReading tyre, Axle axle, UnitSystem units)
    {
        if (tyre.Patterns is not { } patterns) return;
        var (inboard, outboard) = (patterns.Contains(TreadPattern.FeatheredSharpInboard), patterns.Contains(TreadPattern.FeatheredSharpOutboard));
        if (inboard && outboard)
        {
            list.Add(new(tyre.Position, "Edges cannot be feathered sharp towards the car's centre and away from it at once: stroke the tread again, from the centre outwards and back."));
            return;
        }

        if ((tyre.IsLeft ? axle.Left : axle.Right).ToeDeg is not { } toeDeg) return;
        if (inboard && toeDeg < -ToeBeyondDoubtDeg)
            list.Add(new(tyre.Position, Prose.Write(units, $"Edges sharp towards the car's centre tell of toe-in, but the wheel is stated to toe out by {-toeDeg:deg}: one of the two is read wrongly, or the toe moves when the wheel is loaded.")));
        if (outboard && toeDeg > ToeBeyondDoubtDeg)
            list.Add(new(tyre.Position, Prose.Write(units, $"Edges sharp away from the car tell of toe-out, but the wheel is stated to toe in by {toeDeg:deg}: one of the two is read wrongly, or the toe moves when the wheel is loaded.")));
    }

    private static void Pressure(List<ReadingContradiction> list, TyreReading tyre, UnitSystem units)
    {
        if (tyre.Pressure is not { ColdKpa: { } coldKpa, HotKpa: { } hotKpa } || hotKpa >= coldKpa - GaugeKpa) return;
        list.Add(new(tyre.Position, Prose.Write(units, $"Hot it is stated to have {hotKpa:kPa}, less than the {coldKpa:kPa} cold: a tyre that warms gains pressure. It was bled, leaks, or was read wrongly.")));
    }

    private static void Heat(List<ReadingContradiction> list, TyreReading tyre, UnitSystem units)
    {
        if (tyre.TemperatureC is not { } heat || TreadFigures.Compute(tyre) is not { } figures) return;
        var (tiltC, tilt) = (heat.Outer - heat.Inner, figures.ShoulderDifference.Value);
        if (Math.Abs(tiltC) < HeatBeyondDoubtC || Math.Abs(tilt) < TiltBeyondDoubt + figures.ShoulderDifference.StandardError || tiltC > 0 == tilt > 0) return;
        var (hotter, worn) = tiltC > 0 ? ("outer", "inner") : ("inner", "outer");
        list.Add(new(tyre.Position, Prose.Write(units, $"The {hotter} shoulder is {Math.Abs(tiltC):cDiff} hotter, but the {worn} one is worn more: heat tells of the last laps, wear of the tyre's whole life. Either its setting or its place was changed since, or one was read from the other side.")));
    }

    private static void History(List<ReadingContradiction> list, TyreReading tyre, in WearUse use, UnitSystem units)
    {
        var (roadKm, laps) = (0.0, 0.0);
        foreach (var leg in tyre.History) (roadKm, laps) = (roadKm + (leg.RoadKm ?? 0), laps + (leg.TrackLaps ?? 0));
        if (use.RoadKm is { } road && roadKm > (MoreByHistory * road) + 1)
            list.Add(new(tyre.Position, Prose.Write(units, $"Its history adds up to {roadKm:n} km of road, more than the {road:n} km the tyres are stated to have done.")));
        if (use.TrackLaps is { } all && laps > (MoreByHistory * all) + 1)
            list.Add(new(tyre.Position, Prose.Write(units, $"Its history adds up to {laps:n} laps, more than the {all:n} the tyres are stated to have done.")));
    }
}
