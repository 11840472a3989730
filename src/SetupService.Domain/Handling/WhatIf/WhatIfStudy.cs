using SetupService.Domain.Handling.Cars;
using SetupService.Domain.Handling.Cornering;
using SetupService.Domain.Handling.Ride;
using SetupService.Domain.Numerics;
using SetupService.Domain.Suspension;
using SetupService.Domain.Suspension.Steering;
using SetupService.Domain.Vehicles;

namespace SetupService.Domain.Handling.WhatIf;

/// <summary>
/// Compares states of a car in one turn, all on the scale of grip of the car as given: a change is judged on the same rubber. Method page: docs/methods/what-if.
/// </summary>
public sealed class WhatIfStudy
{
    private const double LeastGuessG = 0.5;

    private readonly StandingCar _car;
    private readonly TurnPath _path;
    private readonly double _lateralG;
    private readonly GripScale _scale;
    private readonly WorkBudget? _budget;
    private readonly CorneringSolver? _stand;
    private readonly LimitSpread? _spread;

    private WhatIfStudy(StandingCar car, in TurnPath path, double lateralG, in GripScale scale, WorkBudget? budget)
    {
        (_car, _path, _lateralG, _scale, _budget) = (car, path, lateralG, scale, budget);
        Given = Solve(car, out _stand, out _spread);
    }

    /// <summary>What the car as given reaches.</summary>
    public WhatIfOutcome Given { get; }

    /// <summary>Starts a study of a car in a turn; the car has a wheelbase. Where the work allowed is spent its turns fail with <see cref="CorneringFailure.WorkSpent"/>.</summary>
    /// <param name="car">The car as given.</param>
    /// <param name="path">Radius or speed, and which way.</param>
    /// <param name="lateralG">Lateral acceleration, g.</param>
    /// <param name="scale">The scale of grip of the car as given.</param>
    /// <param name="budget">Work allowed; null = any.</param>
    public static WhatIfStudy Compute(StandingCar car, in TurnPath path, double lateralG, in GripScale scale, WorkBudget? budget = null)
    {
        ArgumentNullException.ThrowIfNull(car);
        return new(car, path, lateralG, scale, budget);
    }

    /// <summary>What a changed car reaches, and how far its limits are from those of the car as given.</summary>
    public WhatIfOutcome Changed(StandingCar changed)
    {
        ArgumentNullException.ThrowIfNull(changed);
        var outcome = Solve(changed, out _, out var spread);
        return _spread is null || spread is null
            ? outcome
            : outcome with { LimitChange = _spread.To(spread, IsOtherTyre(CarAxle.Front), IsOtherTyre(CarAxle.Rear), _scale.HeldLateralG) };

        bool IsOtherTyre(CarAxle at) => changed.Stated.At(at).Tyre is var tyre && _car.Stated.At(at).Tyre is var before && (!Equals(tyre?.Marking, before?.Marking) || tyre?.Category != before?.Category);
    }

    private WhatIfOutcome Solve(StandingCar car, out CorneringSolver? solver, out LimitSpread? spread)
    {
        spread = null;
        var onScale = _scale.Apply(car.Reading with { Car = car.Stands });
        solver = CorneringSolver.Create(onScale.Car, _path.Turn, _budget);
        if (solver is null) return new(Figures(car, null, default), null, new(CorneringFailure.TravelNotReached, _lateralG, 0, false));
        if (_stand is not null) solver.StartFrom(_stand);
        if (SteadyTurn.Solve(solver, _path.At(_lateralG), out _) is not { } turn)
        {
            CorneringRun.Create(onScale.Car, _path, _budget)!.At(_lateralG, out var obstacle);
            return new(Figures(car, null, default), null, obstacle ?? new(CorneringFailure.TravelNotReached, _lateralG, 0, false));
        }

        var limits = GripLimits.Solve(solver, _path, Math.Max(Given?.Limits.LowerG ?? _lateralG, LeastGuessG));
        spread = LimitSpread.Create(onScale, limits, solver, _path);
        return new(Figures(car, turn.Attitude, limits) with { UndersteerDegPerG = turn.UndersteerDegPerG }, turn, null) { Limits = limits };
    }

