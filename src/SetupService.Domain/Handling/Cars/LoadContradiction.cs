using SetupService.Domain.Vehicles;

namespace SetupService.Domain.Handling.Cars;

/// <summary>A car's masses that cannot all be true.</summary>
/// <param name="Place">JSON Pointer within the vehicle to the one that is named wrong.</param>
/// <param name="Message">What contradicts what, with the numbers.</param>
public readonly record struct LoadContradiction(string Place, string Message)
{
    /// <summary>Every contradiction of a car that is complete.</summary>
    public static IReadOnlyList<LoadContradiction> Find(Vehicle vehicle)
    {
        ArgumentNullException.ThrowIfNull(vehicle);
        var list = new List<LoadContradiction>();
        foreach (var at in (ReadOnlySpan<CarAxle>)[CarAxle.Front, CarAxle.Rear])
        {
            var name = at == CarAxle.Front ? "front" : "rear";
            if (StaticLoads.Contradiction(vehicle, at) is (double scalesKg, double statedKg))
            {
                list.Add(new($"/{name}AxleLoadKg", FormattableString.Invariant(
                    $"the scales of both {name} wheels (cornerWeightsKg) read {scalesKg:0.#} kg together, {name}AxleLoadKg says {statedKg:0.#} kg; they may differ by {100 * StaticLoads.Agreement:0.#} %.")));
            }

            if (Unsprung(vehicle, at, name) is { } unsprung) list.Add(unsprung);
        }

        return list;
    }

    private static LoadContradiction? Unsprung(Vehicle vehicle, CarAxle at, string name)
    {
        if (StaticLoads.Compute(vehicle, at) is not { } loads || StaticLoads.CarMassKg(vehicle) is not { } carKg) return null;
        var axle = vehicle.At(at);
        var unsprungKg = axle.UnsprungMassKg ?? TypicalValues.UnsprungMassKg(carKg, axle.Suspension.Layout).Value;
        var leastKg = Math.Min(loads.LeftN, loads.RightN) / HandlingCar.StandardGravity;
        if (unsprungKg < leastKg) return null;
        return new($"/{name}/unsprungMassKg", FormattableString.Invariant(
            $"a {name} wheel carries {leastKg:0.#} kg and its unsprung mass is {(axle.UnsprungMassKg is null ? "assumed to be" : "given as")} {unsprungKg:0.#} kg; nothing would be left on the spring."));
    }
}
