using SetupService.Domain.Answers;
using SetupService.Domain.Suspension.Steering;

namespace SetupService.Domain.Suspension.Readings;

/// <summary>
/// A left corner known by measuring instead of by its points: camber and toe over travel, the steering axis, and how camber and
/// caster go with the top mount. What it does not know is null, with the reason. Immutable; made once and cheap to ask.
/// </summary>
public sealed class MeasuredCorner
{
    private readonly TravelCurve _camber;
    private readonly TravelCurve? _toe;

    private MeasuredCorner(CornerReadings readings, TravelCurve camber, TravelCurve? toe, StatedCamber? stated)
    {
        StatedCamber = stated;
        _camber = camber;
        _toe = toe;
        Steering = readings.Steer.Count > 0 ? CasterReadings.From([.. readings.Steer], WheelSide.Left, readings.GaugeErrorDeg) : null;
        var axis = Steering?.Fit;
        CasterDeg = Known(readings.CasterDeg, axis?.CasterDeg, axis?.CasterStandardErrorDeg);
        SteeringAxisInclinationDeg = Known(readings.SteeringAxisInclinationDeg, axis?.SteeringAxisInclinationDeg, axis?.InclinationStandardErrorDeg);
        TopMount = TopMountFit.From([.. readings.TopMount], SteeringAxisInclinationDeg, readings.GaugeErrorDeg);
    }

    /// <summary>Caster at ride height, degrees: as given, else from the steer readings; null where neither tells it.</summary>
    public Estimate? CasterDeg { get; }

    /// <summary>Steering-axis inclination at ride height, degrees: as given, else from the steer readings; null where neither tells it.</summary>
    public Estimate? SteeringAxisInclinationDeg { get; }

    /// <summary>What the steer readings tell; null where there are none.</summary>
    public CasterReadings? Steering { get; }

    /// <summary>How a camber stated for ride height agrees with the readings; null where none is stated.</summary>
    public StatedCamber? StatedCamber { get; }

    /// <summary>What moving the top mount does; null where it was not read at two places.</summary>
    public TopMountFit? TopMount { get; }

    /// <summary>Why toe is not known over travel; null where it is.</summary>
    public MeasuredGap? ToeGap => _toe is null ? MeasuredGap.ToeNotRead : null;

    /// <summary>Why the caster is not known; null where it is.</summary>
    public MeasuredGap? CasterGap => CasterDeg is null ? MeasuredGap.CasterNotKnown : null;

    /// <summary>Why the inclination is not known; null where it is.</summary>
    public MeasuredGap? InclinationGap => SteeringAxisInclinationDeg is null ? MeasuredGap.InclinationNotKnown : null;

    /// <summary>Why camber with the top mount moved inboard is not known; null where it is.</summary>
    public MeasuredGap? TopMountGap => TopMount is not { } fit ? MeasuredGap.TopMountNotRead : fit.IsWrongWay ? MeasuredGap.TopMountWrongWay : null;

    /// <summary>Why the effective height of the strut, and the movement a camber change takes, are not known; null where they are.</summary>
    public MeasuredGap? StrutHeightGap => TopMount is { } fit ? fit.HeightGap : MeasuredGap.TopMountNotRead;

    /// <summary>Why caster with the top mount moved rearward is not known; null where it is.</summary>
    public MeasuredGap? RearwardGap => StrutHeightGap ?? CasterGap;

    /// <summary>Makes a corner of readings; null, with the fault, where they make none.</summary>
    public static MeasuredCorner? From(CornerReadings readings, out CornerReadingsFault? fault)
    {
        (double TravelMm, double AngleDeg)[] cambers = [.. readings.Travel.Select(reading => (reading.TravelMm, reading.CamberDeg))];
        (double TravelMm, double AngleDeg)[] toes =
            [.. readings.Travel.Where(reading => reading.ToeDeg is not null).Select(reading => (reading.TravelMm, reading.ToeDeg!.Value))];
        var toeErrorDeg = readings.ToeErrorDeg ?? readings.GaugeErrorDeg;
        fault = FaultIn(readings, cambers, toes, toeErrorDeg);
        if (fault is not null) return null;
        if (Readings.StatedCamber.Curve(readings, out var stated) is { } camber)
        {
            return new(readings, camber, TravelCurve.ForToe(toes, toeErrorDeg), stated);
        }

        fault = CornerReadingsFault.TooFewHeights;
        return null;
    }

    /// <summary>Lowest height camber was read at, mm.</summary>
    public double FirstMm => _camber.FirstMm;

    /// <summary>Highest height camber was read at, mm.</summary>
    public double LastMm => _camber.LastMm;

    /// <summary>Camber at a travel, mm; null where the curve does not reach it.</summary>
    public TravelAngle? CamberAt(double travelMm) => _camber.At(travelMm);

    /// <summary>Toe at a travel, mm; null where it was not read, or its own readings do not reach it.</summary>
    public TravelAngle? ToeAt(double travelMm) => _toe?.At(travelMm);

    /// <summary>Camber at a travel, mm, without its errors; null where the curve does not reach it.</summary>
    public double? CamberDegAt(double travelMm) => _camber.ValueDegAt(travelMm);

    /// <summary>Toe at a travel, mm, without its errors; null where it was not read, or its own readings do not reach it.</summary>
    public double? ToeDegAt(double travelMm) => _toe?.ValueDegAt(travelMm);

    /// <summary>Change of caster with the top mount moved rearward, degrees for mm; null where <see cref="RearwardGap"/> says why.</summary>
    public Estimate? CasterChangeDeg(double rearwardMm) =>
        CasterDeg is { } casterDeg ? TopMount?.CasterChangeDeg(rearwardMm, casterDeg) : null;

    private static CornerReadingsFault? FaultIn(
        CornerReadings readings, (double TravelMm, double AngleDeg)[] cambers, (double TravelMm, double AngleDeg)[] toes, double toeErrorDeg)
    {
        (double InboardMm, double CamberDeg)[] topMounts = [.. readings.TopMount.Select(reading => (reading.InboardMm, reading.CamberDeg))];
        if (!(readings.GaugeErrorDeg >= 0) || !(toeErrorDeg >= 0) || !double.IsFinite(readings.StatedCamberDeg ?? 0)) return CornerReadingsFault.NotANumber;
        if (!AreFinite(cambers) || !AreFinite(toes) || !AreFinite(topMounts)) return CornerReadingsFault.NotANumber;
        if (!TravelCurve.AreConsistent(cambers, readings.GaugeErrorDeg)) return CornerReadingsFault.CamberContradicts;
        if (!TravelCurve.AreConsistent(toes, toeErrorDeg)) return CornerReadingsFault.ToeContradicts;
        return TravelCurve.AreConsistent(topMounts, readings.GaugeErrorDeg) ? null : CornerReadingsFault.TopMountContradicts;
    }

    private static bool AreFinite(ReadOnlySpan<(double At, double AngleDeg)> readings)
    {
        foreach (var (at, angleDeg) in readings)
        {
            if (!double.IsFinite(at) || !double.IsFinite(angleDeg)) return false;
        }

        return true;
    }

    private static Estimate? Known(double? given, double? fitted, double? standardError) =>
        given is { } value ? new(value, 0) : fitted is { } read ? new(read, standardError ?? 0) : null;
}
