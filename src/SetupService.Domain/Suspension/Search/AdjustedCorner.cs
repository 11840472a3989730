using SetupService.Domain.Suspension.Kinematics;
using SetupService.Domain.Suspension.Points;
using SetupService.Domain.Suspension.Steering;
using SetupService.Domain.Suspension.Sweep;

namespace SetupService.Domain.Suspension.Search;

/// <summary>How a corner stands after something was adjusted, at the wheel height it stands at.</summary>
public sealed class AdjustedCorner : AdjustableCorner
{
    // Adjusted further than this in one go, the old pose is no sure start for the new one.
    private const double LongestStepMm = 10;

    private readonly double _toeDeg;
    private readonly double _casterReadMoreDeg;

    private AdjustedCorner(CornerMechanism mechanism, SuspensionPose state, double? heldToeDeg = null, double casterReadMoreDeg = 0)
    {
        Mechanism = mechanism;
        State = state;
        Wheel = WheelKinematics.Wheel(mechanism, state);
        _toeDeg = heldToeDeg ?? Wheel.ToeDeg;
        _casterReadMoreDeg = casterReadMoreDeg;
    }

    /// <summary>The corner, its parts as they are now.</summary>
    public CornerMechanism Mechanism { get; }

    /// <summary>Where it stands.</summary>
    public SuspensionPose State { get; }

    /// <summary>The wheel.</summary>
    public WheelPlane Wheel { get; }

    /// <summary>Its figures.</summary>
    public WheelFigures Figures => WheelKinematics.Compute(Mechanism, State);

    /// <inheritdoc />
    public override double CamberDeg => Wheel.CamberDeg;

    /// <summary>Caster, degrees, as it was read where it was: then only its change is that of the points. Null where nothing steers the wheel.</summary>
    public override double? CasterDeg => WheelKinematics.Axis(Mechanism, State)?.CasterDeg + _casterReadMoreDeg;

    /// <summary>Length of the tie rod or toe link, mm; null where there is none.</summary>
    public double? TieRodLengthMm => Adjusters.TieRod(Mechanism.Setting.Suspension)?.LengthMm;

    /// <summary>How far outboard the tyre's top stands, mm: the point of the wheel's plane a loaded radius above its centre.</summary>
    public override double? TyreTopOutboardMm => (Wheel.Centre + (Mechanism.Setting.LoadedRadiusMm * Wheel.Up)).Y;

    /// <summary>
    /// From the strut's axis outboard to the wheel's centre plane, mm, where the axis passes the tyre's top; null without a strut.
    /// Both are fixed to the upright, so only what turns one in the other changes it.
    /// </summary>
    public double? StrutGapMm
    {
        get
        {
            if (Mechanism.Setting.Suspension is not MacPhersonStrut strut) return null;
            var topMm = strut.WheelCentre.Z + Mechanism.Setting.LoadedRadiusMm;
            var onAxis = strut.StrutLower + (((topMm - strut.StrutLower.Z) / strut.StrutAxis.Z) * strut.StrutAxis);
            return (strut.WheelCentre - onAxis).Dot(Mechanism.Stated.Spin);
        }
    }

    /// <summary>Toe, degrees: what the tie rod was set to where it was reset, else what came of it.</summary>
    public override double? ToeDeg => _toeDeg;

    /// <inheritdoc />
    public override AdjustedFigures Told
    {
        get
        {
            var figures = Figures;
            return new()
            {
                CamberDeg = figures.CamberDeg,
                CasterDeg = CasterDeg,
                SteeringAxisInclinationDeg = figures.SteeringAxisInclinationDeg,
                ToeDeg = ToeDeg,
                ScrubRadiusMm = figures.ScrubRadiusMm,
                MechanicalTrailMm = figures.MechanicalTrailMm,
                RollCentreHeightMm = figures.RollCentreHeightMm,
                CamberGainDegPerMm = figures.CamberGainDegPerMm,
                ToeGainDegPerMm = figures.ToeGainDegPerMm,
                SpringMotionRatio = figures.SpringMotionRatio,
                ContactHeightMm = figures.ContactHeightMm,
                HalfTrackMm = figures.HalfTrackMm,
                TieRodLengthMm = TieRodLengthMm,
                TyreTopOutboardMm = TyreTopOutboardMm,
                StrutGapMm = StrutGapMm,
            };
        }
    }

