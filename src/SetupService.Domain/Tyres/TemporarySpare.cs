using SetupService.Domain.Answers;

namespace SetupService.Domain.Tyres;

/// <summary>
/// What owners' manuals say of temporary spares (T before the size): five read on pressure, several on speed and life. The sidewall and the car's own
/// handbook decide; some allow 105 km/h.
/// </summary>
public static class TemporarySpare
{
    /// <summary>The usual cold pressure, kPa (60 psi).</summary>
    public const double UsualPressureKpa = 420;

    /// <summary>The usual top speed, km/h (50 mph), whatever the speed symbol says; some handbooks allow 105 (65 mph).</summary>
    public const double UsualMaximumSpeedKmh = 80;

    /// <summary>The usual cold pressure as sidewalls print it; the two figures are no conversion of each other.</summary>
    public static string UsualPressure(UnitSystem units) => units == UnitSystem.Us ? "60 psi" : "420 kPa";

    /// <summary>About how far the tread lasts, km.</summary>
    public const double UsualTreadLifeKm = 5000;

    /// <summary>Where the figures come from.</summary>
    public const string Source = "vehicle owners' manuals, five on pressure";
}
