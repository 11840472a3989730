using SetupService.Api.Http.Problems;
using SetupService.Domain.Suspension.Kinematics;
using SetupService.Domain.Suspension.Readings;
using SetupService.Domain.Suspension.Search;
using SetupService.Domain.Suspension.Sweep;

namespace SetupService.Api.Geometry.Adjusting;

/// <summary>Makes a change, or finds the one for a target, on either kind of corner; or says why there is none.</summary>
internal static class CornerChanges
{
    /// <summary>On a corner with points.</summary>
    public static CornerChange? Of(CornerSetting setting, ChangeAsked asked, out Problem? problem)
    {
        if (AdjustedCorner.AsStated(setting) is not { } before)
        {
            problem = GeometryProblems.NothingHolds();
            return null;
        }

        return Of(
            before, asked, CornerStand.Of,
            _ => CornerGaps.Of(before),
            () => GeometryProblems.DoesNotClose(before.GapWith(asked.Adjustments, asked.ResetToe)),
            out problem);
    }

    /// <summary>On a measured corner.</summary>
    public static CornerChange? Of(MeasuredCorner corner, double? statedToeDeg, double loadedRadiusMm, ChangeAsked asked, out Problem? problem)
    {
        problem = NotTold(corner, asked);
        if (problem is not null) return null;
        if (MeasuredStand.AsStated(corner, statedToeDeg) is not { } before)
        {
            problem = MeasuredInputs.NotTold("/suspension/readings", MeasuredWords.BeyondReadings(0, corner.FirstMm, corner.LastMm));
            return null;
        }

        return Of(
            before, asked, stand => CornerStand.Of(stand, loadedRadiusMm),
            after => MeasuredGaps.OfAdjusted(corner, after),
            () => MeasuredInputs.NotTold("/adjustments", MeasuredWords.BeyondReadings(TravelAsked(asked), corner.FirstMm, corner.LastMm)),
            out problem);
    }

    private static CornerChange? Of<TCorner>(
        TCorner before, ChangeAsked asked, Func<TCorner, CornerStand> stand, Func<TCorner, IReadOnlyList<SweepGap>> gaps, Func<Problem> whyNot, out Problem? problem)
        where TCorner : class, IAdjustableCorner<TCorner>
    {
        problem = null;
        if (asked.Target is { } target) return Search(before, asked, target, stand, gaps, out problem);
        if (before.With(asked.Adjustments, asked.ResetToe) is { } after)
            return new CornerChange { Before = stand(before), After = stand(after), Adjustments = asked.Adjustments!, Gaps = gaps(after) };
        problem = whyNot();
        return null;
    }

    private static CornerChange? Search<TCorner>(
        TCorner before, ChangeAsked asked, AngleTarget target, Func<TCorner, CornerStand> stand, Func<TCorner, IReadOnlyList<SweepGap>> gaps, out Problem? problem)
        where TCorner : class, IAdjustableCorner<TCorner>
    {
        problem = target.CasterDeg is not null && before.CasterDeg is null ? GeometryProblems.NoEffect(hasNoCaster: true) : null;
        if (problem is not null) return null;
        if (LeastMovement.Find(before, asked.Rooms!, target, asked.ArchGapMm, asked.ResetToe) is not { } found)
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
            Before = stand(before),
            After = stand(found.After),
            Adjustments = [.. asked.Rooms!.Zip(found.Amounts, (room, amount) => room.Adjustment with { Amount = amount })],
            IsReached = found.IsReached,
            Hindrances = found.Hindrances,
            Gaps = gaps(found.After),
        };
    }

    private static Problem? NotTold(MeasuredCorner corner, ChangeAsked asked)
    {
        foreach (var one in asked.Used)
        {
            if (MeasuredStand.Gap(corner, one) is { } gap) return MeasuredInputs.NotTold("/suspension", MeasuredWords.Reason(gap) + ".");
        }

        if (asked.ArchGapMm is not null) return MeasuredInputs.NotTold("/suspension", "where the tyre's top goes is not told by readings, so no gap to the arch can be kept; leave it out.");
        return asked.Target?.CasterDeg is not null && (corner.RearwardGap ?? corner.CasterGap) is { } unknown
            ? MeasuredInputs.NotTold("/suspension", MeasuredWords.Reason(unknown) + ".")
            : null;
    }

    private static double TravelAsked(ChangeAsked asked) => -asked.Adjustments!.Where(one => one.By == Adjuster.RideHeight).Sum(one => one.Amount);
}
