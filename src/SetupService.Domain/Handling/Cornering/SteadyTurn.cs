namespace SetupService.Domain.Handling.Cornering;

/// <summary>A car in a steady turn: its attitude and the gradients there. Method page: docs/methods/cornering.</summary>
/// <param name="Attitude">Its attitude.</param>
/// <param name="UndersteerDegPerG">
/// Change of steer per g of lateral acceleration beyond what the turn's own geometry takes, degrees at the road wheels, radius held: ISO
/// 8855's understeer gradient. Bump steer and compliance steer count. Positive = understeer. Null where <paramref name="NoGradient"/> says why.
/// </param>
/// <param name="NoGradient">Why the understeer gradient says nothing here; null where it has a value.</param>
/// <param name="RollDegPerG">Change of roll per g of lateral acceleration at this turn, the radius held; null where there is no equilibrium just beside this turn.</param>
public readonly record struct SteadyTurn(CorneringAttitude Attitude, double? UndersteerDegPerG, NoGradientReason? NoGradient, double? RollDegPerG)
{
    /// <summary>The share of its grip beyond which the slip of an axle grows so fast that a gradient tells nothing of the balance; common practice, no source.</summary>
    public const double MostUsedForGradient = 0.9;

    // Half-width of the central difference: small against the curve's bend, large against the solver's error.
    private const double StepG = 0.0005;

    /// <summary>Solves the turn and its gradients.</summary>
    /// <param name="solver">The car's solver for this direction.</param>
    /// <param name="demand">The turn.</param>
    /// <param name="failure">Why there is none; null where there is.</param>
    public static SteadyTurn? Solve(CorneringSolver solver, in CorneringDemand demand, out CorneringFailure? failure)
    {
        if (SolveAttitude(solver, demand, out failure) is not { } attitude) return null;
        var from = Math.Max(0, demand.LateralG - StepG);
        var to = demand.LateralG + StepG;
        if (solver.Solve(demand with { LateralG = to }) is not null) return new(attitude, null, NoGradientReason.NoEquilibriumBeside, null);
        var (steerDeg, rollDeg) = (solver.SteerBeyondTurnDeg, solver.RollDeg);
        if (solver.Solve(demand with { LateralG = from }) is not null) return new(attitude, null, NoGradientReason.NoEquilibriumBeside, null);

        // Not finite where the rack reaches this steer only away from rest height.
        var steerDegPerG = (steerDeg - solver.SteerBeyondTurnDeg) / (to - from);
        NoGradientReason? reason = Math.Max(attitude.Front.GripUsed, attitude.Rear.GripUsed) > MostUsedForGradient ? NoGradientReason.NearLimit
            : attitude.HasLiftedWheel ? NoGradientReason.WheelLifted
            : double.IsFinite(steerDegPerG) ? null : NoGradientReason.NoEquilibriumBeside;
        return new(attitude, reason is null ? steerDegPerG : null, reason, (rollDeg - solver.RollDeg) / (to - from));
    }

    /// <summary>Solves only the attitude.</summary>
    public static CorneringAttitude? SolveAttitude(CorneringSolver solver, in CorneringDemand demand, out CorneringFailure? failure)
    {
        ArgumentNullException.ThrowIfNull(solver);
        failure = solver.Solve(demand);
        return failure is null ? solver.Attitude(demand) : null;
    }
}

/// <summary>Why an understeer gradient says nothing.</summary>
public enum NoGradientReason
{
    /// <summary>An axle uses more than nine tenths of its grip.</summary>
    NearLimit,

    /// <summary>A wheel has left the road.</summary>
    WheelLifted,

    /// <summary>There is no equilibrium just beside this turn, or no steer that leads there.</summary>
    NoEquilibriumBeside,
}
