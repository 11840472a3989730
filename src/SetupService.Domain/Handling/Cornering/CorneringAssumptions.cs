using SetupService.Domain.Answers;
using SetupService.Domain.Handling.Cars;
using SetupService.Domain.Handling.Tyres;
using SetupService.Domain.Suspension;

namespace SetupService.Domain.Handling.Cornering;

/// <summary>What every call on a turn assumes beyond the car's own scalars.</summary>
public static class CorneringAssumptions
{
    private const string CommonPractice = "common practice, no source";

    private static readonly Assumption ParallelSteer = new(
        "/vehicle/front/suspension", null, "both front wheels steer alike", CommonPractice,
        "Without hardpoints the steering linkage is unknown; both front wheels turn by the same angle about their axes.");

    private static readonly Assumption NoPressure = new(
        "/vehicle/front/tyre/pressureKpa", null, "pressure does not act on grip", "published sets and textbooks disagree on its sign",
        "In one published set more pressure lowers cornering stiffness by 5 % for a tenth more of it, textbooks say it raises it: pressure acts only through the tyre's vertical rate, at both axles.");

    /// <summary>Tyres, steering and what else is not a scalar.</summary>
    /// <param name="reading">The car, on its scale of grip.</param>
    /// <param name="scale">The scale.</param>
    public static IReadOnlyList<Assumption> Build(ResolvedHandlingCar reading, in GripScale scale)
    {
        ArgumentNullException.ThrowIfNull(reading);
        var list = new List<Assumption>(reading.Notes);
        AddTyre(list, reading.Car.Front, "/vehicle/front/tyre");
        AddTyre(list, reading.Car.Rear, "/vehicle/rear/tyre");
        list.Add(NoPressure);
        if (scale.StandsToG is { } standsTo)
        {
            list.Add(new("/heldLateralG", standsTo, null, "the model's own end",
                $"By this model the car has no equilibrium beyond {CorneringWords.G(standsTo)}, so it cannot hold the {CorneringWords.G(scale.HeldLateralG!.Value)} stated: grip is scaled in proportion to the hardest turn it stands in."));
        }

        if (!reading.Car.Front.Suspension.Tells.HasFlag(SuspensionFigures.SteeringLinkage)) list.Add(ParallelSteer);
        return list;
    }

    private static void AddTyre(List<Assumption> list, HandlingAxle axle, string place)
    {
        if (axle.CorneringStiffnessNPerDeg is null) return;
        list.Add(new(place, null, "falls off towards its peak as the published tyre does", PassengerTyre.Source,
            "The cornering stiffness is given; how the force falls off towards the peak, with load and with inclination, is the published tyre's in this size."));
    }
}
