using SetupService.Domain.Numerics.Smoothing;

namespace SetupService.Domain.Suspension.Readings;

/// <summary>
/// An angle over wheel travel as somebody measured it: the smoothest curve within the gauge's error, carried on by the end slope for
/// <see cref="CamberCurve.ExtensionMm"/>. Heights within <see cref="CamberCurve.SameHeightMm"/> are one.
/// </summary>
public sealed class TravelCurve
{
    private readonly SmoothingSpline _spline;
    private readonly double _readingErrorDeg;

    private TravelCurve(SmoothingSpline spline, double readingErrorDeg) => (_spline, _readingErrorDeg) = (spline, readingErrorDeg);

    /// <summary>Lowest height read, mm.</summary>
    public double FirstMm => _spline.First;

    /// <summary>Highest height read, mm.</summary>
    public double LastMm => _spline.Last;

    /// <summary>
    /// Makes a curve of readings in any order, degrees over mm, each with the same standard error; null where fewer than two
    /// different heights were read, a number is not finite or the error not above zero.
    /// </summary>
    public static TravelCurve? From(IReadOnlyList<(double TravelMm, double AngleDeg)> readings, double standardErrorDeg)
    {
        var (travelsMm, anglesDeg, errorsDeg) = (new double[readings.Count], new double[readings.Count], new double[readings.Count]);
        for (var i = 0; i < readings.Count; i++) (travelsMm[i], anglesDeg[i], errorsDeg[i]) = (readings[i].TravelMm, readings[i].AngleDeg, standardErrorDeg);
        return SmoothingSpline.Fit(travelsMm, anglesDeg, errorsDeg, CamberCurve.SameHeightMm) is { } spline ? new(spline, standardErrorDeg) : null;
    }

    /// <summary>Whether the travel, mm, lies between the readings.</summary>
    public bool Holds(double travelMm) => travelMm >= FirstMm && travelMm <= LastMm;

    /// <summary>Whether the curve, with its extension, reaches the travel, mm.</summary>
    public bool Reaches(double travelMm) =>
        travelMm >= FirstMm - CamberCurve.ExtensionMm && travelMm <= LastMm + CamberCurve.ExtensionMm;

    /// <summary>
    /// The angle at a travel, mm; null where the curve does not reach it. The curve leaves the readings nearly as far away as they err,
    /// so it may lie that far beside the truth too, which the readings' weights do not tell: the error of one reading is counted into
    /// the angle's, and into the slope's in proportion. How often such ranges hold the truth is told in docs/methods/measured-corner.md.
    /// </summary>
    public TravelAngle? At(double travelMm)
    {
        if (!Reaches(travelMm)) return null;
        var fromReadingsDeg = _spline.StandardErrorAt(travelMm);
        var inAllDeg = double.Hypot(fromReadingsDeg, _readingErrorDeg);
        return new(
            new(_spline.ValueAt(travelMm), inAllDeg),
            new(_spline.SlopeAt(travelMm), _spline.SlopeStandardErrorAt(travelMm) * inAllDeg / fromReadingsDeg),
            !Holds(travelMm));
    }
}
