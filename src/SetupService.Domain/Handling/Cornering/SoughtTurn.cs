namespace SetupService.Domain.Handling.Cornering;

/// <summary>
/// A turn that is not given but sought, by something its attitude must have: what of it is free is put nearer to what that needs after every step of the solver, so that both come to
/// an end together and nothing is solved twice.
/// </summary>
internal abstract class SoughtTurn
{
    /// <summary>True where the state the solver is in, when in balance, is what was sought.</summary>
    public abstract bool IsFound(CorneringSolver solver);

    /// <summary>Puts what is free nearer after a step; false where that leads nowhere.</summary>
    /// <param name="solver">The solver, after its step.</param>
    /// <param name="demand">The turn it is in; receives the one it is to go on with.</param>
    public abstract bool TryImprove(CorneringSolver solver, ref CorneringDemand demand);
}
