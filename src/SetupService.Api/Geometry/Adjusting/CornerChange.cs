using SetupService.Api.Http.Contract;
using SetupService.Api.Http.Parts;
using SetupService.Api.Http.Problems;
using SetupService.Domain.Geometry.Adjusting;

namespace SetupService.Api.Geometry.Adjusting;

/// <summary>A corner before and after adjusting, with what the answer of either call says of it.</summary>
internal sealed record CornerChange
{
    public required AdjustedCorner Before { get; init; }

    public required AdjustedCorner After { get; init; }

    /// <summary>What was adjusted, by how much.</summary>
    public required Adjustment[] Adjustments { get; init; }

    /// <summary>Whether a target was met; null where none was asked for.</summary>
    public bool? IsReached { get; init; }

    public IReadOnlyList<Hindrance> Hindrances { get; init; } = [];

    /// <summary>What given adjustments make of a corner, or why they make nothing.</summary>
    public static CornerChange? Of(AdjustedCorner before, Adjustment[] adjustments, bool resetToe, out Problem? problem)
    {
        problem = null;
        if (before.With(adjustments, resetToe) is { } after)
            return new CornerChange { Before = before, After = after, Adjustments = adjustments };
        problem = GeometryProblems.DoesNotClose(before.GapWith(adjustments, resetToe));
        return null;
    }

    /// <summary>The least adjustments for wanted angles, or why there are none.</summary>
    public static CornerChange? Of(AdjustedCorner before, AdjusterRoom[] rooms, AngleTarget target, double? archGapMm, bool resetToe, out Problem? problem)
    {
        problem = null;
        if (LeastMovement.Find(before, rooms, target, archGapMm, resetToe) is not { } found)
        {
            problem = GeometryProblems.LimitsDoNotClose();
            return null;
        }

        if (!found.IsReached && found.Hindrances is [{ Obstacle: Obstacle.NoEffect }] && Array.TrueForAll(found.Amounts, amount => amount == 0))
        {
            problem = GeometryProblems.NoEffect(target.CasterDeg is not null && before.CasterDeg is null);
            return null;
        }

        Adjustment[] adjustments = [.. rooms.Zip(found.Amounts, (room, amount) => room.Adjustment with { Amount = amount })];
        return new CornerChange { Before = before, After = found.After, Adjustments = adjustments, IsReached = found.IsReached, Hindrances = found.Hindrances };
    }

    /// <summary>How much higher the body stands: the ground falls away from it by as much as the contact does.</summary>
    public double RideHeightChangeMm => Before.Figures.ContactHeightMm - After.Figures.ContactHeightMm;

    /// <summary>Both sides adjusted alike.</summary>
    public double TrackChangeMm => 2 * (After.Figures.HalfTrackMm - Before.Figures.HalfTrackMm);

    public BlockedByPart[] BlockedBy() => [.. Hindrances.Select(hindrance =>
    {
        var adjustment = hindrance.AdjusterIndex is { } index ? Adjustments[index] : default;
        var word = hindrance.AdjusterIndex is null ? (AdjusterWord?)null : (AdjusterWord)adjustment.By;
        var name = word is { } known ? Words<AdjusterWord>.Of(known) : null;
        return new BlockedByPart
        {
            Obstacle = (ObstacleWord)hindrance.Obstacle,
            Adjuster = word,
            Text = HindranceWords.Of(hindrance, name, adjustment.Amount, adjustment.IsAngle),
        };
    })];

    public AdjustedPart[] Adjusted() => Array.ConvertAll(Adjustments, one => new AdjustedPart
    {
        Adjuster = (AdjusterWord)one.By,
        Link = one.By == Adjuster.LinkLength ? one.LinkIndex + 1 : null,
        AmountMm = one.IsAngle ? null : one.Amount,
        AmountDeg = one.IsAngle ? one.Amount : null,
    });

    public static CornerFiguresPart Figures(AdjustedCorner corner)
    {
        var figures = corner.Figures;
        return new CornerFiguresPart
        {
            CamberDeg = figures.CamberDeg,
            CasterDeg = figures.CasterDeg,
            SteeringAxisInclinationDeg = figures.InclinationDeg,
            ToeDeg = figures.ToeDeg,
            IncludedAngleDeg = figures.InclinationDeg + figures.CamberDeg,
            ScrubRadiusMm = figures.ScrubRadiusMm,
            MechanicalTrailMm = figures.MechanicalTrailMm,
            RollCentreHeightMm = figures.RollCentreHeightMm,
            CamberGainDegPerMm = figures.CamberGainDegPerMm,
            BumpSteerDegPer10Mm = 10 * figures.ToeGainDegPerMm,
            SpringMotionRatio = figures.SpringMotionRatio,
        };
    }

    public UnknownPart[] Unknown() => [.. CornerGaps.Of(Before).Select(gap => new UnknownPart { Output = gap.Output, Reason = gap.Reason })];
}
