using SetupService.Domain.Answers;
using SetupService.Domain.Handling.Cars;
using SetupService.Domain.Handling.Cornering;
using SetupService.Domain.Handling.Ride;
using SetupService.Domain.Numerics;
using SetupService.Domain.Vehicles;
using SetupService.Domain.Wear.Readings;
using SetupService.Domain.Wear.TreadWear;

namespace SetupService.Domain.Wear.Diagnosis;

/// <summary>A diagnosis with the wear model of the car beside it, where the car is known well enough for one.</summary>
/// <param name="Case">What was read.</param>
/// <param name="Diagnosis">The causes.</param>
/// <param name="Front">The front axle's wear model as learned from its treads; null where there is none.</param>
/// <param name="Rear">The rear axle's.</param>
public sealed record WearStudy(WearCase Case, WearDiagnosis Diagnosis, LearnedTread? Front, LearnedTread? Rear)
{
    /// <summary>True where the work allowed was spent, or the caller had gone, before both wear models were learned.</summary>
    public bool IsWorkSpent { get; init; }

    /// <summary>Why the car has no equilibrium in its bends; null where it has, or was not asked.</summary>
    public CorneringObstacle? Obstacle { get; init; }

    /// <summary>The car with what was assumed of it, by which a camber's grip and braking are told; null where they are not.</summary>
    public ResolvedHandlingCar? Car { get; init; }

    /// <summary>The car its treads were learned on, solved in the bends of the track; null where there is none.</summary>
    internal TrackTurns? OnTrack { get; init; }

    /// <summary>What wears an axle whose static camber is set otherwise on both wheels, the rest of the car as it is: solved anew. Null without a wear model, or an equilibrium.</summary>
    /// <param name="at">Which axle.</param>
    /// <param name="camberChangeDeg">Change of the camber, degrees; negative = more negative.</param>
    public AxleUse? UseWith(CarAxle at, double camberChangeDeg)
    {
        if ((OnTrack, Front, Rear) is not ({ } onTrack, { } front, { } rear)) return null;
        if (camberChangeDeg == 0) return At(at)!.Axle;
        var car = onTrack.Car;
        var axle = car.At(at) with { LeftCamberDeg = car.At(at).LeftCamberDeg + camberChangeDeg, RightCamberDeg = car.At(at).RightCamberDeg + camberChangeDeg };
        var set = at == CarAxle.Front ? car with { Front = axle } : car with { Rear = axle };
        return TrackBends.UseOf(set, Case.Vehicle, Case.Use, new(front.Axle, rear.Axle), onTrack)?.At(at);
    }

    /// <summary>By how many degrees the front camber is short, by the treads and by the model.</summary>
    public required CamberVoices FrontShort { get; init; }

    /// <summary>The same at the rear.</summary>
    public required CamberVoices RearShort { get; init; }

    /// <summary>By how many degrees an axle's camber is short.</summary>
    public CamberVoices ShortAt(CarAxle axle) => axle == CarAxle.Front ? FrontShort : RearShort;

    /// <summary>The wear model of an axle.</summary>
    public LearnedTread? At(CarAxle axle) => axle == CarAxle.Front ? Front : Rear;

