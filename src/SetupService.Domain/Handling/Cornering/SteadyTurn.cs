namespace SetupService.Domain.Handling.Cornering;

/// <summary>A car in a steady turn: how it stands, and how its balance goes on from there. Method page: docs/methods/cornering.</summary>
/// <param name="Attitude">How it stands.</param>
/// <param name="UndersteerDegPerG">
/// Change of steer per g of lateral acceleration beyond what the turn's own geometry takes, degrees at the road wheels, radius and tyres held: ISO
/// 8855's understeer gradient. Bump steer and the give of the suspension count. Positive = more steer is wanted the harder it turns. Null where
/// the car does not stand a little to both sides of this turn.
/// </param>
/// <param name="RollDegPerG">Change of roll per g of lateral acceleration at this turn, the radius held; null as above.</param>
public readonly record struct SteadyTurn(CorneringAttitude Attitude, double? UndersteerDegPerG, double? RollDegPerG)
{
    // Small beside what bends the curve, large beside the solver's own error.
    private const double StepG = 0.0005;

    /// <summary>Finds it.</summary>
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

    /// <summary>Finds it with tyres whose peak is scaled by at least a factor known already.</summary>
    public static SteadyTurn? WithPeak(CorneringSolver solver, in CorneringDemand demand, double leastPeakScale, out CorneringFailure? failure)
    {
        ArgumentNullException.ThrowIfNull(solver);
        failure = solver.Solve(demand.LateralG, demand.RadiusM, leastPeakScale);
        if (failure is not null) return null;
        return WithGradients(solver, demand, solver.Attitude(demand));
    }

    /// <summary>Finds only how the car stands.</summary>
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

        // Where the rack steers so far only off ride height, what the driver steers is not told.
        var steerDegPerG = (steerDeg - solver.SteerBeyondTurnDeg) / (to - from);
        return new(attitude, double.IsFinite(steerDegPerG) ? steerDegPerG : null, (rollDeg - solver.RollDeg) / (to - from));
    }
}
