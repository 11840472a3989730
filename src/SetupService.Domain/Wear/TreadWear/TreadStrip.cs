namespace SetupService.Domain.Wear.TreadWear;

/// <summary>Wear of one strip of a tread, across at y from −1 at the outer edge to 1 at the inner one. Formulas: docs/methods/tread-wear.</summary>
public static class TreadStrip
{
    // Where a bed leaves the road its pressure fades out over this share of the mean, so that a fit meets no kink.
    private const double Fading = 0.02;

    /// <summary>
    /// Pressure at a strip by the mean pressure, of a tread that is a bed of springs under a fixed load: it falls evenly across, and is nowhere below nothing.
    /// </summary>
    /// <param name="y">The strip.</param>
    /// <param name="lean">By how much the outer edge of a whole bed would be pressed more than the mean, as a share; negative = the inner edge.</param>
    public static double Pressure(double y, double lean)
    {
        var pressed = Pressed(y, lean);
        return (pressed + Math.Sqrt((pressed * pressed) + (Fading * Fading))) / 2;
    }

    /// <summary>Change of <see cref="Pressure"/> with the lean.</summary>
    public static double PressureByLean(double y, double lean)
    {
        var pressed = Pressed(y, lean);
        var bearing = (1 + (pressed / Math.Sqrt((pressed * pressed) + (Fading * Fading)))) / 2;
        if (Math.Abs(lean) <= 1) return -y * bearing;
        var fromPressed = lean > 0 ? 1 + y : 1 - y;
        return Math.Sign(lean) * ((1 / Math.Sqrt(Math.Abs(lean))) - fromPressed) * bearing;
    }

    /// <summary>How far a strip is pressed by the mean; negative where it is off the road. The load stays, so past a lifted edge less of the width bears it.</summary>
    private static double Pressed(double y, double lean)
    {
        if (Math.Abs(lean) <= 1) return 1 - (lean * y);
        var fromPressed = lean > 0 ? 1 + y : 1 - y;
        var steep = Math.Abs(lean);
        return steep * (Math.Sqrt(4 / steep) - fromPressed);
    }

    /// <summary>Lean of the pressure by a degree of inclination where all of it reaches the patch.</summary>
    public static double LeanPerDeg(WheelUse wheel, double loadN)
    {
        ArgumentNullException.ThrowIfNull(wheel);
        return loadN > 0 ? wheel.TreadWidthMm / 2 * Math.Tan(double.DegreesToRadians(1)) * wheel.TyreRateNPerMm / loadN : 0;
    }
}
