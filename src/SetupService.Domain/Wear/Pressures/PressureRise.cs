namespace SetupService.Domain.Wear.Pressures;

/// <summary>
/// A tyre's gauge pressures cold and hot, and the air's: a fixed mass of dry ideal gas in a fixed room, so that absolute pressure goes with absolute
/// temperature. Gauge pressures in kPa, temperatures of the gas in °C.
/// </summary>
/// <param name="ColdKpa">Gauge pressure cold.</param>
/// <param name="HotKpa">Gauge pressure hot, of the same filling.</param>
/// <param name="AirKpa">Absolute pressure of the air, above 0.</param>
public readonly record struct PressureRise(double ColdKpa, double HotKpa, double AirKpa)
{
    /// <summary>0 °C in kelvin, by definition.</summary>
    public const double ZeroCelsiusK = 273.15;

    /// <summary>Hot by cold absolute pressure, which is hot by cold absolute temperature.</summary>
    public double Ratio => (HotKpa + AirKpa) / (ColdKpa + AirKpa);

    /// <summary>Temperature of the gas when hot, for the one when cold.</summary>
    public double HotGasC(double coldC) => ((coldC + ZeroCelsiusK) * Ratio) - ZeroCelsiusK;

    /// <summary>The cold pressure that reaches a hot one, with the gas cold and hot as it was.</summary>
    public double ColdForHotKpa(double hotKpa) => ((hotKpa + AirKpa) / Ratio) - AirKpa;

    /// <summary>The hot pressure a cold one reaches, with the gas cold and hot as it was.</summary>
    public double HotForColdKpa(double coldKpa) => ((coldKpa + AirKpa) * Ratio) - AirKpa;

    /// <summary>What the gauge reads cold on another day where nothing is let in or out.</summary>
    /// <param name="coldC">The gas when the cold pressure was read.</param>
    /// <param name="nextColdC">The gas cold that day.</param>
    public double UntouchedColdKpa(double coldC, double nextColdC) => At(ColdKpa, coldC, nextColdC);

    /// <summary>What it reads hot that day.</summary>
    /// <param name="coldC">The gas when the cold pressure was read.</param>
    /// <param name="nextColdC">The gas cold that day.</param>
    /// <param name="follows">Degrees the hot gas rises per degree the cold gas does, 0 to 1.</param>
    public double UntouchedHotKpa(double coldC, double nextColdC, double follows) => At(HotKpa, HotGasC(coldC), NextHotGasC(coldC, nextColdC, follows));

    /// <summary>The cold pressure to set that day for a hot one.</summary>
    /// <param name="hotKpa">The hot gauge pressure wanted.</param>
    /// <param name="coldC">The gas when the cold pressure was read.</param>
    /// <param name="nextColdC">The gas cold that day.</param>
    /// <param name="follows">Degrees the hot gas rises per degree the cold gas does, 0 to 1.</param>
    public double NextColdForHotKpa(double hotKpa, double coldC, double nextColdC, double follows) =>
        At(hotKpa, NextHotGasC(coldC, nextColdC, follows), nextColdC);

    /// <summary>The hot pressure a cold one reaches that day.</summary>
    /// <param name="coldKpa">The cold gauge pressure set that day.</param>
    /// <param name="coldC">The gas when the cold pressure was read.</param>
    /// <param name="nextColdC">The gas cold that day.</param>
    /// <param name="follows">Degrees the hot gas rises per degree the cold gas does, 0 to 1.</param>
    public double NextHotForColdKpa(double coldKpa, double coldC, double nextColdC, double follows) =>
        At(coldKpa, nextColdC, NextHotGasC(coldC, nextColdC, follows));

    private double NextHotGasC(double coldC, double nextColdC, double follows) => HotGasC(coldC) + (follows * (nextColdC - coldC));

    private double At(double gaugeKpa, double fromC, double toC) =>
        ((gaugeKpa + AirKpa) * (toC + ZeroCelsiusK) / (fromC + ZeroCelsiusK)) - AirKpa;
}
