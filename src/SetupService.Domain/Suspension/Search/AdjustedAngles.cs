namespace SetupService.Domain.Suspension.Search;

/// <summary>A corner of which only the angles are known: an eccentric or a shim that turns the wheel in its upright needs no more.</summary>
internal sealed class AdjustedAngles : AdjustableCorner
{
    private const string NeedsSuspension = "needs the suspension's points, or readings of it";

    private static readonly string[] NeedPoints =
    [
        "scrubRadiusMm", "mechanicalTrailMm", "rollCentreHeightMm", "camberGainDegPerMm", "bumpSteerDegPer10Mm", "springMotionRatio", "trackChangeMm",
        "tieRodChangeMm", "tyreTopOutboardChangeMm", "inboardGapChangeMm",
    ];

    private readonly WheelSetup _setup;
    private readonly UprightTurn _turn;
    private readonly double? _toeHeldDeg;

    private AdjustedAngles(WheelSetup setup, UprightTurn turn, double? toeHeldDeg) => (_setup, _turn, _toeHeldDeg) = (setup, turn, toeHeldDeg);

    /// <inheritdoc />
    public override double CamberDeg => (_setup.CamberDeg ?? 0) + _turn.CamberDeg;

    /// <summary>The steering axis keeps its place, so caster is what was stated; null where it was not.</summary>
    public override double? CasterDeg => _setup.StatedAxis?.CasterDeg;

    /// <inheritdoc />
    public override double? ToeDeg => _toeHeldDeg ?? (_turn.LeavesToeKnown ? _setup.ToeDeg + _turn.ToeDeg : null);

    /// <summary>Not known without points.</summary>
    public override double? TyreTopOutboardMm => null;

    /// <inheritdoc />
    public override AdjustedFigures Told => new()
    {
        CamberDeg = CamberDeg,
        CasterDeg = CasterDeg,
        SteeringAxisInclinationDeg = _setup.StatedAxis?.InclinationDeg,
        ToeDeg = ToeDeg,
        ContactHeightMm = -_setup.LoadedRadiusMm * Math.Cos(double.DegreesToRadians(CamberDeg)),
    };

    /// <summary>The corner as stated; null where its camber is not, or where it stands at another height than its angles.</summary>
    public static AdjustedAngles? AsStated(WheelSetup setup) => setup is { CamberDeg: not null, RideHeightChangeMm: 0 } ? new(setup, default, null) : null;

    /// <inheritdoc />
    public override AdjustableCorner? With(ReadOnlySpan<Adjustment> adjustments, bool resetToe)
    {
        var turn = _turn;
        foreach (var one in adjustments)
        {
            if (!UprightTurn.Has(one.By)) return null;
            turn = turn.With(one);
        }

        return new AdjustedAngles(_setup, turn, resetToe ? ToeDeg : null);
    }

    /// <inheritdoc />
    public override string? NotTold(ReadOnlySpan<Adjustment> used, AngleTarget target, bool keepsArchGap)
    {
        foreach (var one in used)
        {
            if (!UprightTurn.Has(one.By)) return "this adjuster needs the suspension's points, or readings of it.";
        }

        if (keepsArchGap) return "where the tyre's top goes needs the suspension's points, so no gap to the arch can be kept; leave it out.";
        if (target.CasterDeg is not null) return "none of these adjusters moves the steering axis, so no caster can be aimed for; leave casterDeg out.";
        return target.ToeDeg is not null && _setup.ToeDeg is null ? "toe is not stated, so none can be aimed for; leave toeDeg out." : null;
    }

    /// <inheritdoc />
    public override (string Reason, double ResidualMm) WhyNot(ReadOnlySpan<Adjustment> adjustments, bool resetToe) => ("this adjuster needs the suspension's points, or readings of it.", 0);

    /// <inheritdoc />
    public override IReadOnlyList<FigureGap> Gaps(AdjustableCorner after)
    {
        var told = after.Told;
        List<FigureGap> gaps = [.. NeedPoints.Select(output => new FigureGap(output, NeedsSuspension, "/suspension")), new("ranges", "without readings nothing says how sure the angles are", "/suspension/readings")];
        if (told.ToeDeg is null) gaps.Add(new("toeDeg", _setup.ToeDeg is null ? "needs alignment.toeDeg" : "a turned knuckle moves the tie rod's joint; how far that changes toe needs the suspension's points", _setup.ToeDeg is null ? "/alignment/toeDeg" : "/suspension/points"));
        if (told.CasterDeg is null) gaps.Add(new("casterDeg", "needs alignment.casterDeg", "/alignment/casterDeg"));
        if (told.SteeringAxisInclinationDeg is not null) return gaps;
        gaps.Add(new("steeringAxisInclinationDeg", "needs alignment.steeringAxisInclinationDeg", "/alignment/steeringAxisInclinationDeg"));
        gaps.Add(new("includedAngleDeg", "needs alignment.steeringAxisInclinationDeg", "/alignment/steeringAxisInclinationDeg"));
        return gaps;
    }
}
