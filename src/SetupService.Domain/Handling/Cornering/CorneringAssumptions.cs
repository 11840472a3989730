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

    /// <summary>Tyres, steering and what else is not a scalar.</summary>
    /// <param name="reading">The car.</param>
    /// <param name="leastPeakScale">The least by which the tyres' peak was scaled in what is answered.</param>
    /// <param name="mostPeakScale">The most.</param>
    /// <param name="heldLateralG">What the tyres are said to hold, g, or null.</param>
    public static IReadOnlyList<Assumption> Build(ResolvedHandlingCar reading, double leastPeakScale, double mostPeakScale, double? heldLateralG)
    {
        ArgumentNullException.ThrowIfNull(reading);
        var list = new List<Assumption>(reading.Notes);
        AddTyre(list, reading.Car.Front, "/vehicle/front/tyre");
        AddTyre(list, reading.Car.Rear, "/vehicle/rear/tyre");
        if (PeakScale(leastPeakScale, mostPeakScale, heldLateralG) is { } scaled) list.Add(scaled);
        if (!reading.Car.Front.Suspension.Tells.HasFlag(SuspensionFigures.SteeringLinkage)) list.Add(ParallelSteer);
        return list;
    }

    /// <summary>The assumption that the tyres' peak is scaled; null where it is not.</summary>
    public static Assumption? PeakScale(double least, double most, double? heldLateralG)
    {
        if (most <= 1) return null;
        var factors = least < most ? FormattableString.Invariant($"from {least:0.###} to {most:0.###}, by the turn") : "one for all four";
        return new("/heldLateralG", most, null, ExampleTyre.Source, heldLateralG is { } held
            ? $"Value is a factor ({factors}), not g. The tyres are stated to hold {CorneringWords.G(held)}, which the example tyre does not: its peak is raised until it does, with 5 % in reserve."
            : $"Value is a factor ({factors}), not g. The example tyre cannot hold this turn: its peak is raised until it does, with 5 % in reserve. Give heldLateralG, what the tyres are known to hold, to replace it.");
    }

    private static void AddTyre(List<Assumption> list, HandlingAxle axle, string place)
    {
        var loadN = axle.LoadN / 2;
        var size = ExampleTyre.Scale(loadN, null).Size;
        list.Add(axle.CorneringStiffnessNPerDeg is null
            ? new(place + "/corneringStiffnessNPerDeg", ExampleTyre.SlopeNPerDeg(loadN, size), null, ExampleTyre.Source,
                "Slip angles, steer and understeer gradient are those of a published example tyre under this load, not of yours.")
            : new(place, null, "falls off towards its peak as the example tyre does", ExampleTyre.Source,
                "The cornering stiffness is given; how the force falls off towards the peak, with load and with inclination, is the example tyre's."));
        if (size <= 1) return;
        list.Add(new(place, size, null, "scaling by similarity, common practice, no source",
            "Value is a factor. These wheels carry more than the example tyre was measured for, so a tyre of the same shape but this much larger is used."));
    }
}
