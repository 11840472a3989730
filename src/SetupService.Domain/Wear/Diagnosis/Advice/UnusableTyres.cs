using SetupService.Domain.Answers;
using SetupService.Domain.Handling.Cars;
using SetupService.Domain.Tyres;
using SetupService.Domain.Vehicles;
using SetupService.Domain.Wear.Cautions;

namespace SetupService.Domain.Wear.Diagnosis.Advice;

/// <summary>Tyres that must not be driven on as they are: damaged, worn out, too old, or under more load than they carry. What is done about them comes before every setting.</summary>
public static class UnusableTyres
{
    private static readonly CarAxle[] Ends = [CarAxle.Front, CarAxle.Rear];

    /// <summary>Which they are.</summary>
    /// <param name="vehicle">The car.</param>
    /// <param name="tyres">The state of each tyre.</param>
    internal static IReadOnlyList<WheelPosition> Find(Vehicle vehicle, IReadOnlyList<TyreCondition> tyres)
    {
        var overloaded = Array.FindAll(Ends, at => Overloaded(vehicle, at, UnitSystem.Metric) is not null);
        return [.. tyres.Where(tyre => TyreCautions.Unsafe([tyre], UnitSystem.Metric) is not null || overloaded.Contains(WheelPositions.AxleOf(tyre.Position))).Select(tyre => tyre.Position)];
    }

    /// <summary>What to do about those of an axle, the gravest first, a sentence each; empty where all can be used.</summary>
    internal static IReadOnlyList<string> At(CarAxle at, Vehicle vehicle, IReadOnlyList<TyreCondition> tyres, UnitSystem units)
    {
        var list = new List<string>();
        foreach (var tyre in tyres)
        {
            if (WheelPositions.AxleOf(tyre.Position) == at && TyreCautions.Unsafe([tyre], units) is { } caution) list.Add(Sentences.First(caution.Text));
        }

        if (list.Count == 0 && Overloaded(vehicle, at, units) is { } overloaded) list.Add(Sentences.First(overloaded.Text));
        return list;
    }

    /// <summary>The caution of tyres whose load index carries less than their axle's load; null where they carry it, or load or index is not known.</summary>
    public static Caution? Overloaded(Vehicle vehicle, UnitSystem units) => Overloaded(vehicle, CarAxle.Front, units) ?? Overloaded(vehicle, CarAxle.Rear, units);

    private static Caution? Overloaded(Vehicle vehicle, CarAxle at, UnitSystem units)
    {
        ArgumentNullException.ThrowIfNull(vehicle);
        if (vehicle.At(at).Tyre?.Marking is not { LoadCapacityKg: { } eachKg, LoadIndex: { } index } || StaticLoads.Compute(vehicle, at) is not { } loads) return null;
        var axleKg = loads.SumN / HandlingCar.StandardGravity;
        return axleKg <= 2 * eachKg ? null : new("overloadedTyres", Prose.Write(
            units, $"Replace the {(at == CarAxle.Front ? "front" : "rear")} tyres before driving: two of load index {index} carry {2 * eachKg:kg}, less than the {axleKg:kg} on the axle. Ask a tyre professional for the index the car's papers require; local law decides.{(PoundsForKilograms.MayBe(axleKg, 2 * eachKg) ? " " + PoundsForKilograms.Question(axleKg) : "")}"));
    }
}
