namespace SetupService.Domain.Fitment.Outlines;

/// <summary>
/// The section of a tyre above the wheel axis. Exact: section width at the widest radius, outer radius, width between the beads
/// and their radius. Everything between is a plausible shape, no maker's mould.
/// </summary>
internal static class TyreSection
{
    private const double WallMm = 8;
    private const double CrownMm = 15;
    private const double BeadMm = 13;

    // Half the tread as a share of half the section; how far its shoulder lies under the crown as a share of section height.
    private const double TreadShare = 0.84;
    private const double CrownDropShare = 0.035;

    /// <summary>The section's material: outside from bead to bead over the tread, and back along the inside.</summary>
    public static Outline Shell(in Envelope envelope, double rimWidthMm)
    {
        var centreMm = envelope.CentrePlaneMm;
        var shape = new SectionMeasures(envelope, rimWidthMm);
        var (outside, inside) = (Outside(shape, centreMm), Inside(shape, centreMm));
        return outside.WithMirrorAcross(centreMm).Then(inside.WithMirrorAcross(centreMm).Reversed());
    }

    /// <summary>The section with the air in it: the outside from bead to bead, closed along the rim.</summary>
    public static Outline Body(in Envelope envelope, double rimWidthMm) =>
        Outside(new SectionMeasures(envelope, rimWidthMm), envelope.CentrePlaneMm).WithMirrorAcross(envelope.CentrePlaneMm);

    /// <summary>The tyre as seen from behind, uncut: sidewall to sidewall from the wheel axis up.</summary>
    public static Outline Silhouette(in Envelope envelope, double rimWidthMm)
    {
        var centreMm = envelope.CentrePlaneMm;
        var shape = new SectionMeasures(envelope, rimWidthMm);
        var half = new Outline(At(centreMm, shape.Widest, 0), [OutlineStep.Line(At(centreMm, shape.Widest, shape.WidestRadius)), .. Shoulder(shape, centreMm)]);
        return half.WithMirrorAcross(centreMm);
    }

    /// <summary>Grooves of the tread, each from its mouth to its ground.</summary>
    public static IReadOnlyList<Outline> Grooves(in Envelope envelope, double rimWidthMm)
    {
        var centreMm = envelope.CentrePlaneMm;
        var shape = new SectionMeasures(envelope, rimWidthMm);
        return [Groove(-0.62), Groove(-0.2), Groove(0.2), Groove(0.62)];

        Outline Groove(double share)
        {
            var stationMm = share * shape.Tread;
            return new(
                At(centreMm, stationMm, shape.Radius - shape.CrownDrop),
                OutlineStep.Line(At(centreMm, stationMm, shape.Radius - shape.CrownDrop - (0.5 * shape.Crown))));
        }
    }

    private static Outline Outside(SectionMeasures shape, double centreMm)
    {
        var gripped = At(centreMm, shape.Bead, shape.Seat + shape.Grip);
        return new Outline(
            At(centreMm, shape.Bead, shape.Seat),
            [
                OutlineStep.Line(gripped),
                OutlineStep.Curve(
                    At(centreMm, shape.Bead + (0.45 * (shape.Widest - shape.Bead)), shape.Seat + shape.Grip + (0.22 * shape.LowerWall)),
                    At(centreMm, shape.Widest, shape.WidestRadius - (0.5 * shape.LowerWall)),
                    At(centreMm, shape.Widest, shape.WidestRadius)),
                .. Shoulder(shape, centreMm),
            ]);
    }

    /// <summary>From the widest place over the shoulder to the middle of the tread.</summary>
    private static OutlineStep[] Shoulder(SectionMeasures shape, double centreMm)
    {
        var shoulderRadius = shape.Radius - shape.CrownDrop;
        return
        [
            OutlineStep.Curve(
                At(centreMm, shape.Widest, shape.WidestRadius + (0.62 * (shoulderRadius - shape.WidestRadius))),
                At(centreMm, shape.Tread + (0.62 * (shape.Widest - shape.Tread)), shoulderRadius),
                At(centreMm, shape.Tread, shoulderRadius)),
            OutlineStep.Curve(
                At(centreMm, 0.75 * shape.Tread, shape.Radius - (0.25 * shape.CrownDrop)),
                At(centreMm, 0.35 * shape.Tread, shape.Radius),
                At(centreMm, 0, shape.Radius)),
        ];
    }

    private static Outline Inside(SectionMeasures shape, double centreMm)
    {
        var under = shape.Radius - shape.Crown;
        var widest = shape.Widest - shape.Wall;
        var toe = shape.Bead - shape.BeadThickness;
        var neck = Math.Min(toe + (0.25 * shape.BeadThickness), widest);
        var tread = Math.Min(shape.Tread, widest);
        return new Outline(
            At(centreMm, toe, shape.Seat),
            OutlineStep.Line(At(centreMm, neck, shape.Seat + shape.Grip)),
            OutlineStep.Curve(
                At(centreMm, neck + (0.4 * (widest - neck)), shape.Seat + shape.Grip + (0.3 * shape.LowerWall)),
                At(centreMm, widest, shape.WidestRadius - (0.5 * shape.LowerWall)),
                At(centreMm, widest, shape.WidestRadius)),
            OutlineStep.Curve(
                At(centreMm, widest, shape.WidestRadius + (0.6 * (under - shape.WidestRadius))),
                At(centreMm, tread + (0.4 * (widest - tread)), under),
                At(centreMm, 0.8 * tread, under)),
            OutlineStep.Line(At(centreMm, 0, under)));
    }

    private static OutlinePoint At(double centreMm, double fromCentreMm, double heightMm) => new(centreMm + fromCentreMm, heightMm);

    /// <summary>The measures of half a section, mm: stations from the centre plane, radii from the axis.</summary>
    private readonly record struct SectionMeasures
    {
        public SectionMeasures(in Envelope envelope, double rimWidthMm)
        {
            var height = envelope.RadiusMm - envelope.RimSeatRadiusMm;
            Seat = envelope.RimSeatRadiusMm;
            Radius = envelope.RadiusMm;
            WidestRadius = envelope.WidestRadiusMm;
            Widest = envelope.TyreWidthMm / 2;
            Bead = rimWidthMm / 2;
            Grip = Math.Min(16, 0.4 * height);
            LowerWall = WidestRadius - Seat - Grip;
            Tread = TreadShare * Widest;
            CrownDrop = CrownDropShare * height;
            Wall = Math.Min(WallMm, 0.12 * Widest);
            Crown = Math.Min(CrownMm, 0.2 * height);
            BeadThickness = Math.Min(BeadMm, 0.3 * Bead);
        }

        public double Seat { get; }

        public double Radius { get; }

        public double WidestRadius { get; }

        public double Widest { get; }

        public double Bead { get; }

        public double Grip { get; }

        public double LowerWall { get; }

        public double Tread { get; }

        public double CrownDrop { get; }

        public double Wall { get; }

        public double Crown { get; }

        public double BeadThickness { get; }
    }
}
