using SetupService.Domain.Answers;
using SetupService.Domain.Handling.Cars;
using SetupService.Domain.Handling.Cornering;
using SetupService.Domain.Handling.Ride;
using SetupService.Domain.Numerics;
using SetupService.Domain.Vehicles;

namespace SetupService.Domain.Handling.WhatIf;

/// <summary>
/// Compares states of a car in one turn, all on the scale of grip of the car as given: a change is judged on the same rubber. Method page: docs/methods/what-if.
/// </summary>
public sealed class WhatIfStudy
{
    private readonly WhatIfCar _car;
    private readonly CorneringDemand _demand;
    private readonly GripScale _scale;
    private readonly CorneringSolver? _stand;
    private readonly WorkBudget? _budget;

    private WhatIfStudy(WhatIfCar car, in CorneringDemand demand, in GripScale scale, WorkBudget? budget)
    {
        (_car, _demand, _scale, _budget) = (car, demand, scale, budget);
        if (CorneringSolver.Create(OnScale(car.Reading.Car), demand.Turn, budget) is not { } solver) return;
        if (solver.Solve(demand.LateralG, demand.RadiusM) is null) _stand = solver;
    }

    /// <summary>Starts a study of a car in a turn; the car has a wheelbase. Where the work allowed is spent its turns fail with <see cref="CorneringFailure.WorkSpent"/>.</summary>
    /// <param name="car">The car as given.</param>
    /// <param name="demand">The turn.</param>
    /// <param name="scale">The scale of grip of the car as given.</param>
    /// <param name="budget">Work allowed; null = any.</param>
    public static WhatIfStudy Compute(WhatIfCar car, in CorneringDemand demand, in GripScale scale, WorkBudget? budget = null)
    {
        ArgumentNullException.ThrowIfNull(car);
        return new(car, demand, scale, budget);
    }

    /// <summary>What the car as given reaches.</summary>
    public WhatIfOutcome? AsGiven() => Outcome(_car, _car.Reading.Car, 0, 0);

    /// <summary>What a changed car reaches, standing at the height its springs hold it; null where its points do not close.</summary>
    public WhatIfOutcome? Changed(WhatIfCar changed)
    {
        ArgumentNullException.ThrowIfNull(changed);
        return ChangedCar.Solve(_car.Reading.Car, _car.Stated, changed.Reading.Car, changed.Stated) is { } settled
            ? Outcome(changed, settled.Car, settled.FrontHeightMm, settled.RearHeightMm)
            : null;
    }

    private const double LeastGuessG = 0.5;

    private HandlingCar OnScale(HandlingCar car) => car with { GripFactor = _scale.Factor };

    private WhatIfOutcome? Outcome(WhatIfCar car, HandlingCar stands, double? frontHeightMm, double? rearHeightMm)
    {
        if (RideAxleBuilder.Build(stands, CarAxle.Front, car.Stated.Front) is not { } front
            || RideAxleBuilder.Build(stands, CarAxle.Rear, car.Stated.Rear) is not { } rear
            || CorneringSolver.Create(OnScale(stands), _demand.Turn, _budget) is not { } solver) return null;
        if (_stand is not null) solver.StartFrom(_stand);
        var turn = SteadyTurn.Solve(solver, _demand, out var failure);
        var attitude = turn?.Attitude;
        var limits = failure is null ? GripLimits.Solve(solver, TurnPath.AtRadius(_demand.Turn, _demand.RadiusM), Math.Max(_demand.LateralG, LeastGuessG)) : default;
        return new(new WhatIfFigures
        {
            RollDeg = attitude?.RollDeg,
            FrontInclinationDeg = attitude?.Outer(CarAxle.Front).InclinationAngleDeg,
            RearInclinationDeg = attitude?.Outer(CarAxle.Rear).InclinationAngleDeg,
            FrontLoadTransferPct = attitude?.FrontLoadTransferPct,
            FrontLimitG = limits.Front.LimitG,
            RearLimitG = limits.Rear.LimitG,
            LimitMarginG = limits.MarginG,
            UndersteerDegPerG = turn?.UndersteerDegPerG,
            FrontBumpLeftMm = attitude?.Outer(CarAxle.Front).BumpLeftMm,
            RearBumpLeftMm = attitude?.Outer(CarAxle.Rear).BumpLeftMm,
            FrontRideFrequencyHz = front.RideFrequencyHz,
            RearRideFrequencyHz = rear.RideFrequencyHz,
            FrontDampingRatio = front.MeanRatio,
            RearDampingRatio = rear.MeanRatio,
            FrontRideHeightMm = frontHeightMm,
            RearRideHeightMm = rearHeightMm,
        }, turn, failure);
    }
}

/// <summary>One state of the car.</summary>
/// <param name="Stated">As stated.</param>
/// <param name="Reading">As prepared for the model.</param>
public sealed record WhatIfCar(Vehicle Stated, ResolvedHandlingCar Reading)
{
    /// <summary>Makes a car ready; null where it is incomplete or its points make no corner.</summary>
    public static WhatIfCar? Create(Vehicle stated, UnitSystem units = UnitSystem.Metric) => HandlingCarBuilder.Build(stated, units) is { } reading ? new(stated, reading) : null;
}

/// <summary>What one state of the car reaches: its figures, or why the turn has none.</summary>
/// <param name="Figures">The figures; those of the turn are null where it has no equilibrium.</param>
/// <param name="Turn">The turn; null where it has no equilibrium.</param>
/// <param name="Failure">Why the turn has no equilibrium; null where it has one.</param>
public readonly record struct WhatIfOutcome(WhatIfFigures Figures, SteadyTurn? Turn, CorneringFailure? Failure);
