using SetupService.Domain.Answers;
using SetupService.Domain.Suspension;
using SetupService.Domain.Vehicles;

namespace SetupService.Domain.Handling.Cars;

/// <summary>Makes a car ready for the handling model: what is given is taken, what is missing is filled from <see cref="TypicalValues"/> and listed.</summary>
public static class HandlingCarBuilder
{
    /// <summary>
    /// Inputs the model needs and the car does not give, each as a JSON Pointer within the vehicle: loads, tracks and spring rates.
    /// Empty where it is complete.
    /// </summary>
    public static IReadOnlyList<string> Missing(Vehicle vehicle)
    {
        ArgumentNullException.ThrowIfNull(vehicle);
        var missing = new List<string>();
        foreach (var at in (ReadOnlySpan<CarAxle>)[CarAxle.Front, CarAxle.Rear])
        {
            var (axle, name) = (vehicle.At(at), at == CarAxle.Front ? "front" : "rear");
            if (StaticLoads.Compute(vehicle, at) is null) missing.Add($"/{name}AxleLoadKg");
            if (axle.TrackMm is null && !axle.Suspension.Tells.HasFlag(SuspensionFigures.Track)) missing.Add($"/{name}/trackMm");
            if (axle.Spring.RateNPerMm is null) missing.Add($"/{name}/spring/rateNPerMm");
        }

        return missing;
    }

    /// <summary>The car; null where <see cref="Missing"/> names something, or its readings or points make no corner.</summary>
    /// <param name="vehicle">The car as stated.</param>
    /// <param name="units">The units of what is said about it.</param>
    public static ResolvedHandlingCar? Build(Vehicle vehicle, UnitSystem units = UnitSystem.Metric)
    {
        if (Missing(vehicle).Count > 0) return null;
        var assumed = new List<AssumedInput>();
        var notes = new List<Assumption>();
        var front = HandlingAxleBuilder.Build(vehicle, CarAxle.Front, assumed, notes, units);
        var rear = HandlingAxleBuilder.Build(vehicle, CarAxle.Rear, assumed, notes, units);
        if (front is null || rear is null) return null;
        if (StaticLoads.AreHalved(vehicle, CarAxle.Front) || StaticLoads.AreHalved(vehicle, CarAxle.Rear)) notes.Add(HalvedLoads);
        AddTyres(vehicle, assumed);
        return new(new HandlingCar
        {
            WheelbaseMm = vehicle.WheelbaseMm,
            CentreOfGravityHeightMm = vehicle.CentreOfGravityHeightMm ?? Assumed(assumed, (front.TrackMm + rear.TrackMm) / 2, vehicle.Body),
            BrakeShareFrontPct = vehicle.BrakeShareFrontPct ?? TypicalValues.BrakeShareFrontPct.Value,
            DriveShareFrontPct = vehicle.DrivenAxle switch
            {
                DrivenAxle.Front => 100,
                DrivenAxle.Rear => 0,
                DrivenAxle.Both => vehicle.DriveShareFrontPct ?? TypicalValues.DriveShareFrontPct.Value,
                _ => null,
            },
            Differential = vehicle.Differential ?? Differential.Open,
            Aero = vehicle.Aero,
            Front = front,
            Rear = rear,
        }, assumed, notes);
    }

    private static readonly Assumption HalvedLoads = new(
        "/vehicle/cornerWeightsKg", null, "half of its axle's load on each wheel", "common practice, no source",
        "The wheels' scales were not read on both sides of an axle; a driver alone in the car loads his own side more.");

    private static void AddTyres(Vehicle vehicle, List<AssumedInput> assumed)
    {
        var (front, rear) = (TyreTypicals.Friction(vehicle.Front.Tyre?.Category), TyreTypicals.Friction(vehicle.Rear.Tyre?.Category));
        assumed.Add(new(HandlingInputs.Grip, 1, Math.Min(front.Lower / front.Value, rear.Lower / rear.Value), Math.Max(front.Upper / front.Value, rear.Upper / rear.Value),
            front.Source, "Value is a factor on the friction of all four tyres. Road, rubber and weather move both limits together; give heldLateralG, the most the car was measured to hold, to replace it."));
        foreach (var (input, typical, reason) in HandlingInputs.TyreSet) assumed.Add(new(input, typical.Value, typical.Lower, typical.Upper, typical.Source, reason));
    }

    private static double Assumed(List<AssumedInput> assumed, double meanTrackMm, CarBody? body)
    {
        var typical = TypicalValues.CentreOfGravityHeightMm(meanTrackMm, body);
        assumed.Add(new(HandlingInputs.CentreOfGravityHeight, typical.Value, typical.Lower, typical.Upper, typical.Source,
            "The height of the centre of gravity decides how far the body rolls and how much load crosses the car."));
        return typical.Value;
    }
}

/// <summary>A car prepared for the handling model, with what had to be assumed.</summary>
/// <param name="Car">The car.</param>
/// <param name="Assumed">The scalars that were not given.</param>
/// <param name="Notes">What else was assumed, as it stands in an answer.</param>
public sealed record ResolvedHandlingCar(HandlingCar Car, IReadOnlyList<AssumedInput> Assumed, IReadOnlyList<Assumption> Notes)
{
    /// <summary>The scalar assumed for an input; null where it was given.</summary>
    public AssumedInput? AssumedFor(HandlingInput input)
    {
        foreach (var one in Assumed)
        {
            if (ReferenceEquals(one.Input, input)) return one;
        }

        return null;
    }

    /// <summary>Standard error of an input: of a value given what such values are usually known to, else what its plausible range stands for.</summary>
    public double ErrorOf(HandlingInput input) => AssumedFor(input)?.StandardError ?? input.ErrorOf(input.Read(Car));
}
