using SetupService.Domain.Wear.Readings;

namespace SetupService.Domain.Wear.Temperatures;

/// <summary>What tread temperatures of a car that works well look like. All of it is common practice, no source: no published measurement could be read.</summary>
public static class UsualTemperatures
{
    /// <summary>Where these ranges come from.</summary>
    public const string Source = "common practice, no source";

    /// <summary>Outer less inner shoulder: with negative camber the inner one is 3 to 8 °C the hotter.</summary>
    public static TemperatureRange OuterLessInner { get; } = new(-8, -3);

    /// <summary>Hottest less coldest place: up to about 10 °C.</summary>
    public static TemperatureRange WidestSpread { get; } = new(0, 10);

    /// <summary>The middle within about 3 °C of the mean of the shoulders.</summary>
    public static TemperatureRange CentreLessShoulders { get; } = new(-3, 3);

    /// <summary>Wheel pairs against each other: within about 10 °C.</summary>
    public static TemperatureRange BetweenPairs { get; } = new(-10, 10);
}

/// <summary>How closely a tread's temperature is read, one standard deviation of one reading, °C.</summary>
public static class ThermometerErrors
{
    /// <summary>Where the errors come from.</summary>
    public const string Source = "common practice, no source: ±2 to 3 °C with a needle, ±3 to 5 °C by infrared";

    /// <summary>The error of one reading: 1.5 °C with a needle, 2.5 °C by infrared, which nine times in ten is ±2.5 and ±4.1 °C.</summary>
    public static double StandardErrorC(Thermometer by) => by == Thermometer.Probe ? 1.5 : 2.5;
}
