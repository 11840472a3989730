using SetupService.Domain.Answers;
using SetupService.Domain.Suspension.Search;

namespace SetupService.Domain.Suspension.Readings;

/// <summary>
/// A measured corner as it stands: at a wheel travel, its top mount moved. Where toe at ride height is stated beside the readings, its
/// curve keeps its shape and goes through it: toe is set after it was read.
/// </summary>
public sealed class MeasuredStand : IAdjustableCorner<MeasuredStand>
{
    private readonly MeasuredCorner _corner;
    private readonly double? _statedToeDeg;
    private readonly double _inboardMm;
    private readonly double _rearwardMm;
    private readonly double? _toeHeldDeg;

    private MeasuredStand(MeasuredCorner corner, double? statedToeDeg, double travelMm, double inboardMm, double rearwardMm, double? toeHeldDeg, Estimate camberDeg)
    {
        _corner = corner;
        _statedToeDeg = statedToeDeg;
        TravelMm = travelMm;
        _inboardMm = inboardMm;
        _rearwardMm = rearwardMm;
        _toeHeldDeg = toeHeldDeg;
        Camber = camberDeg;
    }

    /// <summary>Wheel travel from ride height as measured, mm.</summary>
    public double TravelMm { get; }

    /// <summary>Camber, degrees.</summary>
    public Estimate Camber { get; }

    /// <inheritdoc />
    public double CamberDeg => Camber.Value;

    /// <summary>Caster, degrees; null where it is not known, or not how it goes with travel or a rearward move.</summary>
    public double? CasterDeg => TravelMm != 0 ? null : _rearwardMm == 0 ? _corner.CasterDeg?.Value : _corner.CasterDeg?.Value + _corner.CasterChangeDeg(_rearwardMm)?.Value;

    /// <summary>Inclination, degrees: a strut rigid about its ball joint gains what camber loses. Null where it is not known.</summary>
    public double? SteeringAxisInclinationDeg => TravelMm != 0 ? null : _inboardMm == 0 ? _corner.SteeringAxisInclinationDeg?.Value : _corner.SteeringAxisInclinationDeg?.Value - _corner.TopMount?.CamberChangeDeg(_inboardMm).Value;

    /// <summary>Toe, degrees; null where it was not read, or a moved top mount has changed it by what is not known.</summary>
    public double? ToeDeg => _toeHeldDeg ?? (_inboardMm == 0 && _rearwardMm == 0 ? ToeAt(_corner, _statedToeDeg, TravelMm)?.Value : null);

    /// <summary>Change of camber per mm of bump, degrees; null where the curve does not reach.</summary>
    public double? CamberGainDegPerMm => _corner.CamberAt(TravelMm)?.SlopeDegPerMm.Value;

    /// <summary>Change of toe per mm of bump, degrees; null where toe was not read.</summary>
    public double? ToeGainDegPerMm => _corner.ToeAt(TravelMm)?.SlopeDegPerMm.Value;

    /// <summary>Not known: no reading says where the tyre's top goes.</summary>
    public double? TyreTopOutboardMm => null;

    /// <summary>The corner as it was measured; null where its readings do not reach ride height.</summary>
    public static MeasuredStand? AsStated(MeasuredCorner corner, double? statedToeDeg) => Make(corner, statedToeDeg, 0, 0, 0, null);

    /// <summary>Toe at a travel, mm, with the stated toe at ride height; null where the readings do not reach or toe was not read.</summary>
    public static Estimate? ToeAt(MeasuredCorner corner, double? statedToeDeg, double travelMm) =>
        Shifted(corner.ToeAt(travelMm)?.AngleDeg, statedToeDeg - corner.ToeAt(0)?.AngleDeg.Value)
            ?? (travelMm == 0 && statedToeDeg is { } given ? new Estimate(given, 0) : null);

    /// <summary>Why an adjustment's effect on camber is not known; null where it is.</summary>
    public static MeasuredGap? Gap(MeasuredCorner corner, in Adjustment adjustment) => adjustment.By switch
    {
        Adjuster.StrutTopInboard => adjustment.Amount == 0 ? null : corner.TopMountGap,
        Adjuster.StrutTopRearward or Adjuster.RideHeight => null,
        _ => MeasuredGap.NeedsPoints,
    };

    /// <inheritdoc />
    public MeasuredStand? With(ReadOnlySpan<Adjustment> adjustments, bool resetToe)
    {
        var (travelMm, inboardMm, rearwardMm) = (TravelMm, _inboardMm, _rearwardMm);
        foreach (var one in adjustments)
        {
            switch (one.By)
            {
                case Adjuster.StrutTopInboard: inboardMm += one.Amount; break;
                case Adjuster.StrutTopRearward: rearwardMm += one.Amount; break;
                case Adjuster.RideHeight: travelMm -= one.Amount; break;
                default: return null;
            }
        }

        return Make(_corner, _statedToeDeg, travelMm, inboardMm, rearwardMm, resetToe ? ToeDeg : null);
    }

    private static MeasuredStand? Make(MeasuredCorner corner, double? statedToeDeg, double travelMm, double inboardMm, double rearwardMm, double? toeHeldDeg)
    {
        if (corner.CamberAt(travelMm)?.AngleDeg is not { } camber) return null;
        if (inboardMm != 0)
        {
            if (corner.TopMount?.CamberChangeDeg(inboardMm) is not { } change) return null;
            camber = new Estimate(camber.Value + change.Value, double.Hypot(camber.StandardError, change.StandardError));
        }

        return new MeasuredStand(corner, statedToeDeg, travelMm, inboardMm, rearwardMm, toeHeldDeg, camber);
    }

    private static Estimate? Shifted(Estimate? read, double? shift) =>
        read is { } estimate ? estimate with { Value = estimate.Value + (shift ?? 0) } : null;
}