    /// <summary>The corner as it is described; null where its points do not close or do not hold the wheel.</summary>
    public static AdjustedCorner? AsStated(CornerSetting setting) => AsStated(MechanismBuilder.Build(setting), 0);

    /// <summary>The corner at a ride height so much higher than the stated one, mm; null where its points do not close there or do not hold the wheel.</summary>
    /// <param name="mechanism">The corner.</param>
    /// <param name="rideHeightChangeMm">How much higher.</param>
    /// <param name="casterReadDeg">Caster as a gauge read it at the stated height, degrees, which outranks the points; null = not read.</param>
    internal static AdjustedCorner? AsStated(CornerMechanism mechanism, double rideHeightChangeMm, double? casterReadDeg = null)
    {
        if (!PoseContinuation.TryStart(mechanism, out var state)) return null;
        var moreDeg = casterReadDeg - WheelKinematics.Axis(mechanism, state)?.CasterDeg ?? 0;
        return PoseContinuation.TryMove(mechanism, -rideHeightChangeMm, 0, ref state) ? new AdjustedCorner(mechanism, state, null, moreDeg) : null;
    }

    /// <inheritdoc />
    public override string? NotTold(ReadOnlySpan<Adjustment> used, AngleTarget target, bool keepsArchGap) => null;

    /// <inheritdoc />
    public override (string Reason, double ResidualMm) WhyNot(ReadOnlySpan<Adjustment> adjustments, bool resetToe)
    {
        var gap = GapWith(adjustments, resetToe);
        return ($"adjusted so, {ClosureWords.Adjusted(gap)}.", gap.ResidualMm);
    }

    /// <inheritdoc />
    public override IReadOnlyList<FigureGap> Gaps(AdjustableCorner after) => CornerGaps.Find(this);

    /// <summary>This corner with adjustments made, all from how it stands now.</summary>
    /// <param name="adjustments">What is adjusted, by how much.</param>
    /// <param name="resetToe">Whether the tie rod is then set so that toe is again what it is now; needs one.</param>
    /// <returns>Null where the parts then do not close.</returns>
    public override AdjustedCorner? With(ReadOnlySpan<Adjustment> adjustments, bool resetToe)
    {
        var largest = 0.0;
        foreach (var one in adjustments) largest = Math.Max(largest, Math.Abs(one.Amount * one.WeightMm));
        var steps = Math.Max(1, (int)Math.Ceiling(largest / LongestStepMm));
        var state = State;
        var adjusted = default(AdjustedSetting);
        for (var step = 1; step <= steps; step++)
        {
            adjusted = Part(adjustments, (double)step / steps);
            var mechanism = MechanismBuilder.Build(adjusted.Setting);
            if (resetToe) mechanism = mechanism.WithToeHeld(_toeDeg);
            if (!PoseSolver.TryClose(mechanism, adjusted.TravelMm, 0, state.Pose, out state)) return null;
        }

        if (resetToe && Adjusters.TieRod(adjusted.Setting.Suspension) is { } rod)
        {
            var outer = state.Pose.Centre + state.Pose.Turn.Apply(rod.Outer - adjusted.Setting.Suspension.WheelCentre);
            var suspension = Adjusters.WithTieRodLength(adjusted.Setting.Suspension, (outer - rod.Inner).Length);
            adjusted = adjusted with { Setting = adjusted.Setting with { Suspension = suspension } };
        }

        var made = MechanismBuilder.Build(adjusted.Setting);
        return PoseSolver.TryClose(made, adjusted.TravelMm, 0, state.Pose, out state) && state.AssemblySign == State.AssemblySign
            ? new AdjustedCorner(made, state, resetToe ? _toeDeg : null, _casterReadMoreDeg)
            : null;
    }

    /// <summary>What does not close with adjustments for which <see cref="With"/> gives nothing.</summary>
    public ClosureGap GapWith(ReadOnlySpan<Adjustment> adjustments, bool resetToe)
    {
        var adjusted = Part(adjustments, 1);
        var mechanism = MechanismBuilder.Build(adjusted.Setting);
        return ClosureGap.Find(resetToe ? mechanism.WithToeHeld(_toeDeg) : mechanism, adjusted.TravelMm, 0, State);
    }

    private AdjustedSetting Part(ReadOnlySpan<Adjustment> adjustments, double share)
    {
        var adjusted = new AdjustedSetting(Mechanism.Setting, State.TravelMm);
        foreach (var one in adjustments) adjusted = Adjusters.Apply(adjusted, one with { Amount = share * one.Amount });
        return adjusted;
    }
}
