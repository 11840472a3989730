using SetupService.Domain.Handling.Cars;
using SetupService.Domain.Handling.Cornering;
using SetupService.Domain.Handling.Tyres;
using SetupService.Domain.Numerics;
using SetupService.Domain.Vehicles;

namespace SetupService.Domain.Handling.Envelope;

/// <summary>
/// The most lateral acceleration a car stands over longitudinal acceleration, quasi-steady: no yaw acceleration, no engine limit. Where its first axle uses all its side force, or its
/// brakes or driven wheels all they hold beside it, that is the end. Method page: docs/methods/envelope. Not thread-safe.
/// </summary>
public sealed class GripEnvelope
{
    private const double FirstGuessG = 0.8;
    private const double AgreedG = 1e-7;
    private const double StraightAgreedG = 1e-4;
    private const double HardestStraightG = 3;
    private const int MostTries = 60;

    // So far beyond where a wheel's travel ends a point, g, it is seen which wheel that is.
    private const double JustBeyondG = 0.01;

    // The equilibrium ends within so much of the hardest turn that was seen to stand, g; no turn is taken for that end further back than the second.
    private const double JustWithinG = 1e-3;
    private const double FurthestWithinG = 0.05;

    // Used by more than this is past the end; rounding of a share.
    private const double All = 1 + 1e-9;

    // Up to this it is as good as held where that was sought.
    private const double Held = 1 + 1e-5;

    private readonly CorneringSolver _solver;
    private readonly HandlingCar _car;
    private readonly TurnPath _path;
    private double _guessG = FirstGuessG;

    private GripEnvelope(CorneringSolver solver, HandlingCar car, TurnPath path) => (_solver, _car, _path) = (solver, car, path);

    /// <summary>Creates one; null where the hardpoints do not close at ride height. The car must have a wheelbase.</summary>
    /// <param name="car">The car, on its scale of grip.</param>
    /// <param name="path">Which way, and at which radius or speed.</param>
    /// <param name="budget">Work allowed for all points together; null = any.</param>
    public static GripEnvelope? Create(HandlingCar car, in TurnPath path, WorkBudget? budget = null) =>
        CorneringSolver.Create(car, path.Turn, budget) is { } solver ? new(solver, car, path) : null;

    /// <summary>The most lateral acceleration at a longitudinal one, g; negative = braking. Each point is sought from the last; allocates nothing.</summary>
    public EnvelopePoint At(double longitudinalG)
    {
        var path = _path.WithLongitudinal(longitudinalG);
        if (longitudinalG > 0 && _car.DriveShareFrontPct is null) return new(longitudinalG, null, EnvelopeEnd.DrivenAxleUnknown, default, null);
        if (StraightEnd(longitudinalG) is { } straightEnd) return new(longitudinalG, null, straightEnd, default, null);
        var limits = GripLimits.Solve(_solver, path, _guessG);
        var (lateralG, end) = First(limits);
        if (lateralG is not { } g) return new(longitudinalG, null, end, limits, null);
        if (g <= 0 && _solver.Solve(path.At(0)) is { } unbalanced) return new(longitudinalG, null, EndOf(unbalanced), limits, null);
        var reach = end == EnvelopeEnd.Travel && _solver.Solve(path.At(g + JustBeyondG)) is CorneringFailure.TravelNotReached ? _solver.BeyondReadings ?? _solver.Missed : null;
        if (SolveWithin(path, ref g) is { } missed) return new(longitudinalG, null, EndOf(missed), limits, null);
        if (Along() > All)
        {
            end = EndAlong();
            g = EndOfForceG(path, g);
            if (_solver.Solve(path.At(g)) is { } lost) return new(longitudinalG, null, EndOf(lost), limits, null);

            // Even straight ahead wheels may carry less than half of their axle's load each.
            if (Along() > Held) return new(longitudinalG, null, end, limits, null);
        }

        _guessG = Math.Max(g, 0.1);
        return new(longitudinalG, g, end, limits, _solver.Attitude(path.At(g))) { Reach = end == EnvelopeEnd.Travel ? reach : null };
    }

    /// <summary>The most braking (below 0) or driving the tyres hold straight ahead, g, and what ends it; null where nobody said which axle is driven.</summary>
    public (double? LongitudinalG, EnvelopeEnd End) Straight(bool braking)
    {
        if (!braking && _car.DriveShareFrontPct is null) return (null, EnvelopeEnd.DrivenAxleUnknown);
        var (holds, fails) = (0.0, HardestStraightG);
        var end = EnvelopeEnd.AxleUnloaded;
        while (fails - holds > StraightAgreedG)
        {
            var middle = (holds + fails) / 2;
            if (StraightEnd(braking ? -middle : middle) is not { } met)
            {
                holds = middle;
                continue;
            }

            (fails, end) = (middle, met);
        }

        return (braking ? -holds : holds, end);
    }

    /// <summary>What keeps the car from braking or driving so straight ahead, where every wheel carries its own and half of what its axle is given; null where nothing does.</summary>
    private EnvelopeEnd? StraightEnd(double longitudinalG)
    {
        var forces = LongitudinalForces.Compute(_car, _path.WithLongitudinal(longitudinalG).At(0));
        var (front, rear) = (Used(_car.Front, forces.FrontN, forces.FrontLoadN), Used(_car.Rear, forces.RearN, forces.RearLoadN));
        if (front < 0 || rear < 0) return EnvelopeEnd.AxleUnloaded;
        return Math.Max(front, rear) <= All ? null : front >= rear ? EnvelopeEnd.FrontLongitudinal : EnvelopeEnd.RearLongitudinal;

        double Used(HandlingAxle axle, double forceN, double addedN)
        {
            if (axle.LoadN + addedN <= 0) return -1;
            var tyre = _car.TyreOf(axle);
            var (left, right) = (PassengerTyre.LongitudinalPeakN(axle.LeftLoadN + (addedN / 2), tyre), PassengerTyre.LongitudinalPeakN(axle.RightLoadN + (addedN / 2), tyre));
            return LongitudinalShare.Compute(forceN, left, right, _car.Differential).Used;
        }
    }

