namespace SetupService.Domain.Numerics;

/// <summary>
/// How many steps a computation may still take, and whether its caller is still there. Solvers look at it inside their loops and end with
/// a named outcome where it is spent. One per call; not safe for several threads.
/// </summary>
/// <param name="steps">Steps allowed: a step is about one closure of a corner or one iteration of an equilibrium.</param>
/// <param name="cancellation">The caller, who may have gone.</param>
public sealed class WorkBudget(long steps, CancellationToken cancellation = default)
{
    /// <summary>More than any request within the contract's limits takes: a sweep of 5,000 rows takes some 20,000 steps.</summary>
    public const long GenerousSteps = 20_000_000;

    private long _left = steps;

    /// <summary>True once no step is left or the caller has gone.</summary>
    public bool IsSpent => _left < 0 || cancellation.IsCancellationRequested;

    /// <summary>A budget that no reasonable request spends.</summary>
    public static WorkBudget Generous(CancellationToken cancellation = default) => new(GenerousSteps, cancellation);

    /// <summary>Takes one step; false where none is left or the caller has gone.</summary>
    public bool TrySpend() => --_left >= 0 && !cancellation.IsCancellationRequested;
}
