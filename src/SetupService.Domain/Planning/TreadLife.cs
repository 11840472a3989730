using SetupService.Domain.Handling.Ride;
using SetupService.Domain.Numerics;
using SetupService.Domain.Vehicles;
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
    private readonly double _givenMm;

    private TreadLife(PlanCase plan, WorkBudget budget, LearnedTread front, LearnedTread rear)
    {
        (_plan, _budget, _bends, _front, _rear) = (plan, budget, plan.Wear!.Case.Use, front, rear);
        _givenMm = MostWornMm(front.Axle, rear.Axle);
    }

    /// <summary>The life of a plan's treads; null where none were read that tell it, or the car is not used.</summary>
    public static TreadLife? Create(PlanCase plan, WorkBudget budget) =>
        plan.Wear is { Front: { } front, Rear: { } rear } && (plan.Use.RoadKm > 0 || plan.Use.TrackKm > 0) ? new(plan, budget, front, rear) : null;

    /// <summary>By what the life of the tyre that ends first is multiplied; null where a tyre is another, or the car has no equilibrium in the bends its treads were learned in.</summary>
    public double? Factor(StandingCar car)
    {
        if (ReferenceEquals(car, _plan.Given)) return 1;
        if (IsOtherTyre(CarAxle.Front) || IsOtherTyre(CarAxle.Rear)) return null;
        return TrackBends.Solve(car.Stands, car.Stated, _bends, _budget) is { } use && MostWornMm(use.Front, use.Rear) is > 0 and var mostMm ? _givenMm / mostMm : null;

        bool IsOtherTyre(CarAxle at) => car.Stated.At(at).Tyre is var tyre && _plan.Given.Stated.At(at).Tyre is var before && (!Equals(tyre?.Marking, before?.Marking) || tyre?.Category != before?.Category);
    }

    private double MostWornMm(AxleUse front, AxleUse rear) => Math.Max(MostWornMm(front, _front), MostWornMm(rear, _rear));

    private double MostWornMm(AxleUse axle, LearnedTread learned)
    {
        Span<double> parameters = stackalloc double[TreadWearParameters.Count];
        for (var i = 0; i < parameters.Length; i++) parameters[i] = learned.Parameter(i).Value;
        var most = 0.0;
        var at = TreadZone.UsualPct;
        foreach (var wheel in (ReadOnlySpan<WheelUse>)[axle.Left, axle.Right])
        {
            foreach (var place in (ReadOnlySpan<double>)[at.Outer, at.Centre, at.Inner])
                most = Math.Max(most, TreadWearModel.WornMm(wheel, new TreadZone(place, 0).Inward, _plan.Use.RoadKm, _plan.Use.TrackKm, parameters));
        }

        return most;
    }
}