    /// <summary>Solves the turn, or one a little less hard: beside where the equilibrium ends the same turn may be found from one side and not from rest.</summary>
    private CorneringFailure? SolveWithin(in TurnPath path, ref double lateralG)
    {
        var failure = _solver.Solve(path.At(lateralG));
        for (var backG = JustWithinG; failure is not null and not CorneringFailure.WorkSpent && backG < Math.Min(lateralG, FurthestWithinG); backG *= 2)
        {
            failure = _solver.Solve(path.At(lateralG - backG));
            if (failure is null) lateralG -= backG;
        }

        return failure;
    }

    /// <summary>The lower limit, or where the equilibrium ends before it.</summary>
    private static (double? LateralG, EnvelopeEnd End) First(in GripLimits limits) => (limits.Front, limits.Rear) switch
    {
        ({ EndedBy: CorneringFailure.WorkSpent }, _) or (_, { EndedBy: CorneringFailure.WorkSpent }) => (null, EnvelopeEnd.WorkSpent),
        ({ LimitG: { } front }, { LimitG: { } rear }) => front <= rear ? (front, EnvelopeEnd.Front) : (rear, EnvelopeEnd.Rear),
        ({ LimitG: { } front }, _) => (front, EnvelopeEnd.Front),
        (_, { LimitG: { } rear }) => (rear, EnvelopeEnd.Rear),
        _ => (Math.Max(limits.Front.StandsToG, limits.Rear.StandsToG), EndOf(limits.Front.EndedBy ?? CorneringFailure.RollsOver)),
    };

    private static EnvelopeEnd EndOf(CorneringFailure failure) => failure switch
    {
        CorneringFailure.TravelNotReached => EnvelopeEnd.Travel,
        CorneringFailure.AxleUnloaded => EnvelopeEnd.AxleUnloaded,
        CorneringFailure.WorkSpent => EnvelopeEnd.WorkSpent,
        _ => EnvelopeEnd.RollOver,
    };

    private double Along() => Math.Max(_solver.LongitudinalUsed(CarAxle.Front), _solver.LongitudinalUsed(CarAxle.Rear));

    private EnvelopeEnd EndAlong() =>
        _solver.LongitudinalUsed(CarAxle.Front) >= _solver.LongitudinalUsed(CarAxle.Rear) ? EnvelopeEnd.FrontLongitudinal : EnvelopeEnd.RearLongitudinal;

    /// <summary>
    /// The lateral acceleration at which brakes or driven wheels need all they hold, below one at which they need more: by false position, its old end weighted less where it
    /// stays (the Illinois rule). 0 where they do not hold it anywhere.
    /// </summary>
    private double EndOfForceG(in TurnPath path, double beyondG)
    {
        var (low, high) = (0.0, beyondG);
        var (atLow, atHigh) = (Missing(path, low), Missing(path, high));
        for (var tries = 0; tries < MostTries && high - low > AgreedG; tries++)
        {
            var g = low - (atLow * (high - low) / (atHigh - atLow));
            if (!(g > low && g < high)) g = (low + high) / 2;
            var at = Missing(path, g);
            if (at > 0)
            {
                (high, atHigh) = (g, at);
                atLow /= 2;
            }
            else
            {
                (low, atLow) = (g, at);
                if (at > -AgreedG) break;
                atHigh /= 2;
            }
        }

        return low;
    }

    /// <summary>By how much brakes or driven wheels need more grip than they have, as a share; bounded, so that a lifted wheel, whose axle has no grip, does not hide the rest.</summary>
    private double Missing(in TurnPath path, double lateralG) => _solver.Solve(path.At(lateralG)) is null ? Math.Min(Along(), 2) - 1 : 1;
}

/// <summary>What ends the lateral acceleration a car stands.</summary>
public enum EnvelopeEnd
{
    /// <summary>The front tyres give all their side force: it pushes wide.</summary>
    Front,

    /// <summary>The rear tyres give all their side force: it may spin.</summary>
    Rear,

    /// <summary>The front tyres cannot brake or drive so hard, as brakes or differential share it.</summary>
    FrontLongitudinal,

    /// <summary>The rear tyres cannot brake or drive so hard, as brakes or differential share it.</summary>
    RearLongitudinal,

    /// <summary>It would roll over, or the model finds no balance.</summary>
    RollOver,

    /// <summary>A wheel would travel or steer further than its suspension, or its readings, reach.</summary>
    Travel,

    /// <summary>An axle would carry nothing.</summary>
    AxleUnloaded,

    /// <summary>Driving is asked for and nobody said which axle is driven.</summary>
    DrivenAxleUnknown,

    /// <summary>The work allowed was spent.</summary>
    WorkSpent,
}

/// <summary>One point of the envelope.</summary>
/// <param name="LongitudinalG">Longitudinal acceleration, g; negative = braking.</param>
/// <param name="LateralG">The most lateral acceleration there, g; null where the car does not get there at all.</param>
/// <param name="End">What ends it.</param>
/// <param name="Limits">Both axles' own limits, where they were sought.</param>
/// <param name="Attitude">The car there; null where it does not get there.</param>
public readonly record struct EnvelopePoint(double LongitudinalG, double? LateralG, EnvelopeEnd End, GripLimits Limits, CorneringAttitude? Attitude)
{
    /// <summary>The wheel whose travel ends it; null where that is not the end, or not known.</summary>
    public WheelReach? Reach { get; init; }
}
