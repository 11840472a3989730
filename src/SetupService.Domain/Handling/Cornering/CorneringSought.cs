using SetupService.Domain.Handling.Cars;
using SetupService.Domain.Handling.Cornering.Balance;
using SetupService.Domain.Vehicles;

namespace SetupService.Domain.Handling.Cornering;

/// <summary>Turns solved for more than their attitude: for what is sought with it, or for the scale of grip on which the car holds them.</summary>
public sealed partial class CorneringSolver
{
    // Largest residual, as a share of the weight, where the scale of grip is sought: hardly anything of it hangs on how exactly slip and steer are found.
    private const double ScaledTolerance = 1e-8;
    private const double MostOfBefore = 0.7;

    // The same where a turn is sought by a travel; and by what share lateral acceleration may still change there. It is told as one step more would make it, which leaves open a small share of that.
    private const double SoughtTolerance = 1e-7;
    private const double SoughtShare = 2e-7;

    // How near it first comes to standing where it begins.
    private const double BegunTolerance = 1e-3;

    // By what share a harder turn is looked at for how travel goes with it: everything in that is as good as linear.
    private const double HarderShare = 1e-3;

    private double? _heldByTurn;
    private double _gripScale = 1;
    private (double Last, double BeforeLast) _scales;

    /// <summary>
    /// Solves a turn with the friction of all four tyres scaled, in every step, so that the harder pressed axle uses all its grip in a turn so many times as hard; where that does not converge,
    /// by continuation from rest. Afterwards the tyres are what they were.
    /// </summary>
    /// <param name="demand">The turn.</param>
    /// <param name="heldByTurn">Lateral acceleration the tyres are to hold by that of the turn.</param>
    /// <param name="scale">The factor on their friction.</param>
    internal CorneringFailure? SolveScaled(in CorneringDemand demand, double heldByTurn, out double scale)
    {
        (_heldByTurn, _gripScale) = (heldByTurn, 1);
        var failure = Solve(demand, ScaledTolerance);

        // The other axle's slip, near its own peak, goes far with the scale, and the steer with it: the scale closes in by the same share step after step, and where that leads is told (Aitken's method).
        var (last, before) = (_gripScale - _scales.Last, _scales.Last - _scales.BeforeLast);
        scale = Math.Abs(last) < MostOfBefore * Math.Abs(before) ? _gripScale + (last * last / (before - last)) : _gripScale;
        (_heldByTurn, _gripScale) = (null, 1);
        PutGrip();
        return failure;
    }

    /// <summary>
    /// Seeks the turn in which an axle's outer wheel has a travel, from the last solution, or from rest, and from there only; where none is found the solution is lost. The car first comes near
    /// to standing in the turn to begin with, by which the caller tells what is sought; then lateral acceleration is an unknown beside the attitude and the travel an equation beside the
    /// equilibrium's: each Newton step takes both, so that nothing is solved twice.
    /// </summary>
    /// <param name="demand">Where to begin.</param>
    /// <param name="aim">Tells by the solver, which stands where it began, which travel of which axle is sought; null = none.</param>
    /// <param name="hardestG">The hardest turn looked at, g.</param>
    /// <param name="lateralG">Lateral acceleration of the turn, g; null where none was sought.</param>
    internal CorneringFailure? SeekTravel(in CorneringDemand demand, Func<CorneringSolver, (CarAxle At, double TravelMm)?> aim, double hardestG, out double? lateralG)
    {
        BeyondReadings = null;
        return SeekFromCurrent(demand, aim, hardestG, out lateralG) ?? Reached();
    }

