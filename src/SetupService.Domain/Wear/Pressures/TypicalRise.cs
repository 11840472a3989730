using SetupService.Domain.Answers;

namespace SetupService.Domain.Wear.Pressures;

/// <summary>
/// How much hotter the gas of a tyre gets on a track, where only its hot pressure was read: used to say what it reads cold, with its range, and
/// listed as an assumption wherever it is. Common practice, no source.
/// </summary>
public static class TypicalRise
{
    /// <summary>Where it comes from.</summary>
    public const string Source = "common practice, no source";

    /// <summary>Rise of the gas over the cold tyre, °C.</summary>
    public const double RiseC = 45;

    /// <summary>Nine in ten rise at least this much, °C.</summary>
    public const double LeastRiseC = 20;

    /// <summary>Nine in ten rise at most this much, °C.</summary>
    public const double MostRiseC = 70;

    /// <summary>The cold tyre where its temperature is not given, °C.</summary>
    public const double UsualColdC = 20;

    /// <summary>
    /// A change of the cold setting by the change of the hot pressure it makes, with the range of the rise, from a cold tyre as warm as usual: absolute pressures scale with absolute
    /// temperature at constant volume.
    /// </summary>
    public static Uncertainty ColdByHot { get; } = new(1 / Ratio(RiseC, null), 1 / Ratio(MostRiseC, null), 1 / Ratio(LeastRiseC, null), Uncertainty.NinetyPct);

    /// <summary>True where a tread is hot and the pressure has not risen with it: the cold one was read hot, or the two are of different fillings.</summary>
    /// <param name="coldKpa">Cold gauge pressure, kPa.</param>
    /// <param name="hotKpa">Hot gauge pressure, kPa.</param>
    /// <param name="gaugeKpa">By what a gauge leaves the two apart, kPa.</param>
    /// <param name="treadC">Mean temperature of the tread, °C; null where it was not read.</param>
    /// <param name="coldC">Temperature of the cold tyre, °C; null where it is not known.</param>
    public static bool IsMissing(double coldKpa, double hotKpa, double gaugeKpa, double? treadC, double? coldC) =>
        Math.Abs(hotKpa - coldKpa) <= gaugeKpa && treadC >= (coldC ?? UsualColdC) + LeastRiseC;

    /// <summary>What a hot gauge pressure reads cold, kPa, with the range of the rise.</summary>
    /// <param name="hotKpa">Hot gauge pressure, kPa.</param>
    /// <param name="airKpa">Absolute pressure of the air, kPa.</param>
    /// <param name="coldC">Temperature of the cold tyre, °C; null where it is not known.</param>
    public static Uncertainty ColdForHot(double hotKpa, double airKpa, double? coldC) =>
        new(Cold(hotKpa, airKpa, RiseC, coldC), Cold(hotKpa, airKpa, MostRiseC, coldC), Cold(hotKpa, airKpa, LeastRiseC, coldC), Uncertainty.NinetyPct);

    /// <summary>The hot gauge pressure that reads so cold, kPa.</summary>
    /// <param name="coldKpa">Cold gauge pressure, kPa.</param>
    /// <param name="airKpa">Absolute pressure of the air, kPa.</param>
    /// <param name="coldC">Temperature of the cold tyre, °C; null where it is not known.</param>
    public static double HotForCold(double coldKpa, double airKpa, double? coldC) => ((coldKpa + airKpa) * Ratio(RiseC, coldC)) - airKpa;

    private static double Cold(double hotKpa, double airKpa, double riseC, double? coldC) => ((hotKpa + airKpa) / Ratio(riseC, coldC)) - airKpa;

    private static double Ratio(double riseC, double? coldC) => 1 + (riseC / ((coldC ?? UsualColdC) + PressureRise.ZeroCelsiusK));
}
