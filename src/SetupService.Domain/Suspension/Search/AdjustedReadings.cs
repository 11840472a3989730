using SetupService.Domain.Answers;
using SetupService.Domain.Suspension.Readings;

namespace SetupService.Domain.Suspension.Search;

/// <summary>
/// A corner known by readings as it stands: at a wheel travel, its top mount moved. Where toe at ride height is stated beside the readings, its
/// curve keeps its shape and goes through it: toe is set after it was read.
/// </summary>
internal sealed class AdjustedReadings : AdjustableCorner
{
    private const string AxisOverTravel = "how the steering axis goes with travel is not told by readings; it needs the points";

    private static readonly string[] NeedPoints =
    [
        "scrubRadiusMm", "mechanicalTrailMm", "rollCentreHeightMm", "springMotionRatio", "trackChangeMm", "tieRodChangeMm",
        "tyreTopOutboardChangeMm", "inboardGapChangeMm",
    ];

    private readonly MeasuredCorner _corner;
    private readonly WheelSetup _setup;
    private readonly double _travelMm;
    private readonly double _inboardMm;
    private readonly double _rearwardMm;
    private readonly double? _toeHeldDeg;
    private readonly UprightTurn _turn;
    private readonly Estimate _camber;

    private AdjustedReadings(MeasuredCorner corner, WheelSetup setup, double travelMm, double inboardMm, double rearwardMm, UprightTurn turn, double? toeHeldDeg, Estimate camber) =>
        (_corner, _setup, _travelMm, _inboardMm, _rearwardMm, _turn, _toeHeldDeg, _camber) = (corner, setup, travelMm, inboardMm, rearwardMm, turn, toeHeldDeg, camber);

    /// <inheritdoc />
    public override double CamberDeg => _camber.Value;

    /// <summary>Caster, degrees; null where it is not known, or not how it goes with travel or a rearward move.</summary>
    public override double? CasterDeg => Caster?.Value;

    /// <summary>Not known: no reading says where the tyre's top goes.</summary>
    public override double? TyreTopOutboardMm => null;

    /// <summary>The contact follows from camber and the loaded radius, the wheel centre's height being known.</summary>
    public override AdjustedFigures Told => new()
    {
        CamberDeg = CamberDeg,
        Camber = _camber,
        CasterDeg = CasterDeg,
        Caster = Caster,
        SteeringAxisInclinationDeg = SteeringAxisInclinationDeg,
        ToeDeg = ToeDeg,
        CamberGainDegPerMm = _corner.CamberAt(_travelMm)?.SlopeDegPerMm.Value,
        ToeGainDegPerMm = _corner.ToeAt(_travelMm)?.SlopeDegPerMm.Value,
        ContactHeightMm = _travelMm - (_setup.LoadedRadiusMm * Math.Cos(double.DegreesToRadians(CamberDeg))),
    };

    private Estimate? Caster => _travelMm != 0 || _corner.CasterDeg is not { } caster ? null
        : _rearwardMm == 0 ? caster
        : _corner.CasterChangeDeg(_rearwardMm) is { } change ? new Estimate(caster.Value + change.Value, double.Hypot(caster.StandardError, change.StandardError))
        : null;

    // A strut rigid about its ball joint gains in inclination what camber loses.
    private double? SteeringAxisInclinationDeg => _travelMm != 0 ? null : _inboardMm == 0 ? _corner.SteeringAxisInclinationDeg?.Value : _corner.SteeringAxisInclinationDeg?.Value - _corner.TopMount?.CamberChangeDeg(_inboardMm).Value;

    /// <summary>Toe, degrees; null where it was not read. A moved top mount or a turned knuckle changes it by what is not known.</summary>
    public override double? ToeDeg => _toeHeldDeg ?? (_inboardMm == 0 && _rearwardMm == 0 && _turn.LeavesToeKnown ? ReadToeDeg + _turn.ToeDeg : null);

    private double? ReadToeDeg => _corner.ToeDegAt(_travelMm) is { } readDeg
        ? readDeg + ((_setup.ToeDeg - _corner.ToeDegAt(0)) ?? 0)
        : _travelMm == 0 ? _setup.ToeDeg : null;

    /// <summary>The corner at its ride height; null where the readings do not reach it.</summary>
    public static AdjustedReadings? AsStated(MeasuredCorner corner, WheelSetup setup) => Make(corner, setup, -setup.RideHeightChangeMm, 0, 0, default, null);

