using SetupService.Domain.Answers;
using SetupService.Domain.Vehicles;
using SetupService.Domain.Wear.Pressures;
using SetupService.Domain.Wear.Readings;

namespace SetupService.Domain.Wear.Diagnosis.Advice;

/// <summary>Finds readings that contradict each other.</summary>
public static class ReadingContradictions
{
    private const double ToeBeyondDoubtDeg = 0.12;
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
            if (HeatAgainstWear.Find(tyre, units) is { } shoulders) list.Add(new(tyre.Position, ContradictionOf.Shoulders, shoulders));
            History(list, tyre, wear.Use, units);
        }

        Camber(list, wear, CarAxle.Front);
        Camber(list, wear, CarAxle.Rear);
        return list;
    }

    private static void Camber(List<ReadingContradiction> list, WearCase wear, CarAxle at)
    {
        var axle = wear.Vehicle.At(at);
        if (CamberSign.Doubt(at == CarAxle.Front ? "front" : "rear", axle.Left.CamberDeg, axle.Right.CamberDeg) is { } doubt) list.Add(new(null, ContradictionOf.Camber, doubt.Text) { Axle = at });
    }

    private static void Feather(List<ReadingContradiction> list, TyreReading tyre, Axle axle, UnitSystem units)
    {
        if (tyre.Patterns is not { } patterns) return;
        var (inboard, outboard) = (patterns.Contains(TreadPattern.FeatheredSharpInboard), patterns.Contains(TreadPattern.FeatheredSharpOutboard));
        if (inboard && outboard)
        {
            list.Add(new(tyre.Position, ContradictionOf.Toe, "Stroke the tread again, from the centre outwards and back: its edges cannot feel sharp both towards the car's centre and away from it."));
            return;
        }

        if ((tyre.IsLeft ? axle.Left : axle.Right).ToeDeg is not { } toeDeg) return;
        if (inboard && toeDeg < -ToeBeyondDoubtDeg)
            list.Add(new(tyre.Position, ContradictionOf.Toe, Prose.Write(units, $"Edges sharp towards the car's centre point to toe-in, but the stated toe is {-toeDeg:deg} out. One of the two was read wrongly, or the toe changes when the wheel is loaded.")));
        if (outboard && toeDeg > ToeBeyondDoubtDeg)
            list.Add(new(tyre.Position, ContradictionOf.Toe, Prose.Write(units, $"Edges sharp away from the car point to toe-out, but the stated toe is {toeDeg:deg} in. One of the two was read wrongly, or the toe changes when the wheel is loaded.")));
    }

    private static void Pressure(List<ReadingContradiction> list, TyreReading tyre, UnitSystem units)
    {
        if (tyre.Pressure is not { ColdKpa: { } coldKpa, HotKpa: { } hotKpa }) return;
        if (TypicalRise.IsMissing(coldKpa, hotKpa, GaugeKpa, TreadC(tyre), null)) list.Add(new(tyre.Position, ContradictionOf.Pressure, PressureWords.AsCold(coldKpa, hotKpa, units)));
        if (hotKpa >= coldKpa - GaugeKpa) return;
        list.Add(new(tyre.Position, ContradictionOf.Pressure, Prose.Write(units, $"{hotKpa:kPa} hot is less than {coldKpa:kPa} cold, but a tyre gains pressure as it warms. It was bled, leaks, or was read wrongly.")));
    }

    private static double? TreadC(TyreReading tyre) => tyre.TemperatureC is { } c ? (c.Outer + c.Centre + c.Inner) / 3 : null;

    private static void History(List<ReadingContradiction> list, TyreReading tyre, in WearUse use, UnitSystem units)
    {
        var (roadKm, laps) = (0.0, 0.0);
        foreach (var leg in tyre.History) (roadKm, laps) = (roadKm + (leg.RoadKm ?? 0), laps + (leg.TrackLaps ?? 0));
        if (use.RoadKm is { } road && roadKm > (MoreByHistory * road) + 1)
            list.Add(new(tyre.Position, ContradictionOf.History, Prose.Write(units, $"Its history adds up to {roadKm:km} of road, more than the {road:km} stated for the tyres.")));
        if (use.TrackLaps is { } all && laps > (MoreByHistory * all) + 1)
            list.Add(new(tyre.Position, ContradictionOf.History, Prose.Write(units, $"Its history adds up to {laps:n} laps, more than the {all:n} stated for the tyres.")));
    }
}

/// <summary>Readings that cannot well be true together, or that no cause explains.</summary>
/// <param name="Position">The tyre they are of; null = of both of an axle, or of the whole car.</param>
/// <param name="Subject">What it makes doubtful: nothing is set by readings it names.</param>
/// <param name="Text">What contradicts what, as a sentence.</param>
public sealed record ReadingContradiction(WheelPosition? Position, ContradictionOf Subject, string Text)
{
    private readonly CarAxle? _ofBoth;

    /// <summary>The axle it is of; null = of the whole car.</summary>
    public CarAxle? Axle
    {
        get => Position is { } at ? WheelPositions.AxleOf(at) : _ofBoth;
        init => _ofBoth = value;
    }
}

/// <summary>What a contradiction makes doubtful.</summary>
public enum ContradictionOf
{
    /// <summary>Which way toe is off.</summary>
    Toe,

    /// <summary>The pressures.</summary>
    Pressure,

    /// <summary>Which shoulder works harder, and so camber and toe.</summary>
    Shoulders,

    /// <summary>The static camber.</summary>
    Camber,

    /// <summary>How far the tyre ran where.</summary>
    History,
}
