using SetupService.Domain.Answers;
using SetupService.Domain.Handling.Cars;
using SetupService.Domain.Suspension;
using SetupService.Domain.Vehicles;

namespace SetupService.Domain.Handling.Cornering;

/// <summary>What is assumed of brakes, drive, air and links where a turn is braked or driven.</summary>
public static class LongitudinalAssumptions
{
    private const string CommonPractice = "common practice, no source";

    private static readonly Assumption OutboardBrakes = new(
        "/vehicle/brakeShareFrontPct", null, "brakes at the wheels", CommonPractice,
        "Both wheels of an axle are braked alike as far as the tyre that holds less lets them, as an anti-lock system does; what is more goes to the other.");

    private static readonly Assumption HalfShafts = new(
        "/vehicle/drivenAxle", null, "driven through half-shafts", CommonPractice,
        "The differential is held by the body, so that driving force acts on the suspension at the height of the wheel centres; the engine has power enough.");

    private static readonly Assumption OpenDifferential = new(
        "/vehicle/differential", null, "open", CommonPractice, "No differential is given: both wheels of a driven axle get the same torque, as much as the one that holds less can take.");

    private static readonly Assumption StillAir = new(
        "/vehicle/aero", null, "no downforce, lift or drag", CommonPractice, "No forces of the air are given: at speed, lift takes grip and drag brakes the car by itself.");

    private static readonly Assumption DragLeftOut = new(
        "/vehicle/drivenAxle", null, "nothing is driven", CommonPractice, "Nobody said which axle is driven: what its tyres give against drag is left out.");

    /// <summary>The car with what is assumed for these longitudinal accelerations; as it is where none is asked for.</summary>
    /// <param name="reading">The car, on its scale of grip.</param>
    /// <param name="stated">The car as stated.</param>
    /// <param name="path">The path.</param>
    /// <param name="fromG">The least longitudinal acceleration asked for, g; negative = braking.</param>
    /// <param name="toG">The greatest, g.</param>
    public static ResolvedHandlingCar Add(ResolvedHandlingCar reading, Vehicle stated, in TurnPath path, double fromG, double toG)
    {
        ArgumentNullException.ThrowIfNull(reading);
        ArgumentNullException.ThrowIfNull(stated);
        var car = reading.Car;
        var isAsked = fromG != 0 || toG != 0;
        if (!isAsked && !LongitudinalForces.AreAsked(car, path)) return reading;
        var (brakes, drives) = (fromG < 0, toG > 0 || car.Aero is { DragN: > 0 });
        var assumed = new List<AssumedInput>(reading.Assumed);
        var notes = new List<Assumption>(reading.Notes);
        if (brakes && stated.BrakeShareFrontPct is null)
            Assume(HandlingInputs.BrakeShareFront, TypicalValues.BrakeShareFrontPct, "What the front brakes do of the whole: more of it takes side force from the front tyres, less from the rear's.");
        if (drives && stated is { DrivenAxle: DrivenAxle.Both, DriveShareFrontPct: null })
            Assume(HandlingInputs.DriveShareFront, TypicalValues.DriveShareFrontPct, "What the front wheels drive of the whole: it takes side force from the front tyres instead of the rear's.");
        foreach (var (input, typical, reason) in HandlingInputs.LongitudinalTyreSet) Assume(input, typical, reason);
        if (brakes) notes.Add(OutboardBrakes);
        if (drives) notes.Add(car.DriveShareFrontPct is null ? DragLeftOut : HalfShafts);
        if (drives && car.DriveShareFrontPct is not null && stated.Differential is null) notes.Add(OpenDifferential);
        if (car.Aero is null) notes.Add(StillAir);
        foreach (var at in (ReadOnlySpan<CarAxle>)[CarAxle.Front, CarAxle.Rear])
        {
            if (car.At(at).Suspension.Tells.HasFlag(SuspensionFigures.RollCentre)) continue;
            notes.Add(new(at == CarAxle.Front ? "/vehicle/front/suspension" : "/vehicle/rear/suspension", 0, null, CommonPractice,
                "Value is the share of dive, squat or lift that the links take, percent: without points nobody knows it, so the springs take all, and the body pitches further than most cars do."));
        }

        return reading with { Assumed = assumed, Notes = notes };

        void Assume(HandlingInput input, TypicalValue typical, string reason) => assumed.Add(new(input, typical.Value, typical.Lower, typical.Upper, typical.Source, reason));
    }
}
