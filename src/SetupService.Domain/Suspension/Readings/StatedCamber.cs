using SetupService.Domain.Answers;

namespace SetupService.Domain.Suspension.Readings;

/// <summary>A camber stated for ride height beside readings over travel: what was stated, and what the readings alone say there.</summary>
/// <param name="StatedDeg">Camber stated, degrees.</param>
/// <param name="ReadDeg">Camber at ride height by the readings alone, degrees, with its standard error.</param>
/// <param name="GaugeErrorDeg">Standard error of what was stated, degrees: one reading's.</param>
public readonly record struct StatedCamber(double StatedDeg, Estimate ReadDeg, double GaugeErrorDeg)
{
    /// <summary>How many standard errors of their difference the two may be apart.</summary>
    public const double StandardErrorsAllowed = 3;

    // What rounding to the digits people type leaves where the gauge is said to be without error.
    private const double RoundingDeg = 0.005;

    /// <summary>Stated less read, degrees.</summary>
    public double DifferenceDeg => StatedDeg - ReadDeg.Value;

    /// <summary>How far the two may be apart, degrees: three standard errors of their difference.</summary>
    public double AllowedDeg => Math.Max(RoundingDeg, StandardErrorsAllowed * double.Hypot(GaugeErrorDeg, ReadDeg.StandardError));

    /// <summary>
    /// True when the two are further apart than that: a caution that names both. The curve then keeps to the readings; else the stated
    /// camber is one reading more.
    /// </summary>
    public bool IsContradiction => Math.Abs(DifferenceDeg) > AllowedDeg;

    /// <summary>
    /// The camber curve of a corner: its readings, and the camber stated for ride height where the two agree. Null as
    /// <see cref="TravelCurve.From"/>.
    /// </summary>
    public static TravelCurve? Curve(CornerReadings readings, out StatedCamber? stated)
    {
        stated = null;
        (double TravelMm, double AngleDeg)[] read = [.. readings.Travel.Select(reading => (reading.TravelMm, reading.CamberDeg))];
        var alone = TravelCurve.ForCamber(read, readings.GaugeErrorDeg);
        if (readings.StatedCamberDeg is not { } statedDeg) return alone;
        if (alone is not null)
        {
            var compared = new StatedCamber(statedDeg, alone.Anywhere(0).AngleDeg, readings.GaugeErrorDeg);
            stated = compared;
            if (compared.IsContradiction) return alone;
        }

        // A reading without error at ride height itself is not read again.
        if (readings.GaugeErrorDeg == 0 && Array.Exists(read, one => one.TravelMm == 0)) return alone;
        return TravelCurve.ForCamber([.. read, (0, statedDeg)], readings.GaugeErrorDeg);
    }
}
