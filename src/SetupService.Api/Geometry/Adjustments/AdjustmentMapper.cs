using SetupService.Api.Http.Contract;
using SetupService.Api.Http.Problems;
using SetupService.Api.Http.Shared;
using SetupService.Api.Http.Work;
using SetupService.Api.Vehicles.Suspensions;
using SetupService.Domain.Answers;
using SetupService.Domain.Geometry;
using SetupService.Domain.Suspension.Search;

namespace SetupService.Api.Geometry.Adjustments;

/// <summary>Reads what is adjusted, adjusts the corner or finds what gives the angles wanted, and answers it.</summary>
internal static class AdjustmentMapper
{
    private const double WidestMm = 100;
    private const double WidestDeg = 5;

    /// <summary>The answer; null with the problem where there is none.</summary>
    public static AdjustmentAnswer? ToAnswer(AdjustmentRequest request, Corner corner, UnitSystem units, RequestWork work, out Problem? problem)
    {
        if (AdjustableCorner.AsStated(corner.Suspension, corner.Setup) is not { } before)
        {
            problem = GeometryProblems.NotKnownHere(corner);
            return null;
        }

        var target = Target(request, before);
        Adjustment[] used = [.. Adjustments(request.Adjustments), .. Array.ConvertAll(Rooms(request.Adjusters), room => room.Adjustment with { Amount = 1 })];
        if (before.NotTold(used, target ?? default, request.ArchGapMm is not null) is { } reason)
        {
            problem = GeometryProblems.NotTold(corner.Pointer + "/suspension", reason);
            return null;
        }

        problem = null;
        if (target is { } wanted) return Search(request, corner, before, wanted, units, work, out problem);
        var given = Adjustments(request.Adjustments);
        var resetToe = request.ResetToe ?? false;
        if (before.With(given, resetToe) is { } after) return Answer(request, corner, before, after, given, null, units);
        problem = GeometryProblems.CannotBeAdjusted(before.WhyNot(given, resetToe));
        return null;
    }

    private static AdjustmentAnswer? Search(AdjustmentRequest request, Corner corner, AdjustableCorner before, AngleTarget target, UnitSystem units, RequestWork work, out Problem? problem)
    {
        var name = request.Target is null ? "change" : "target";
        problem = target.CasterDeg is not null && before.CasterDeg is null ? GeometryProblems.NoEffect(name, hasNoCaster: true) : null;
        if (problem is not null) return null;
        var rooms = Rooms(request.Adjusters);
        var found = LeastMovement.Find(before, rooms, target, request.ArchGapMm, request.ResetToe ?? false, work.Budget);
        work.Cancellation.ThrowIfCancellationRequested();
        if (found is null) problem = GeometryProblems.LimitsDoNotClose();
        else if (!found.IsReached && found.BindingLimits is [{ Obstacle: Obstacle.NoEffect }] && Array.TrueForAll(found.Amounts, amount => amount == 0))
            problem = GeometryProblems.NoEffect(name, hasNoCaster: false);
        return problem is null
            ? Answer(request, corner, before, found!.After, [.. rooms.Zip(found.Amounts, (room, amount) => room.Adjustment with { Amount = amount })], found, units)
            : null;
    }

    private static AdjustmentAnswer Answer(AdjustmentRequest request, Corner corner, AdjustableCorner before, AdjustableCorner after, Adjustment[] adjustments, MovementSearch? found, UnitSystem units)
    {
        var (was, now) = (before.Told, after.Told);
        var (wasFigures, nowFigures) = (Figures(was), Figures(now));
        var ranges = Ranges(now, corner, adjustments, request.ResetToe ?? false);
        return new AdjustmentAnswer
        {
            Adjustments = Array.ConvertAll(adjustments, ToResponse),
            IsReached = found?.IsReached,
            BlockedBy = [.. (found?.BindingLimits ?? []).Select(one => ToResponse(one, adjustments, units))],
            Before = wasFigures,
            After = nowFigures,
            Change = Difference(wasFigures, nowFigures),
            RideHeightChangeMm = was.ContactHeightMm - now.ContactHeightMm,
            TrackChangeMm = 2 * (now.HalfTrackMm - was.HalfTrackMm),
            TieRodChangeMm = now.TieRodLengthMm - was.TieRodLengthMm,
            TyreTopOutboardChangeMm = now.TyreTopOutboardMm - was.TyreTopOutboardMm,
            InboardGapChangeMm = now.StrutGapMm - was.StrutGapMm,
            Ranges = ranges,
            Unknown = corner.Unknown(before.Gaps(after).Where(gap => ranges is null || gap.Output != "ranges")),
            Method = now.Camber is null ? "suspension-adjustment" : "measured-corner",
            Edition = Edition.Current,
            Next = NextCalls.AfterAdjustment,
            Assumptions = AssumptionResponse.From(
            [
                .. corner.Assumptions(),
                .. AdjustmentAssumptions.Find(corner.Suspension, corner.Pointer, adjustments, found is null ? "/adjustments" : "/adjusters", request.ResetToe, request.Motion, request.ArchGapMm is not null),
            ]),
            Cautions = CautionResponse.From([.. GeometryCautions.ForAdjustment, .. corner.Suspension.Cautions(corner.Pointer, units)]),
        };
    }

