namespace SetupService.Domain.Wear.TreadWear;

/// <summary>Wear of one strip of a tread, across at y from −1 at the outer edge to 1 at the inner one. Formulas: docs/methods/tread-wear.</summary>
public static class TreadStrip
{
    /// <summary>
    /// Pressure at a strip by the mean pressure, of a tread that is a bed of springs under a fixed load: it falls evenly across, and is nowhere below nothing.
    /// </summary>
    /// <param name="y">The strip.</param>
    /// <param name="lean">By how much the outer edge of a whole bed would be pressed more than the mean, as a share; negative = the inner edge.</param>
    public static double Pressure(double y, double lean)
    {
        if (Math.Abs(lean) <= 1) return 1 - (lean * y);
        var fromPressed = lean > 0 ? 1 + y : 1 - y;
        var steep = Math.Abs(lean);
        return Math.Max(0, steep * (Math.Sqrt(4 / steep) - fromPressed));
    }

    /// <summary>Change of <see cref="Pressure"/> with the lean.</summary>
    public static double PressureByLean(double y, double lean)
    {
        if (Math.Abs(lean) <= 1) return -y;
        var fromPressed = lean > 0 ? 1 + y : 1 - y;
        var steep = Math.Abs(lean);
        var isBearing = Math.Sqrt(4 / steep) > fromPressed;
        return isBearing ? Math.Sign(lean) * ((1 / Math.Sqrt(steep)) - fromPressed) : 0;
    }

    /// <summary>Lean of the pressure by a degree of inclination where all of it reaches the patch.</summary>
    public static double LeanPerDeg(WheelUse wheel, double loadN)
    {
        ArgumentNullException.ThrowIfNull(wheel);
        return loadN > 0 ? wheel.TreadWidthMm / 2 * Math.Tan(double.DegreesToRadians(1)) * wheel.TyreRateNPerMm / loadN : 0;
    }
}