    private static WhatIfFigures Figures(StandingCar car, CorneringAttitude? attitude, in GripLimits limits)
    {
        var (front, rear) = (car.Stands.Front, car.Stands.Rear);
        return new()
        {
            RollDeg = attitude?.RollDeg,
            FrontInclinationDeg = attitude?.Outer(CarAxle.Front).InclinationAngleDeg,
            RearInclinationDeg = attitude?.Outer(CarAxle.Rear).InclinationAngleDeg,
            FrontLoadTransferPct = attitude?.FrontLoadTransferPct,
            FrontLimitG = limits.Front.LimitG,
            RearLimitG = limits.Rear.LimitG,
            LimitMarginG = limits.MarginG,
            UndersteerDegPerG = null,
            FrontBumpLeftMm = attitude?.Outer(CarAxle.Front).BumpLeftMm,
            RearBumpLeftMm = attitude?.Outer(CarAxle.Rear).BumpLeftMm,
            FrontRideFrequencyHz = car.Front.RideFrequencyHz,
            RearRideFrequencyHz = car.Rear.RideFrequencyHz,
            FrontDampingRatio = car.Front.MeanRatio,
            RearDampingRatio = car.Rear.MeanRatio,
            FrontRideHeightMm = Known(car, CarAxle.Front, FollowingFigure.RideHeight, car.HeightMm.Front),
            RearRideHeightMm = Known(car, CarAxle.Rear, FollowingFigure.RideHeight, car.HeightMm.Rear),
            FrontCamberDeg = CamberDeg(front, CarAxle.Front),
            RearCamberDeg = CamberDeg(rear, CarAxle.Rear),
            FrontRollCentreHeightMm = attitude?.Front.RollCentreHeightMm,
            RearRollCentreHeightMm = attitude?.Rear.RollCentreHeightMm,
            FrontTrackMm = Known(car, CarAxle.Front, FollowingFigure.Track, front.TrackMm),
            RearTrackMm = Known(car, CarAxle.Rear, FollowingFigure.Track, rear.TrackMm),
            FrontScrubRadiusMm = front.Suspension.ScrubRadiusMm(front.SetupOf(CarAxle.Front, WheelSide.Left)),
            FrontUnsprungMassKg = Known(car, CarAxle.Front, FollowingFigure.UnsprungMass, front.UnsprungMassKg),
            RearUnsprungMassKg = Known(car, CarAxle.Rear, FollowingFigure.UnsprungMass, rear.UnsprungMassKg),
        };
    }

    private static double? Known(StandingCar car, CarAxle at, FollowingFigure figure, double? value) => car.Unknown.Any(gap => gap.At == at && gap.Figure == figure) ? null : value;

    private static double? CamberDeg(HandlingAxle axle, CarAxle at) => axle.IsSetAlike
        ? Standing(axle.Suspension, axle.SetupOf(at, WheelSide.Left))
        : (Standing(axle.Suspension, axle.SetupOf(at, WheelSide.Left)) + Standing(axle.Suspension, axle.SetupOf(at, WheelSide.Right))) / 2;

    private static double? Standing(SuspensionModel suspension, WheelSetup setup)
    {
        if (suspension.MotionOf(setup) is not { } motion) return null;
        var pose = motion.Origin;
        return motion.TryAt(0, 0, ref pose, out var wheel) && !wheel.IsBeyondReadings ? wheel.CamberDeg : null;
    }
}

/// <summary>What one state of the car reaches: its figures, or why the turn has none.</summary>
/// <param name="Figures">The figures; those of the turn are null where it has no equilibrium.</param>
/// <param name="Turn">The turn; null where it has no equilibrium.</param>
/// <param name="Obstacle">Why the turn has no equilibrium; null where it has one.</param>
public sealed record WhatIfOutcome(WhatIfFigures Figures, SteadyTurn? Turn, CorneringObstacle? Obstacle)
{
    /// <summary>What each axle can hold.</summary>
    public GripLimits Limits { get; init; }

    /// <summary>How far that is from the car as given; null for that car itself, and where a limit is not known.</summary>
    public LimitChange? LimitChange { get; init; }
}
