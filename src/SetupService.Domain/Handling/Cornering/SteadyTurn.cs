namespace SetupService.Domain.Handling.Cornering;

/// <summary>A car in a steady turn: its attitude and the gradients there. Method page: docs/methods/cornering.</summary>
/// <param name="Attitude">Its attitude.</param>
/// <param name="UndersteerDegPerG">
/// Change of steer per g of lateral acceleration beyond what the turn's own geometry takes, degrees at the road wheels, radius and tyres held: ISO
/// 8855's understeer gradient. Bump steer and compliance steer count. Positive = understeer. Null where
/// there is no equilibrium just beside this turn.
/// </param>
/// <param name="RollDegPerG">Change of roll per g of lateral acceleration at this turn, the radius held; null as above.</param>
public readonly record struct SteadyTurn(CorneringAttitude Attitude, double? UndersteerDegPerG, double? RollDegPerG)
{
    // Half-width of the central difference: small against the curve's bend, large against the solver's error.
    private const double StepG = 0.0005;

    /// <summary>Solves the turn and its gradients.</summary>
    /// <param name="solver">The car's solver for this direction.</param>
    /// <param name="demand">The turn.</param>
    /// <param name="heldLateralG">
    /// What the tyres are known to hold, g: their peak is scaled to that where it is more than the turn takes; null = nothing is known beyond the turn.
    /// </param>
    /// <param name="failure">Why there is none; null where there is.</param>
    public static SteadyTurn? Solve(CorneringSolver solver, in CorneringDemand demand, double? heldLateralG, out CorneringFailure? failure)
    {
        ArgumentNullException.ThrowIfNull(solver);
        if (SolveAttitude(solver, demand, heldLateralG, out failure) is not { } attitude) return null;
        return WithGradients(solver, demand, attitude);
    }

    /// <summary>The same with tyres whose peak is scaled by at least a known factor.</summary>
    public static SteadyTurn? WithPeak(CorneringSolver solver, in CorneringDemand demand, double leastPeakScale, out CorneringFailure? failure)
    {
        ArgumentNullException.ThrowIfNull(solver);
        failure = solver.Solve(demand.LateralG, demand.RadiusM, leastPeakScale);
        if (failure is not null) return null;
        return WithGradients(solver, demand, solver.Attitude(demand));
    }

    /// <summary>Solves only the attitude.</summary>
    public static CorneringAttitude? SolveAttitude(CorneringSolver solver, in CorneringDemand demand, double? heldLateralG, out CorneringFailure? failure)
    {
        ArgumentNullException.ThrowIfNull(solver);
        var leastPeakScale = 1.0;
        if (heldLateralG is { } held && held > demand.LateralG)
        {
            failure = solver.Solve(held, demand.RadiusM);
            if (failure is not null) return null;
            leastPeakScale = solver.Attitude(demand).PeakScale;
        }

        failure = solver.Solve(demand.LateralG, demand.RadiusM, leastPeakScale);
        return failure is null ? solver.Attitude(demand) : null;
    }

    private static SteadyTurn WithGradients(CorneringSolver solver, in CorneringDemand demand, in CorneringAttitude attitude)
    {
        var from = Math.Max(0, demand.LateralG - StepG);
        var to = demand.LateralG + StepG;
        if (solver.Solve(to, demand.RadiusM, attitude.PeakScale, isPeakHeld: true) is not null) return new(attitude, null, null);
        var (steerDeg, rollDeg) = (solver.SteerBeyondTurnDeg, solver.RollDeg);
        if (solver.Solve(from, demand.RadiusM, attitude.PeakScale, isPeakHeld: true) is not null) return new(attitude, null, null);

        // Not finite where the rack reaches this steer only away from rest height.
        var steerDegPerG = (steerDeg - solver.SteerBeyondTurnDeg) / (to - from);
        return new(attitude, double.IsFinite(steerDegPerG) ? steerDegPerG : null, (rollDeg - solver.RollDeg) / (to - from));
    }
}