    private static AdjustmentRangesResponse? Ranges(AdjustedFigures now, Corner corner, Adjustment[] adjustments, bool resetToe)
    {
        var (camber, caster) = (now.Camber, now.Caster);
        if (AdjustmentErrors.After(corner.Suspension, corner.Setup, adjustments, resetToe) is { } errors)
        {
            camber = new Estimate(now.CamberDeg, errors.CamberDeg);
            caster = now.CasterDeg is { } casterDeg && errors.CasterDeg is { } casterErrorDeg ? new Estimate(casterDeg, casterErrorDeg) : null;
        }

        return camber is null ? null : new()
        {
            CamberDeg = UncertaintyResponse.From(camber.Value),
            CasterDeg = caster is { StandardError: > 0 } known ? UncertaintyResponse.From(known) : null,
        };
    }

    private static AngleTarget? Target(AdjustmentRequest request, AdjustableCorner before) => request switch
    {
        { Target: { } target } => new(target.CamberDeg, target.CasterDeg, target.ToeDeg),

        // A change of what is not known now stays wanted, so that the answer says so.
        { Change: { } change } => new(before.CamberDeg + change.CamberDeg, (before.CasterDeg ?? 0) + change.CasterDeg, (before.ToeDeg ?? 0) + change.ToeDeg),
        _ => null,
    };

    private static Adjustment[] Adjustments(AdjustmentDocument[]? documents) =>
        Array.ConvertAll(documents ?? [], one => What(one) with { Amount = one.AmountMm ?? one.AmountDeg ?? 0 });

    private static AdjusterRoom[] Rooms(AdjusterRangeDocument[]? documents) => Array.ConvertAll(documents ?? [], one =>
    {
        var what = What(one);
        var widestMm = what.By == Adjuster.KnuckleEccentric ? AdjusterRules.MostThrow * what.BoltSpacingMm : WidestMm;
        return what.IsAngle
            ? new AdjusterRoom(what, one.RangeDeg?.From ?? -WidestDeg, one.RangeDeg?.To ?? WidestDeg)
            : new AdjusterRoom(what, one.RangeMm?.From ?? -widestMm, one.RangeMm?.To ?? widestMm);
    });

    private static Adjustment What(AdjusterDocument document) => new(document.Adjuster, 0)
    {
        LinkIndex = (document.Link ?? 1) - 1,
        BoltSpacingMm = document.BoltSpacingMm ?? 0,
        Pivot = document.Pivot is { } pivot ? SuspensionMapper.Read(pivot) : null,
    };

    private static AdjustmentResponse ToResponse(Adjustment one) => new()
    {
        Adjuster = one.By,
        Link = one.By == Adjuster.LinkLength ? one.LinkIndex + 1 : null,
        AmountMm = one.IsAngle ? null : one.Amount,
        AmountDeg = one.IsAngle ? one.Amount : null,
    };

    private static BlockedByResponse ToResponse(BindingLimit limit, Adjustment[] adjustments, UnitSystem units)
    {
        var adjustment = limit.AdjusterIndex is { } index ? adjustments[index] : default;
        Adjuster? adjuster = limit.AdjusterIndex is null ? null : adjustment.By;
        var name = adjuster is { } known ? EnumNames<Adjuster>.GetName(known) : null;
        return new() { Obstacle = limit.Obstacle, Adjuster = adjuster, Text = BindingLimitWords.Describe(limit, name, adjustment.Amount, adjustment.IsAngle, units) };
    }

    private static CornerFiguresResponse Figures(AdjustedFigures told) => new()
    {
        CamberDeg = told.CamberDeg,
        CasterDeg = told.CasterDeg,
        SteeringAxisInclinationDeg = told.SteeringAxisInclinationDeg,
        ToeDeg = told.ToeDeg,
        IncludedAngleDeg = told.SteeringAxisInclinationDeg + told.CamberDeg,
        ScrubRadiusMm = told.ScrubRadiusMm,
        MechanicalTrailMm = told.MechanicalTrailMm,
        RollCentreHeightMm = told.RollCentreHeightMm,
        CamberGainDegPerMm = told.CamberGainDegPerMm,
        BumpSteerDegPer10Mm = 10 * told.ToeGainDegPerMm,
        SpringMotionRatio = told.SpringMotionRatio,
    };

    private static CornerFiguresResponse Difference(CornerFiguresResponse before, CornerFiguresResponse after) => new()
    {
        CamberDeg = after.CamberDeg - before.CamberDeg,
        CasterDeg = after.CasterDeg - before.CasterDeg,
        SteeringAxisInclinationDeg = after.SteeringAxisInclinationDeg - before.SteeringAxisInclinationDeg,
        ToeDeg = after.ToeDeg - before.ToeDeg,
        IncludedAngleDeg = after.IncludedAngleDeg - before.IncludedAngleDeg,
        ScrubRadiusMm = after.ScrubRadiusMm - before.ScrubRadiusMm,
        MechanicalTrailMm = after.MechanicalTrailMm - before.MechanicalTrailMm,
        RollCentreHeightMm = after.RollCentreHeightMm - before.RollCentreHeightMm,
        CamberGainDegPerMm = after.CamberGainDegPerMm - before.CamberGainDegPerMm,
        BumpSteerDegPer10Mm = after.BumpSteerDegPer10Mm - before.BumpSteerDegPer10Mm,
        SpringMotionRatio = after.SpringMotionRatio - before.SpringMotionRatio,
    };
}
