namespace SetupService.Domain.Handling.Tyres;

/// <summary>
/// A published set of Magic Formula coefficients, of a passenger tyre of the 1980s: an example, not the caller's tyre. It shows how side
/// force falls behind the load; it has no best camber, so no camber advice is taken from it.
/// Source: Bakker, Nyborg, Pacejka, SAE 870421 (1987): a0 to a8 as a university's coursework file prints them, the camber terms a9, a11
/// and a12 from memory.
/// </summary>
public static class ExampleTyre
{
    /// <summary>Static wheel load, N, up to which the set is taken as it is; heavier cars carry a tyre of the same shape, scaled up.</summary>
    public const double LargestStaticLoadN = 5000;

    /// <summary>Where the set comes from, for an answer.</summary>
    public const string Source = "SAE 870421 (1987), example set of Magic Formula coefficients; its camber terms from memory";

    private const double A0 = 1.30;
    private const double A1 = -22.1;
    private const double A2 = 1011;
    private const double A3 = 1078;
    private const double A4 = 1.82;
    private const double A5 = 0.208;
    private const double A6 = 0;
    private const double A7 = -0.354;
    private const double A8 = 0.707;
    private const double A9 = 0.028;
    private const double A10 = 0;
    private const double A11 = 14.8;
    private const double A12 = 0.022;

    // Beyond this inclination, degrees, the straight camber terms say nothing.
    private const double LargestInclinationDeg = 15;

    /// <summary>The curve at a load, N, and an inclination, degrees, positive = leaning into the turn.</summary>
    public static SideForceCurve At(double loadN, double inclinationDeg, in TyreScale scale)
    {
        if (!(loadN > 0)) return default;
        var load = loadN / (1000 * scale.Size);
        var lean = Math.Clamp(inclinationDeg, -LargestInclinationDeg, LargestInclinationDeg);
        return new SideForceCurve(
            scale.Size * scale.Peak * ((A1 * load * load) + (A2 * load)),
            A0,
            scale.Size * scale.Slope * A3 * Math.Sin(A4 * Math.Atan(A5 * load)) * (1 - (A12 * Math.Abs(lean))),
            (A6 * load * load) + (A7 * load) + A8,
            A9 * lean,
            scale.Size * ((A10 * load * load) + (A11 * load)) * lean);
    }

    /// <summary>Cornering stiffness at no slip and no inclination, N/deg, at a load, N.</summary>
    public static double SlopeNPerDeg(double loadN, double size) => size * A3 * Math.Sin(A4 * Math.Atan(A5 * loadN / (1000 * size)));

    /// <summary>The scale of a tyre with a static load, N, and the cornering stiffness given for it, N/deg, or null.</summary>
    public static TyreScale Scale(double staticLoadN, double? corneringStiffnessNPerDeg)
    {
        var size = Math.Max(1, staticLoadN / LargestStaticLoadN);
        return new(corneringStiffnessNPerDeg is { } given ? given / SlopeNPerDeg(staticLoadN, size) : 1, 1, size);
    }
}

/// <summary>How a tyre differs from the example set.</summary>
/// <param name="Slope">Its cornering stiffness by the set's, at the same load.</param>
/// <param name="Peak">Its peak side force by the set's; the slope stays.</param>
/// <param name="Size">By how much it carries more: force F at load N is Size times the set's at N/Size.</param>
public readonly record struct TyreScale(double Slope, double Peak, double Size)
{
    /// <summary>The example tyre itself.</summary>
    public static TyreScale None => new(1, 1, 1);
}
