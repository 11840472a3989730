using SetupService.Domain.Answers;
using SetupService.Domain.Handling.Cars;
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

    /// <summary>The wear model of an axle.</summary>
    public LearnedTread? At(CarAxle axle) => axle == CarAxle.Front ? Front : Rear;

    /// <summary>Studies a car.</summary>
    /// <param name="wear">What was read.</param>
    /// <param name="car">The car ready for the cornering model, with a wheelbase; null where it is not known well enough, or sees no track.</param>
    /// <param name="budget">Work allowed for the cornering and wear models; null = no limit.</param>
    public static WearStudy Compute(WearCase wear, HandlingCar? car, WorkBudget? budget = null)
    {
        ArgumentNullException.ThrowIfNull(wear);
        if (car is null || wear.Use.TrackLaps is 0 || TrackBends.Solve(car, wear.Vehicle, wear.Use, budget) is not { } use)
            return new(wear, WearDiagnosis.Compute(wear), null, null) { IsWorkSpent = budget is { IsSpent: true } };
        var front = Learn(use.Front, WheelPosition.FrontLeft, WheelPosition.FrontRight);
        var rear = Learn(use.Rear, WheelPosition.RearLeft, WheelPosition.RearRight);

        // The causes weigh the treads themselves: of the model they get what it knows without them.
        return new(wear, WearDiagnosis.Compute(wear, at => new CarSigns(Beforehand(at == CarAxle.Front ? use.Front : use.Rear), null)), front, rear) { IsWorkSpent = budget is { IsSpent: true } };

        LearnedTread? Learn(AxleUse axle, WheelPosition left, WheelPosition right) =>
            LearnedTread.Fit(axle, wear.At(left), wear.At(right), wear.Use.RoadKm ?? 0, (wear.Use.TrackLaps ?? 0) * (wear.Use.LapKm ?? TrackShare.UsualLapKm), budget);
    }

    private static Estimate? Beforehand(AxleUse axle) => axle.CamberShortDeg;
}
