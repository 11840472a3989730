using SetupService.Domain.Handling.Cars;
using SetupService.Domain.Handling.Ride;
using SetupService.Domain.Numerics;
using SetupService.Domain.Wear.Readings;
using SetupService.Domain.Wear.TreadWear;

namespace SetupService.Domain.Planning;

/// <summary>
/// How a package's treads wear over a year of the use stated, by the wear model as learned from the treads that were read: the fastest place of all four tyres against that of the
/// car as given. Another tyre wears by its own rubber, which those treads do not tell.
/// </summary>
internal sealed class TreadLife
{
    private readonly PlanCase _plan;
    private readonly WorkBudget _budget;
    private readonly WearUse _bends;
    private readonly LearnedTread _front;
    private readonly LearnedTread _rear;
    private readonly TrackUse _given;

    private TreadLife(PlanCase plan, WorkBudget budget, LearnedTread front, LearnedTread rear)
    {
        (_plan, _budget, _bends, _front, _rear) = (plan, budget, plan.Wear!.Case.Use, front, rear);
        _given = new(front.Axle, rear.Axle);
    }

    /// <summary>The life of a plan's treads; null where none were read that tell it, the model contradicts them, or the car is not used.</summary>
    public static TreadLife? Create(PlanCase plan, WorkBudget budget) =>
        plan.Wear is { Front: { } front, Rear: { } rear } && plan.ContradictedAt is null && (plan.Use.RoadKm > 0 || plan.Use.TrackKm > 0) ? new(plan, budget, front, rear) : null;

    /// <summary>What wears the tyres of a car; null where a tyre is another than the car's as given, or the car has no equilibrium in the bends its treads were learned in.</summary>
    /// <param name="car">The car.</param>
    /// <param name="stands">It as it stands, or a variation of that.</param>
    public TrackUse? Use(StandingCar car, HandlingCar stands)
    {
        if (ReferenceEquals(stands, _plan.Given.Stands)) return _given;
        if (_plan.HasOtherTyre(car)) return null;
        return TrackBends.Solve(stands, car.Stated, _bends, _given, _budget);
    }

    /// <summary>By what the life of the tyre that ends first is multiplied; null where it is not known.</summary>
    /// <param name="use">What wears the tyres.</param>
    /// <param name="given">What wears those it is compared with; null = of the car as given.</param>
    public double? Factor(TrackUse? use, TrackUse? given = null) => use is not null && MostWornMm(use) is > 0 and var mostMm ? MostWornMm(given ?? _given) / mostMm : null;

    /// <summary>By how much one standard error of each independent unknown of both axles' wear models, the front's first, moves the factor of the car as given and another; empty where it is not known.</summary>
    /// <param name="use">What wears the other's tyres.</param>
    public double[] Effects(TrackUse? use)
    {
        if (use is null) return [];
        Span<double> given = stackalloc double[2 * TreadWearParameters.Count], effects = stackalloc double[2 * TreadWearParameters.Count];
        var (givenMm, mostMm) = (MostWornMm(_given, given), MostWornMm(use, effects));
        if (mostMm <= 0) return [];
        for (var i = 0; i < effects.Length; i++) effects[i] = givenMm / mostMm * (given[i] - effects[i]);
        return effects.ToArray();
    }

    private double MostWornMm(TrackUse use) => Math.Max(_front.MostWornMm(use.Front, _plan.Use.RoadKm, _plan.Use.TrackKm), _rear.MostWornMm(use.Rear, _plan.Use.RoadKm, _plan.Use.TrackKm));

    // The same, and what moves its logarithm: only the axle whose tyre ends first does.
    private double MostWornMm(TrackUse use, Span<double> effects)
    {
        var front = effects[..TreadWearParameters.Count];
        var rear = effects[TreadWearParameters.Count..];
        var (frontMm, rearMm) = (_front.MostWornMm(use.Front, _plan.Use.RoadKm, _plan.Use.TrackKm, front), _rear.MostWornMm(use.Rear, _plan.Use.RoadKm, _plan.Use.TrackKm, rear));
        (frontMm >= rearMm ? rear : front).Clear();
        return Math.Max(frontMm, rearMm);
    }
}
