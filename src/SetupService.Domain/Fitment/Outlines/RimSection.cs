using SetupService.Domain.Wheels;

namespace SetupService.Domain.Fitment.Outlines;

/// <summary>
/// The section of a drop-centre rim above the wheel axis. Exact: width over the flanges, width between them, bead seat radius
/// and flange height. Seat taper is the 5° of the rim's name; well, humps and metal are a plausible shape.
/// </summary>
internal static class RimSection
{
    private const double MetalMm = 6;
    private const double FlangeMetalMm = 4;
    private const double LongestSeatMm = 20;
    private const double WellDepthMm = 17;

    /// <summary>
    /// Radius of the flanges' edge: bead seat plus the height of contour J. Lower for a section so low that the flange would
    /// stand in its sidewall's widest place.
    /// </summary>
    public static double FlangeRadiusMm(in Envelope envelope) =>
        envelope.RimSeatRadiusMm + Math.Min(RimFlangeTable.J.HeightMm, 0.45 * (envelope.RadiusMm - envelope.RimSeatRadiusMm));

    /// <summary>Radius of the well's ground, from outside.</summary>
    public static double WellRadiusMm(in Envelope envelope) => envelope.RimSeatRadiusMm - WellDepthMm;

    /// <summary>Where the disc joins the rim: both ends of the joint.</summary>
    public static (OutlinePoint Outboard, OutlinePoint Inboard) DiscJoint(in Envelope envelope, double rimWidthMm)
    {
        var shape = new RimMeasures(envelope, rimWidthMm);
        var outboard = 0.96 * shape.Ledge;
        return (
            shape.At(outboard, shape.LedgeRadius - (MetalMm / 2)),
            shape.At(outboard - Math.Min(24, 0.6 * shape.Ledge), shape.Well - (MetalMm / 2)));
    }

    /// <summary>The metal: the tyre's side from flange to flange, and back along the inside.</summary>
    public static Outline Metal(in Envelope envelope, double rimWidthMm) =>
        TyreSide(envelope, rimWidthMm).Then(Inside(new RimMeasures(envelope, rimWidthMm)));

    /// <summary>The tyre's side, from the outboard flange's edge to the inboard one's.</summary>
    public static Outline TyreSide(in Envelope envelope, double rimWidthMm)
    {
        var shape = new RimMeasures(envelope, rimWidthMm);
        var (half, edge, flange, foot) = (shape.Half, shape.Edge, shape.Flange, shape.Flange - shape.Curl);
        return new Outline(
            shape.At(edge, flange),
            shape.Line(half + 5, flange),
            OutlineStep.Curve(shape.At(half + 2, flange), shape.At(half, flange - (0.4 * shape.Curl)), shape.At(half, foot)),
            shape.Line(half, shape.Seat),
            shape.Line(shape.Ledge, shape.LedgeRadius),
            shape.Line(0.66 * shape.Ledge, shape.Well),
            shape.Line(-0.12 * shape.Ledge, shape.Well),
            shape.Line(-0.5 * shape.Ledge, shape.LedgeRadius - 2),
            shape.Line(-shape.Ledge, shape.LedgeRadius),
            shape.Line(-half, shape.Seat),
            shape.Line(-half, foot),
            OutlineStep.Curve(shape.At(-half, flange - (0.4 * shape.Curl)), shape.At(-half - 2, flange), shape.At(-half - 5, flange)),
            shape.Line(-edge, flange));
    }

    private static Outline Inside(RimMeasures shape)
    {
        var (back, lip) = (shape.Half + MetalMm, shape.Flange - FlangeMetalMm);
        var (foot, under) = (shape.Flange - shape.Curl - 3, shape.Seat - MetalMm);
        return new Outline(
            shape.At(-shape.Edge, lip),
            OutlineStep.Curve(shape.At(-shape.Half - 8, lip), shape.At(-back, lip - 2), shape.At(-back, foot)),
            shape.Line(-back, shape.Seat - 1),
            OutlineStep.Curve(shape.At(-back, under), shape.At(-shape.Half, under - 1), shape.At(-shape.Ledge, shape.LedgeRadius - MetalMm)),
            shape.Line(-0.5 * shape.Ledge, shape.LedgeRadius - 2 - MetalMm),
            shape.Line(-0.14 * shape.Ledge, shape.Well - MetalMm),
            shape.Line(0.7 * shape.Ledge, shape.Well - MetalMm),
            shape.Line(shape.Ledge, shape.LedgeRadius - MetalMm),
            OutlineStep.Curve(shape.At(shape.Half, under - 1), shape.At(back, under), shape.At(back, shape.Seat - 1)),
            shape.Line(back, foot),
            OutlineStep.Curve(shape.At(back, lip - 2), shape.At(shape.Half + 8, lip), shape.At(shape.Edge, lip)));
    }

    /// <summary>The measures of a rim, mm: stations from the centre plane, radii from the axis.</summary>
    private readonly struct RimMeasures(in Envelope envelope, double rimWidthMm)
    {
        private readonly double _centreMm = envelope.CentrePlaneMm;

        /// <summary>Half of the width between the flanges.</summary>
        public double Half { get; } = rimWidthMm / 2;

        /// <summary>Half of the width over them.</summary>
        public double Edge { get; } = envelope.OverFlangesMm / 2;

        public double Seat { get; } = envelope.RimSeatRadiusMm;

        public double Flange { get; } = FlangeRadiusMm(envelope);

        public double Well { get; } = WellRadiusMm(envelope);

        /// <summary>How far below its edge the flange begins to curl outward.</summary>
        public double Curl => 0.5 * (Flange - Seat);

        /// <summary>Where the bead seats end, towards the well.</summary>
        public double Ledge => Half - SeatWidth;

        public double LedgeRadius => Seat - (SeatWidth * Math.Tan(double.DegreesToRadians(5)));

        private double SeatWidth => Math.Min(LongestSeatMm, 0.5 * Half);

        public OutlinePoint At(double fromCentreMm, double heightMm) => new(_centreMm + fromCentreMm, heightMm);

        public OutlineStep Line(double fromCentreMm, double heightMm) => OutlineStep.Line(At(fromCentreMm, heightMm));
    }
}
