using SetupService.Domain.Wear.Readings;

namespace SetupService.Domain.Wear.Temperatures;

/// <summary>How closely a tread's temperature is read, one standard deviation of one reading, °C.</summary>
public static class ThermometerErrors
{
    /// <summary>Where the errors come from.</summary>
    public const string Source = "common practice, no source: ±1 to 2 °C with a needle, ±3 to 5 °C by infrared";

    /// <summary>The error of one reading: 1 °C with a needle, 2.5 °C by infrared, which nine times in ten is ±1.6 and ±4.1 °C.</summary>
    public static double StandardErrorC(Thermometer by) => by == Thermometer.Probe ? 1 : 2.5;
}