    private CorneringFailure? SeekFromCurrent(CorneringDemand demand, Func<CorneringSolver, (CarAxle At, double TravelMm)?> aim, double hardestG, out double? lateralG)
    {
        lateralG = null;
        var radiusMm = demand.RadiusM * 1000;
        var acceleration = Demand(demand);
        _centreStationMm = Math.Clamp(_centreStationMm, -FurthestCentre * radiusMm, FurthestCentre * radiusMm);
        if (_needsPoses && !TryUpdatePoses()) return CorneringFailure.TravelNotReached;
        (_needsPoses, _isHeldBack) = (false, false);
        var weight = _front.StaticLoadN + _rear.StaticLoadN;
        (CarAxle At, double TravelMm)? sought = null;
        for (var step = 0; step < SmoothSteps; step++)
        {
            if (_budget is not null && !_budget.TrySpend()) return CorneringFailure.WorkSpent;
            var (sin, cos) = Math.SinCos(_rollRad);
            _front.ApplyBody(sin, cos);
            _rear.ApplyBody(sin, cos);
            if (Steer(acceleration, radiusMm, 0) is not { } found) return CorneringFailure.RollsOver;
            var (residual, change) = BodyBalance.Compute(_body, _front, _rear, acceleration, sin, cos, 0);
            var isFirst = sought is null && residual <= BegunTolerance && found.MovedN <= 10 * BegunTolerance * weight && step > 0;
            if (isFirst && (sought = aim(this)) is null) return null;
            if (sought is var (at, travelMm))
            {
                var harder = Harder(demand, sin, cos);
                var nowMm = OuterTravelMm(at) + change.OuterMm(at);
                var mmPerG = (harder.OuterMm(at) - change.OuterMm(at)) / (HarderShare * demand.LateralG);

                // At first by the line through rest bent as it is here: springs, links and tyres give way more and more.
                var bend = isFirst ? Math.Max(0, ((mmPerG * demand.LateralG) - nowMm) / (demand.LateralG * demand.LateralG)) : 0;
                var moreG = 2 * (travelMm - nowMm) / (mmPerG + Math.Sqrt((mmPerG * mmPerG) + Math.Max(0, 4 * bend * (travelMm - nowMm))));
                var g = demand.LateralG + moreG;
                if (!(mmPerG > 0 && g > 0 && g <= hardestG)) return CorneringFailure.RollsOver;
                if (residual <= SoughtTolerance && found.MovedN <= 100 * SoughtTolerance * weight && Math.Abs(moreG) <= SoughtShare * g)
                {
                    lateralG = g;
                    return change.IsHeld && IsStanding() ? null : CorneringFailure.RollsOver;
                }

                change = change.Towards(harder, moreG / (HarderShare * demand.LateralG));
                demand = demand with { LateralG = g };
                acceleration = Demand(demand);
            }

            change = change with { Steer = found.Steer };
            if (residual <= PredictionTolerance && SteerAhead(change, cos, acceleration, radiusMm) is { } ahead)
                change = BodyBalance.Compute(_body, _front, _rear, acceleration, sin, cos, ahead.Steer).Change;
            if (!double.IsFinite(change.RollSine)) return CorneringFailure.RollsOver;
            if (!Step(change, 1)) return CorneringFailure.TravelNotReached;
            if (Math.Abs(_rollRad) > FurthestRollRad) return CorneringFailure.RollsOver;
        }

        return CorneringFailure.RollsOver;
    }

    /// <summary>The step of a turn harder by <see cref="HarderShare"/>, side forces going with it as they are shared; afterwards they are what they were.</summary>
    private BodyChange Harder(in CorneringDemand demand, double sin, double cos)
    {
        var (frontN, rearN) = (_front.Outer.SideForceN, _rear.Outer.SideForceN);
        var acceleration = Place(demand with { LateralG = demand.LateralG * (1 + HarderShare) }, frontN * (1 + HarderShare), rearN * (1 + HarderShare));
        var change = BodyBalance.Compute(_body, _front, _rear, acceleration, sin, cos, 0).Change;
        Place(demand, frontN, rearN);
        return change;
    }

    private double Place(in CorneringDemand demand, double frontOuterN, double rearOuterN)
    {
        var acceleration = Demand(demand);
        _front.PlaceSideForce(frontOuterN, acceleration);
        _rear.PlaceSideForce(rearOuterN, acceleration);
        return acceleration;
    }

    private double Demand(in CorneringDemand demand)
    {
        var acceleration = demand.LateralG * HandlingCar.StandardGravity;
        Demand(acceleration, LongitudinalForces.Compute(_car, demand));
        return acceleration;
    }
}
