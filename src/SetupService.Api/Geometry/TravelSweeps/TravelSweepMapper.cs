using SetupService.Api.Http.Shared;
using SetupService.Api.Vehicles.Suspensions;
using SetupService.Domain.Answers;
using SetupService.Domain.Geometry;
using SetupService.Domain.Numerics;
using SetupService.Domain.Suspension;
using SetupService.Domain.Suspension.PointErrors;
using SetupService.Domain.Suspension.Points;
using SetupService.Domain.Suspension.Sweep;
using SetupService.Domain.Vehicles;

namespace SetupService.Api.Geometry.TravelSweeps;

/// <summary>Reads a travel sweep and answers it, position by position.</summary>
internal static class TravelSweepMapper
{
    // A caller who has gone is noticed within this many positions, a fraction of a millisecond.
    private const int PositionsBetweenLooks = 64;

    /// <summary>The answer; null where not one position was reached, with the first one's reason.</summary>
    public static TravelSweepAnswer? ToAnswer(TravelSweep sweep, Corner corner, (bool IsStated, PointErrorSweep? Sweep) pointError, IReadOnlyList<Assumption> assumptions, CancellationToken cancellation, out UnreachablePosition? first, UnitSystem units = UnitSystem.Metric)
    {
        var rows = new TravelSweepRow[sweep.Count];
        var unreachable = new List<UnreachableResponse>();
        var count = 0;
        first = null;
        for (var position = 0; sweep.TryNext(out var row, out var missed); position++)
        {
            // A position that is not reached has taken as long as a thousand that are.
            if (row is null || position % PositionsBetweenLooks == 0) cancellation.ThrowIfCancellationRequested();
            IReadOnlyList<double?>? deviations = null;
            pointError.Sweep?.TryNext(out deviations);
            if (row is { } reached) rows[count++] = Row(reached, deviations);
            if (missed is not { } one) continue;
            first ??= one;
            unreachable.Add(ToResponse(one, units));
        }

        if (count == 0) return null;
        if (count < rows.Length) rows = rows[..count];
        return new TravelSweepAnswer
        {
            Rows = rows,
            Unreachable = [.. unreachable],
            ReachableTravelMm = unreachable.Count == 0 ? null : ToResponse(sweep.Reach),
            Unknown = corner.Unknown(Gaps(sweep, rows, pointError.IsStated)),
            Method = corner.Suspension.SweepMethod,
            Edition = Edition.Current,
            Assumptions = AssumptionResponse.From(assumptions),
            Cautions = CautionResponse.From([.. GeometryCautions.ForSweep, .. corner.Suspension.Cautions(corner.Pointer, units)]),
        };
    }

    /// <summary>What the axle's figures need of the car.</summary>
    public static AxleInputs AxleInputs(TravelSweepRequest request) => new()
    {
        IsFront = request.Axle == CarAxle.Front,
        WheelbaseMm = request.Vehicle.WheelbaseMm,
        CentreOfGravityHeightMm = request.Vehicle.CentreOfGravityHeightMm,
        BrakeShareFrontPct = request.Vehicle.BrakeShareFrontPct,
        Drive = (request.Axle, request.Vehicle.DrivenAxle) switch
        {
            (_, null) => null,
            (_, DrivenAxle.Both) => AxleDrive.Shared,
            (CarAxle.Front, DrivenAxle.Front) or (CarAxle.Rear, DrivenAxle.Rear) => AxleDrive.Alone,
            _ => AxleDrive.None,
        },
        MovesOppositely = request is { Suspension: TwistBeamDocument, Motion: AxleMotion.Opposite },
        MeasuringDiameterMm = request.MeasuringDiameterMm ?? Domain.Suspension.Sweep.AxleInputs.DefaultMeasuringDiameterMm,
    };

    /// <summary>What the error of the points leaves open; null where none is stated.</summary>
    public static (bool IsStated, PointErrorSweep? Sweep) PointError(TravelSweepRequest request, Corner corner, WorkBudget budget) =>
        corner.Suspension is { PointErrorMm: > 0 and var errorMm } points && points.Mechanism(corner.Setup) is { Setting: var setting }
            ? (true, PointErrorSweep.Start(
                setting, errorMm, request.TravelMm.ToRange(), request.RackMm?.ToRange() ?? SweepRange.Only(0), AxleInputs(request), budget, corner.Setup.RideHeightChangeMm))
            : (false, null);

    /// <summary>What the sweep uses although nobody gave it.</summary>
    public static List<Assumption> Assumptions(TravelSweepRequest request, Corner corner)
    {
        var list = corner.Assumptions();
        if (request.MeasuringDiameterMm is null && corner.Suspension.TellsToe) list.Add(SweepAssumptions.MeasuringDiameter);
        SweepAssumptions.AddMotion(list, corner.Suspension, request.Motion, SweepAssumptions.Parallel);
        return list;
    }

    // A figure that every row leaves out has its reason once.
    private static IEnumerable<FigureGap> Gaps(TravelSweep sweep, TravelSweepRow[] rows, bool isErrorStated)
    {
        var ofAll = isErrorStated ? sweep.Gaps.Where(gap => gap.Output != "ranges").ToList() : sweep.Gaps;
        var ofSome = RowGaps.Find(rows, sweep.TellsSteer).Where(gap => ofAll.All(known => known.Output != gap.Output));
        var without = isErrorStated ? rows.Count(row => row.Ranges is null) : 0;
        return without == 0
            ? ofAll.Concat(ofSome)
            : ofAll.Concat(ofSome).Append(new("ranges", FormattableString.Invariant($"in {without} of {rows.Length} rows a corner with one coordinate moved by pointErrorMm does not get there"), "/suspension/points/pointErrorMm"));
    }

