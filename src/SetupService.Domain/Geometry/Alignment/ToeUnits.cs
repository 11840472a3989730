namespace SetupService.Domain.Geometry.Alignment;

/// <summary>Toe in degrees, in minutes of arc and in mm over a measuring diameter. The sign stays.</summary>
public static class ToeUnits
{
    private const double MinutesPerDegree = 60;

    /// <summary>Degrees as minutes.</summary>
    public static double MinutesFromDegrees(double toeDeg) => MinutesPerDegree * toeDeg;

    /// <summary>
    /// How much nearer to the car's centre plane the front of this wheel is than its rear, mm, over <paramref name="measuringDiameterMm"/>
    /// at the gauge (above zero; as a rule the rim's edge): diameter × sin toe.
    /// </summary>
    public static double MillimetresFromDegrees(double toeDeg, double measuringDiameterMm) =>
        measuringDiameterMm * Math.Sin(double.DegreesToRadians(toeDeg));
}
