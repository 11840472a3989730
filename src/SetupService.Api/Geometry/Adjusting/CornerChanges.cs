using SetupService.Api.Http.Problems;
using SetupService.Domain.Numerics;
using SetupService.Domain.Suspension;
using SetupService.Domain.Suspension.Search;

namespace SetupService.Api.Geometry.Adjusting;

/// <summary>Makes a change of a corner, or finds the one for a target; or says why there is none.</summary>
internal static class CornerChanges
{
    /// <summary>The change; null with the problem where there is none.</summary>
    public static CornerChange? Of(SuspensionModel suspension, WheelSetup setup, ChangeAsked asked, CancellationToken cancellation, out Problem? problem)
    {
        if (AdjustableCorner.AsStated(suspension, setup) is not { } before)
        {
            problem = GeometryProblems.NotStanding(suspension, setup);
            return null;
        }

        if (before.NotTold([.. asked.Used], asked.Target?.CasterDeg is not null, asked.ArchGapMm is not null) is { } reason)
        {
            problem = MeasuredInputs.NotTold("/suspension", reason);
            return null;
        }

        problem = null;
        if (asked.Target is { } target) return Search(before, asked, target, cancellation, out problem);
        if (before.With(asked.Adjustments, asked.ResetToe) is { } after)
            return new CornerChange { Before = CornerStand.Of(before), After = CornerStand.Of(after), Adjustments = asked.Adjustments!, Gaps = before.Gaps(after) };
        problem = GeometryProblems.CannotBeAdjusted(before.WhyNot(asked.Adjustments, asked.ResetToe));
        return null;
    }

    private static CornerChange? Search(AdjustableCorner before, ChangeAsked asked, AngleTarget target, CancellationToken cancellation, out Problem? problem)
    {
        problem = target.CasterDeg is not null && before.CasterDeg is null ? GeometryProblems.NoEffect(hasNoCaster: true) : null;
        if (problem is not null) return null;
        var found = LeastMovement.Find(before, asked.Rooms!, target, asked.ArchGapMm, asked.ResetToe, WorkBudget.Generous(cancellation));
        cancellation.ThrowIfCancellationRequested();
        if (found is null)
        {
            problem = GeometryProblems.LimitsDoNotClose();
            return null;
        }

        if (!found.IsReached && found.Hindrances is [{ Obstacle: Obstacle.NoEffect }] && Array.TrueForAll(found.Amounts, amount => amount == 0))
        {
            problem = GeometryProblems.NoEffect(hasNoCaster: false);
            return null;
        }

        return new CornerChange
        {
            Before = CornerStand.Of(before),
            After = CornerStand.Of(found.After),
            Adjustments = [.. asked.Rooms!.Zip(found.Amounts, (room, amount) => room.Adjustment with { Amount = amount })],
            IsReached = found.IsReached,
            Hindrances = found.Hindrances,
            Gaps = before.Gaps(found.After),
        };
    }
}
