using SetupService.Domain.Numerics;

namespace SetupService.Domain.Suspension.Search;

/// <summary>Starts the search for the least movement that gives wanted angles.</summary>
public static class LeastMovement
{
    /// <summary>Searches.</summary>
    /// <param name="start">The corner as it stands.</param>
    /// <param name="rooms">One to four adjusters and their limits.</param>
    /// <param name="target">The angles wanted; at least one.</param>
    /// <param name="archGapMm">How far outboard the tyre's top may move, mm; null where nothing is known to be in its way.</param>
    /// <param name="resetToe">Whether toe is reset by the tie rod each time.</param>
    /// <param name="budget">Work allowed, a step for each corner closed; null = any.</param>
    /// <returns>Null where the corner does not close even at the amounts nearest to none.</returns>
    public static MovementSearch? Find(AdjustableCorner start, AdjusterRoom[] rooms, AngleTarget target, double? archGapMm, bool resetToe, WorkBudget? budget = null) =>
        MovementSearch.Find(start, rooms, target, archGapMm, resetToe, budget);
}
