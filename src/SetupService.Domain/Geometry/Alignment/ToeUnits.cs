namespace SetupService.Domain.Geometry.Alignment;

/// <summary>Toe in degrees, in minutes of arc and in mm over a measuring diameter. The sign stays.</summary>
public static class ToeUnits
{
    private const double MinutesPerDegree = 60;

    /// <summary>Degrees as minutes.</summary>
    public static double MinutesFromDegrees(double toeDeg) => MinutesPerDegree * toeDeg;

    /// <summary>Minutes as degrees.</summary>
    public static double DegreesFromMinutes(double toeMinutes) => toeMinutes / MinutesPerDegree;

    /// <summary>
    /// How much nearer to the car's centre plane the front of this wheel is than its rear, mm, over <paramref name="measuringDiameterMm"/>
    /// at the gauge (above zero; as a rule the rim's edge): diameter × sin toe.
    /// </summary>
    public static double MillimetresFromDegrees(double toeDeg, double measuringDiameterMm) =>
        measuringDiameterMm * Math.Sin(double.DegreesToRadians(toeDeg));

    /// <summary>The way back, −90 to 90; null where the difference is more than the diameter.</summary>
    public static double? DegreesFromMillimetres(double toeMm, double measuringDiameterMm) =>
        Math.Abs(toeMm) <= measuringDiameterMm ? double.RadiansToDegrees(Math.Asin(toeMm / measuringDiameterMm)) : null;
}
