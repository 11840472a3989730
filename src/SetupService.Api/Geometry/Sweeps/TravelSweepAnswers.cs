using SetupService.Api.Http.Shared;
using SetupService.Domain.Answers;
using SetupService.Domain.Geometry;
using SetupService.Domain.Suspension;
using SetupService.Domain.Suspension.Sweep;

namespace SetupService.Api.Geometry.Sweeps;

/// <summary>Takes a sweep position by position and writes down what it tells.</summary>
internal static class TravelSweepAnswers
{
    // A caller who has gone is noticed within this many positions, a fraction of a millisecond.
    private const int PositionsBetweenLooks = 64;

    /// <summary>The answer; null where not one position was reached, with the first one's reason.</summary>
    public static TravelSweepAnswer? Of(TravelSweep sweep, string method, IReadOnlyList<Assumption> assumptions, CancellationToken cancellation, out UnreachablePosition? first, UnitSystem units = UnitSystem.Metric)
    {
        var rows = new TravelSweepRow[sweep.Count];
        var unreachable = new List<UnreachablePart>();
        var count = 0;
        first = null;
        for (var position = 0; sweep.TryNext(out var row, out var missed); position++)
        {
            // A position that is not reached has taken as long as a thousand that are.
            if (row is null || position % PositionsBetweenLooks == 0) cancellation.ThrowIfCancellationRequested();
            if (row is { } reached) rows[count++] = Row(reached);
            if (missed is not { } one) continue;
            first ??= one;
            unreachable.Add(Part(one, units));
        }

        if (count == 0) return null;
        if (count < rows.Length) rows = rows[..count];
        return new TravelSweepAnswer
        {
            Rows = rows,
            Unreachable = [.. unreachable],
            ReachableTravelMm = unreachable.Count == 0 ? null : Part(sweep.Reach),
            Unknown = [.. Gaps(sweep, rows).Select(gap => UnknownResponse.Of(gap.Output, gap.Reason, [.. gap.Needs]))],
            Method = method,
            Edition = Edition.Current,
            Assumptions = AssumptionResponse.Of(assumptions),
            Cautions = CautionResponse.Of(GeometryCautions.ForSweep),
        };
    }

    // A figure that every row leaves out has its reason once.
    private static IEnumerable<FigureGap> Gaps(TravelSweep sweep, TravelSweepRow[] rows)
    {
        var ofAll = sweep.Gaps;
        return ofAll.Concat(RowGaps.Of(rows, sweep.TellsSteer).Where(gap => ofAll.All(known => known.Output != gap.Output)));
    }

    private static ReachableTravelPart Part((double FromMm, double ToMm) reachable) => new() { From = reachable.FromMm, To = reachable.ToMm };

    private static UnreachablePart Part(in UnreachablePosition missed, UnitSystem units) => new()
    {
        TravelMm = missed.TravelMm,
        RackMm = missed.RackMm,
        Reason = ClosureWords.Reason(missed, units),
        ResidualMm = missed.ResidualMm,
    };

    private static TravelSweepRow Row(in SweepRow row)
    {
        var wheel = row.Wheel;
        return new TravelSweepRow
        {
            TravelMm = wheel.TravelMm,
            RackMm = wheel.RackMm,
            CamberDeg = wheel.CamberDeg,
            ToeDeg = wheel.ToeDeg,
            SteerDeg = wheel.SteerDeg,
            CasterDeg = wheel.CasterDeg,
            SteeringAxisInclinationDeg = wheel.SteeringAxisInclinationDeg,
            HalfTrackChangeMm = wheel.HalfTrackChangeMm,
            ContactForwardMm = wheel.ContactForwardMm,
            RollCentreHeightMm = wheel.RollCentreHeightMm,
            InstantCentreYMm = wheel.InstantCentreYMm,
            InstantCentreZMm = wheel.InstantCentreZMm,
            SwingArmMm = wheel.SwingArmMm,
            SideInstantCentreXMm = wheel.SideInstantCentreXMm,
            SideInstantCentreZMm = wheel.SideInstantCentreZMm,
            ScrubRadiusMm = wheel.ScrubRadiusMm,
            MechanicalTrailMm = wheel.MechanicalTrailMm,
            SpringMotionRatio = wheel.SpringMotionRatio,
            DamperMotionRatio = wheel.DamperMotionRatio,
            SpringLengthMm = wheel.SpringLengthMm,
            DamperLengthMm = wheel.DamperLengthMm,
            CamberGainDegPerMm = wheel.CamberGainDegPerMm,
            CamberGainPerRoll = wheel.CamberGainPerRoll,
            BumpSteerDegPer10Mm = 10 * wheel.ToeGainDegPerMm,
            BumpSteerMmPer10Mm = 10 * row.BumpSteerMmPerMm,
            AntiDivePct = row.Anti.AntiDivePct,
            AntiLiftPct = row.Anti.AntiLiftPct,
            AntiSquatPct = row.Anti.AntiSquatPct,
            OtherSteerDeg = row.Pair?.OtherSteerDeg,
            AckermannPct = row.Pair?.AckermannPct,
            TurningCircleM = row.Pair?.TurningCircleM,
            Ranges = Ranges(wheel),
        };
    }

    private static SweepRangesPart? Ranges(in SuspensionPosition wheel) => wheel.CamberErrorDeg is not { } camberErrorDeg ? null : new()
    {
        CamberDeg = UncertaintyResponse.Of(new Estimate(wheel.CamberDeg, camberErrorDeg)),
        ToeDeg = wheel is { ToeDeg: { } toeDeg, ToeErrorDeg: { } toeErrorDeg } ? UncertaintyResponse.Of(new Estimate(toeDeg, toeErrorDeg)) : null,
    };
}
