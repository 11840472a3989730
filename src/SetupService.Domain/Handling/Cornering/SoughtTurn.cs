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

/// <summary>Turns solved for more than their attitude: for what is sought with it, or for the scale of grip on which the car holds them.</summary>
public sealed partial class CorneringSolver
{
    // Largest residual, as a share of the weight, where the scale of grip is sought: hardly anything of it hangs on how exactly slip and steer are found.
    private const double ScaledTolerance = 1e-8;
    private const double MostOfBefore = 0.7;

    // The same where a turn is sought by what its attitude must have.
    private const double SoughtTolerance = 1e-9;

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

    /// <summary>Seeks a turn from the last solution, or from rest, and from there only; where none is found the solution is lost.</summary>
    /// <param name="demand">Where to begin.</param>
    /// <param name="sought">What is sought; it tells what of the turn it found.</param>
    internal CorneringFailure? Seek(in CorneringDemand demand, SoughtTurn sought)
    {
        BeyondReadings = null;
        return SolveFromCurrent(demand, LongitudinalForces.Compute(_car, demand), SoughtTolerance, sought) ?? Reached();
    }
}