    /// <summary>Studies a car.</summary>
    /// <param name="wear">What was read.</param>
    /// <param name="car">The car ready for the cornering model, with a wheelbase; null where it is not known well enough.</param>
    /// <param name="budget">Work allowed for the cornering and wear models; null = no limit.</param>
    public static WearStudy Compute(WearCase wear, HandlingCar? car, WorkBudget? budget = null)
    {
        ArgumentNullException.ThrowIfNull(wear);
        var worn = new WornHere(wear);

        // Only a track that was driven shows in the treads how the car corners there.
        var onTrack = car is not null && wear.Use.TrackLaps > 0 ? car : null;
        var turns = onTrack is null ? null : TrackBends.Turns(onTrack, wear.Use, budget);
        var use = turns is null ? null : TrackBends.Use(turns, wear.Vehicle, wear.Use);
        var front = use is { } f ? Learn(f.Front, WheelPosition.FrontLeft, WheelPosition.FrontRight) : null;
        var rear = use is { } r ? Learn(r.Rear, WheelPosition.RearLeft, WheelPosition.RearRight) : null;
        var (frontShort, rearShort) = (Short(CarAxle.Front, use?.Front), Short(CarAxle.Rear, use?.Rear));

        // The causes weigh the treads themselves: of the model they get what it knows without them, unless the treads refute it.
        var diagnosis = WearDiagnosis.Compute(wear, worn, at => new(at == CarAxle.Front ? frontShort.Beforehand : rearShort.Beforehand, Damping(car, wear.Vehicle, at)));
        var isSpent = budget is { IsSpent: true };
        return new(wear, diagnosis, front, rear)
        {
            OnTrack = turns,
            FrontShort = frontShort,
            RearShort = rearShort,
            IsWorkSpent = isSpent,
            Obstacle = onTrack is not null && use is null && !isSpent ? TrackBends.FindObstacle(onTrack, wear.Use, budget) : null,
        };

        LearnedTread? Learn(AxleUse axle, WheelPosition left, WheelPosition right) => LearnedTread.Fit(
            axle, worn.StayedAt(left), worn.StayedAt(right), wear.Use.RoadKm ?? 0, (wear.Use.TrackLaps ?? 0) * (wear.Use.LapKm ?? TrackShare.UsualLapKm), budget);

        CamberVoices Short(CarAxle at, AxleUse? axle)
        {
            var perDeg = EvenWear.DifferencePerDeg(axle ?? AxleUse.Typical(at), TrackShare.Compute(wear.Use).Value);
            var difference = worn.ShoulderDifference(at);
            return new(difference, perDeg, difference is { } read ? EvenWear.CamberShortDeg(read, perDeg) : null, IsSignDoubtful(wear.Vehicle.At(at)) ? null : axle?.CamberShortDeg);
        }
    }

    private static bool IsSignDoubtful(Axle axle) => CamberSign.IsDoubtful(axle.Left.CamberDeg) || CamberSign.IsDoubtful(axle.Right.CamberDeg);

    private static double? Damping(HandlingCar? car, Vehicle vehicle, CarAxle at) =>
        car is not null && vehicle.At(at).Damper is { BumpNsPerM: not null, ReboundNsPerM: not null } ? RideAxleBuilder.Build(car, at, vehicle.At(at))?.MeanRatio : null;
}

/// <summary>
/// By how many degrees an axle's static camber is less negative than wanted, in two voices: what its treads say, and what the cornering model expects. Negative = more negative
/// than wanted.
/// </summary>
/// <param name="Shoulders">Wear of the outer shoulder less that of the inner one, by the mean wear, of the axle's treads; null = not read.</param>
/// <param name="DifferencePerDeg">What a degree of camber does to that.</param>
/// <param name="ByTreads">By the treads; null = not read.</param>
/// <param name="ByModel">By the cornering model; null = it cannot tell.</param>
public sealed record CamberVoices(Estimate? Shoulders, double DifferencePerDeg, Estimate? ByTreads, Estimate? ByModel)
{
    // Further apart than so many joint errors, the treads are right and the model wrong.
    private const double MostErrors = 2;

    /// <summary>True where the voices differ by more than their errors explain.</summary>
    public bool Disagree => (ByTreads, ByModel) is ({ } treads, { } model) &&
        Math.Abs(treads.Value - model.Value) > MostErrors * Math.Sqrt((treads.StandardError * treads.StandardError) + (model.StandardError * model.StandardError));

    /// <summary>What the model expects where the treads do not refute it.</summary>
    public Estimate? Beforehand => Disagree ? null : ByModel;

    /// <summary>Both weighted by their precision; the treads' alone where the two differ by more than two joint errors, or the model is silent.</summary>
    public Estimate? Together
    {
        get
        {
            if ((ByTreads, Beforehand) is not ({ } treads, { } model)) return ByTreads ?? ByModel;
            var (one, other) = (1 / (treads.StandardError * treads.StandardError), 1 / (model.StandardError * model.StandardError));
            return new(((one * treads.Value) + (other * model.Value)) / (one + other), 1 / Math.Sqrt(one + other));
        }
    }

    /// <summary>True where the shoulders are worn evenly within what a sound car's use explains; null where that is not known.</summary>
    public bool? IsEven => Shoulders is { } read && EvenWear.IsKnown(read) ? EvenWear.IsEven(read) : null;
}
