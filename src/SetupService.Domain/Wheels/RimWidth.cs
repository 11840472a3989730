namespace SetupService.Domain.Wheels;

/// <summary>
/// Widths and spacings that follow from rim width and offset, in mm. A rim's width is the distance between the inner faces of
/// its flanges, so the wheel from edge to edge is wider by two flanges.
/// </summary>
internal static class RimWidth
{
    private const double MmPerInch = 25.4;

    public static double Mm(double rimWidthIn) => rimWidthIn * MmPerInch;

    public static double OverFlangesMm(double rimWidthIn, RimFlange flange) => Mm(rimWidthIn) + (2 * flange.MinimumWidthMm);

    public static double BackspacingMm(double overFlangesMm, double offsetMm) => (overFlangesMm / 2) + offsetMm;

    public static double FrontspacingMm(double overFlangesMm, double offsetMm) => (overFlangesMm / 2) - offsetMm;
}