    private static RangeResponse ToResponse((double FromMm, double ToMm) reachable) => new() { From = reachable.FromMm, To = reachable.ToMm };

    private static UnreachableResponse ToResponse(in UnreachablePosition missed, UnitSystem units) => new()
    {
        TravelMm = missed.TravelMm,
        RackMm = missed.RackMm,
        Reason = ClosureWords.Reason(missed, units),
        ResidualMm = missed.ResidualMm,
    };

    private static TravelSweepRow Row(in SweepRow row, IReadOnlyList<double?>? deviations)
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
            Ranges = deviations is null ? Ranges(wheel) : Ranges(row, deviations),
        };
    }

    private static SweepRangesResponse Ranges(SweepRow row, IReadOnlyList<double?> deviations)
    {
        return new()
        {
            CamberDeg = Range(SweepFigure.CamberDeg)!,
            ToeDeg = Range(SweepFigure.ToeDeg),
            CasterDeg = Range(SweepFigure.CasterDeg),
            SteeringAxisInclinationDeg = Range(SweepFigure.SteeringAxisInclinationDeg),
            ScrubRadiusMm = Range(SweepFigure.ScrubRadiusMm),
            MechanicalTrailMm = Range(SweepFigure.MechanicalTrailMm),
            HalfTrackChangeMm = Range(SweepFigure.HalfTrackChangeMm),
            ContactForwardMm = Range(SweepFigure.ContactForwardMm),
            InstantCentreYMm = Range(SweepFigure.InstantCentreYMm),
            InstantCentreZMm = Range(SweepFigure.InstantCentreZMm),
            SwingArmMm = Range(SweepFigure.SwingArmMm),
            RollCentreHeightMm = Range(SweepFigure.RollCentreHeightMm),
            SideInstantCentreXMm = Range(SweepFigure.SideInstantCentreXMm),
            SideInstantCentreZMm = Range(SweepFigure.SideInstantCentreZMm),
            AntiDivePct = Range(SweepFigure.AntiDivePct),
            AntiLiftPct = Range(SweepFigure.AntiLiftPct),
            AntiSquatPct = Range(SweepFigure.AntiSquatPct),
            SpringMotionRatio = Range(SweepFigure.SpringMotionRatio),
            SpringLengthMm = Range(SweepFigure.SpringLengthMm),
            DamperMotionRatio = Range(SweepFigure.DamperMotionRatio),
            DamperLengthMm = Range(SweepFigure.DamperLengthMm),
            CamberGainDegPerMm = Range(SweepFigure.CamberGainDegPerMm),
            CamberGainPerRoll = Range(SweepFigure.CamberGainPerRoll),
            OtherSteerDeg = Range(SweepFigure.OtherSteerDeg),
            AckermannPct = Range(SweepFigure.AckermannPct),
            TurningCircleM = Range(SweepFigure.TurningCircleM),
            BumpSteerDegPer10Mm = Range(SweepFigure.ToeGainDegPerMm, 10),
            BumpSteerMmPer10Mm = Range(SweepFigure.BumpSteerMmPerMm, 10),
        };

        UncertaintyResponse? Range(SweepFigure figure, double factor = 1) =>
            SweepFigureValues.Read(figure, row) is { } value && deviations[(int)figure] is { } deviation
                ? UncertaintyResponse.From(new Estimate(factor * value, factor * deviation))
                : null;
    }

    private static SweepRangesResponse? Ranges(in SuspensionPosition wheel) => wheel.CamberErrorDeg is not { } camberErrorDeg ? null : new()
    {
        CamberDeg = UncertaintyResponse.From(new Estimate(wheel.CamberDeg, camberErrorDeg)),
        ToeDeg = wheel is { ToeDeg: { } toeDeg, ToeErrorDeg: { } toeErrorDeg } ? UncertaintyResponse.From(new Estimate(toeDeg, toeErrorDeg)) : null,
    };
}

/// <summary>
/// Figures that rows lack although the corner's kind has them and no input is missing, so that no null stands without a reason. What
/// is null below 5° of steer says so itself.
/// </summary>
internal static class RowGaps
{
    private static readonly (string[] Outputs, Predicate<TravelSweepRow> IsMissing, string Reason)[] OfEvery =
    [
        (["instantCentreYMm", "instantCentreZMm", "swingArmMm"], row => row.SwingArmMm is null, "the wheel rises without leaning, so seen from the front its instant centre is out of reach"),
        (["sideInstantCentreXMm", "sideInstantCentreZMm"], row => row.SideInstantCentreXMm is null, "the upright rises without pitching, so seen from the side its instant centre is out of reach"),
        (["rollCentreHeightMm"], row => row.RollCentreHeightMm is null, "the contact does not rise with the wheel"),
    ];

    private static readonly (string[] Outputs, Predicate<TravelSweepRow> IsMissing, string Reason)[] OfSteered =
    [
        (["casterDeg", "steeringAxisInclinationDeg", "scrubRadiusMm", "mechanicalTrailMm"], row => row.CasterDeg is null, "the rack turns the wheel about no upright axis"),
        (["otherSteerDeg"], row => row.OtherSteerDeg is null, "the right wheel's parts do not meet at this travel and rack, so nothing is known of both wheels together"),
    ];

    /// <summary>The figures, each with how many rows lack it, and why.</summary>
    public static IEnumerable<FigureGap> Find(TravelSweepRow[] rows, bool hasRack) =>
        from figures in hasRack ? OfEvery.Concat(OfSteered) : OfEvery
        let count = rows.Count(row => figures.IsMissing(row))
        where count > 0
        from output in figures.Outputs
        select new FigureGap(output, count == rows.Length ? figures.Reason : FormattableString.Invariant($"in {count} of {rows.Length} rows {figures.Reason}"));
}