    /// <inheritdoc />
    public override AdjustableCorner? With(ReadOnlySpan<Adjustment> adjustments, bool resetToe)
    {
        var (travelMm, inboardMm, rearwardMm, turn) = (_travelMm, _inboardMm, _rearwardMm, _turn);
        foreach (var one in adjustments)
        {
            switch (one.By)
            {
                case Adjuster.StrutTopInboard: inboardMm += one.Amount; break;
                case Adjuster.StrutTopRearward: rearwardMm += one.Amount; break;
                case Adjuster.RideHeight: travelMm -= one.Amount; break;
                default:
                    if (!UprightTurn.Has(one.By)) return null;
                    turn = turn.With(one);
                    break;
            }
        }

        return Make(_corner, _setup, travelMm, inboardMm, rearwardMm, turn, resetToe ? ToeDeg : null);
    }

    /// <inheritdoc />
    public override string? NotTold(ReadOnlySpan<Adjustment> used, AngleTarget target, bool keepsArchGap)
    {
        foreach (var one in used)
        {
            if (Gap(one) is { } gap) return MeasuredWords.Reason(gap) + ".";
        }

        if (keepsArchGap) return "where the tyre's top goes is not told by readings, so no gap to the arch can be kept; leave it out.";
        if (target.ToeDeg is not null && ToeDeg is null) return "toe was not read at this height, so none can be aimed for; leave toeDeg out.";
        return target.CasterDeg is not null && (_corner.RearwardGap ?? _corner.CasterGap) is { } unknown ? MeasuredWords.Reason(unknown) + "." : null;
    }

    /// <inheritdoc />
    public override (string Reason, double ResidualMm) WhyNot(ReadOnlySpan<Adjustment> adjustments, bool resetToe)
    {
        var travelMm = _travelMm;
        foreach (var one in adjustments)
        {
            if (one.By == Adjuster.RideHeight) travelMm -= one.Amount;
        }

        return (MeasuredWords.BeyondReadings(travelMm, _corner.FirstMm, _corner.LastMm), 0);
    }

    /// <inheritdoc />
    public override IReadOnlyList<FigureGap> Gaps(AdjustableCorner after)
    {
        var told = after.Told;
        var isAtStatedHeight = after is AdjustedReadings { _travelMm: 0 };
        List<FigureGap> gaps = [.. NeedPoints.Select(output => new FigureGap(output, MeasuredWords.Reason(MeasuredGap.NeedsPoints), MeasuredWords.Needs(MeasuredGap.NeedsPoints)))];
        if (told.ToeDeg is null) gaps.Add(new("toeDeg", _corner.ToeGap is { } toe ? MeasuredWords.Reason(toe) : "how a moved top mount or a turned knuckle changes toe is not told by readings; set it afterwards", MeasuredWords.Needs(_corner.ToeGap ?? MeasuredGap.NeedsPoints)));
        if (_corner.ToeGap is { } notRead) gaps.Add(new("bumpSteerDegPer10Mm", MeasuredWords.Reason(notRead), MeasuredWords.Needs(notRead)));
        if (told.CasterDeg is null) gaps.Add(new("casterDeg", Axis(_corner.CasterGap ?? (isAtStatedHeight ? _corner.RearwardGap : null)), MeasuredWords.Needs(_corner.CasterGap ?? (isAtStatedHeight ? _corner.RearwardGap : null) ?? MeasuredGap.NeedsPoints)));
        if (told.SteeringAxisInclinationDeg is null)
        {
            gaps.Add(new("steeringAxisInclinationDeg", Axis(_corner.InclinationGap), MeasuredWords.Needs(_corner.InclinationGap ?? MeasuredGap.NeedsPoints)));
            gaps.Add(new("includedAngleDeg", Axis(_corner.InclinationGap), MeasuredWords.Needs(_corner.InclinationGap ?? MeasuredGap.NeedsPoints)));
        }

        return gaps;
    }

    private static AdjustedReadings? Make(MeasuredCorner corner, WheelSetup setup, double travelMm, double inboardMm, double rearwardMm, UprightTurn turn, double? toeHeldDeg)
    {
        if (corner.CamberAt(travelMm)?.AngleDeg is not { } camber) return null;
        if (inboardMm != 0)
        {
            if (corner.TopMount?.CamberChangeDeg(inboardMm) is not { } change) return null;
            camber = new Estimate(camber.Value + change.Value, double.Hypot(camber.StandardError, change.StandardError));
        }

        camber = new Estimate(camber.Value + turn.CamberDeg, camber.StandardError);
        return new AdjustedReadings(corner, setup, travelMm, inboardMm, rearwardMm, turn, toeHeldDeg, camber);
    }

    private static string Axis(MeasuredGap? gap) => gap is { } known ? MeasuredWords.Reason(known) : AxisOverTravel;

    private MeasuredGap? Gap(in Adjustment adjustment) => adjustment.By switch
    {
        Adjuster.StrutTopInboard => adjustment.Amount == 0 ? null : _corner.TopMountGap,
        Adjuster.StrutTopRearward or Adjuster.RideHeight => null,
        _ when UprightTurn.Has(adjustment.By) => null,
        _ => MeasuredGap.NeedsPoints,
    };
}
