namespace SetupService.Domain.Wear.Pressures;

/// <summary>
/// The pressure of the air by altitude in the standard atmosphere, ISO 2533:1975, its lowest layer: p = p0 (1 − L H / T0)^(g / (R L)). Constants from memory of
/// the standard. A map's altitude stands for the geopotential one, which differs by 0.03 % at 2000 m.
/// </summary>
public static class StandardAtmosphere
{
    /// <summary>At sea level, kPa.</summary>
    public const double SeaLevelKpa = 101.325;

    /// <summary>What the weather moves it by, one standard deviation, kPa; judgement.</summary>
    public const double WeatherErrorKpa = 1;

    private const double SeaLevelK = 288.15;
    private const double LapseKPerM = 0.0065;
    private const double GravityMPerS2 = 9.80665;
    private const double GasConstantJPerKgK = 287.05287;

    /// <summary>Absolute pressure, kPa, at an altitude of −5000 to 11 000 m.</summary>
    public static double PressureKpa(double altitudeM) =>
        SeaLevelKpa * Math.Pow(1 - (LapseKPerM * altitudeM / SeaLevelK), GravityMPerS2 / (GasConstantJPerKgK * LapseKPerM));
}
