using SetupService.Domain.Wheels;

namespace SetupService.Domain.Fitment.Outlines;

/// <summary>
/// The section of a drop-centre rim above the wheel axis. Exact: width over the flanges, width between them, bead seat radius
/// and flange height. Seat taper is the 5° of the rim's name; well, humps and metal are a plausible shape.
/// </summary>
internal static class RimSection
{
    private const double MetalMm = 6;
    private const double SeatMm = 20;
    private const double WellMm = 17;
    private static readonly double SeatTaper = Math.Tan(double.DegreesToRadians(5));

    /// <summary>
    /// Radius of the flanges' edge: bead seat plus the height of contour J. Lower for a section so low that the flange would
    /// stand in its sidewall's widest place.
    /// </summary>
    public static double FlangeRadiusMm(in Envelope envelope) =>
        envelope.RimSeatRadiusMm + Math.Min(RimFlangeTable.J.HeightMm, 0.45 * (envelope.RadiusMm - envelope.RimSeatRadiusMm));

    /// <summary>Where the disc joins the rim: both ends of the joint, outboard end first.</summary>
    public static (OutlinePoint Outboard, OutlinePoint Inboard) DiscJoint(in Envelope envelope, double rimWidthMm)
    {
        var half = rimWidthMm / 2;
        var well = WellRadiusMm(envelope);
        var ledge = half - Seat(half);
        return (
            new(envelope.CentrePlaneMm + (0.96 * ledge), envelope.RimSeatRadiusMm - 7),
            new(envelope.CentrePlaneMm + (0.96 * ledge) - Math.Min(24, 0.6 * ledge), well - (MetalMm / 2)));
    }

    /// <summary>Radius of the well's ground, from outside.</summary>
    public static double WellRadiusMm(in Envelope envelope) => envelope.RimSeatRadiusMm - WellMm;

    /// <summary>The metal: the tyre's side from the outboard flange to the inboard one, and back along the inside.</summary>
    public static Outline Of(in Envelope envelope, double rimWidthMm)
    {
        var centreMm = envelope.CentrePlaneMm;
        var (half, edge) = (rimWidthMm / 2, envelope.OverFlangesMm / 2);
        var (seat, flange, well) = (envelope.RimSeatRadiusMm, FlangeRadiusMm(envelope), WellRadiusMm(envelope));
        var ledge = half - Seat(half);
        var ledgeRadius = seat - (Seat(half) * SeatTaper);
        var curl = 0.5 * (flange - seat);
        return new Outline(
            At(edge, flange),
            Line(half + 5, flange),
            OutlineStep.Curve(At(half + 2, flange), At(half, flange - (0.4 * curl)), At(half, flange - curl)),
            Line(half, seat),
            Line(ledge, ledgeRadius),
            Line(0.66 * ledge, well),
            Line(-0.12 * ledge, well),
            Line(-0.5 * ledge, ledgeRadius - 2),
            Line(-ledge, ledgeRadius),
            Line(-half, seat),
            Line(-half, flange - curl),
            OutlineStep.Curve(At(-half, flange - (0.4 * curl)), At(-half - 2, flange), At(-half - 5, flange)),
            Line(-edge, flange),
            Line(-edge, flange - 4),
            OutlineStep.Curve(At(-half - 8, flange - 4), At(-half - MetalMm, flange - 6), At(-half - MetalMm, flange - curl - 3)),
            Line(-half - MetalMm, seat - 1),
            OutlineStep.Curve(At(-half - MetalMm, seat - MetalMm), At(-half, seat - MetalMm - 1), At(-ledge, ledgeRadius - MetalMm)),
            Line(-0.5 * ledge, ledgeRadius - 2 - MetalMm),
            Line(-0.14 * ledge, well - MetalMm),
            Line(0.7 * ledge, well - MetalMm),
            Line(ledge, ledgeRadius - MetalMm),
            OutlineStep.Curve(At(half, seat - MetalMm - 1), At(half + MetalMm, seat - MetalMm), At(half + MetalMm, seat - 1)),
            Line(half + MetalMm, flange - curl - 3),
            OutlineStep.Curve(At(half + MetalMm, flange - 6), At(half + 8, flange - 4), At(edge, flange - 4)));

        OutlinePoint At(double fromCentreMm, double heightMm) => new(centreMm + fromCentreMm, heightMm);
        OutlineStep Line(double fromCentreMm, double heightMm) => OutlineStep.Line(At(fromCentreMm, heightMm));
    }

    private static double Seat(double halfMm) => Math.Min(SeatMm, 0.5 * halfMm);
}
