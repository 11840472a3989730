using SetupService.Domain.Wheels;

namespace SetupService.Domain.Fitment.Outlines;

/// <summary>
/// The section of the wheel's disc above the axis, and of the spacer behind it. Exact: the mounting face, the spacer's thickness,
/// bore and pad where they are given; the spoke between pad and rim is a plausible shape.
/// </summary>
internal static class DiscSection
{
    private const double UsualPadMm = 14;
    private const double UsualBoltCircleMm = 110;
    private const double BesideHolesMm = 13;

    /// <summary>Radius of the pad that lies on the hub: outside the fasteners, inside the rim.</summary>
    public static double PadRadiusMm(in Envelope envelope, BoltCircle? circle) =>
        Math.Min(((circle?.DiameterMm ?? UsualBoltCircleMm) / 2) + BesideHolesMm, 0.8 * RimSection.WellRadiusMm(envelope));

    /// <summary>Radius of the centre bore, or a usual one where it is not given.</summary>
    public static double BoreRadiusMm(double? boreMm, double padRadiusMm) => Math.Min((boreMm ?? (0.9 * padRadiusMm)) / 2, 0.7 * padRadiusMm);

    /// <summary>The disc, from the mounting face to the rim.</summary>
    public static Outline Disc(in Fitting fitting, in Envelope envelope)
    {
        var wheel = fitting.Wheel;
        var padRadius = PadRadiusMm(envelope, wheel.BoltCircle);
        var bore = BoreRadiusMm(wheel.CentreBoreMm, padRadius);
        var (inner, outer) = (wheel.SpacerMm, wheel.SpacerMm + (wheel.PadThicknessMm ?? UsualPadMm));
        var (outboard, inboard) = RimSection.DiscJoint(envelope, wheel.RimWidthMm);
        var rise = inboard.HeightMm - padRadius;
        return new Outline(
            new(inner, bore),
            OutlineStep.Line(new(inner, padRadius)),
            OutlineStep.Curve(new(inner, padRadius + (0.35 * rise)), new(inboard.StationMm, padRadius + (0.35 * rise)), inboard),
            OutlineStep.Line(outboard),
            OutlineStep.Curve(new(outboard.StationMm, padRadius + (0.3 * rise)), new(outer, padRadius + (0.2 * rise)), new(outer, 0.85 * padRadius)),
            OutlineStep.Line(new(outer, bore)));
    }

    /// <summary>The spacer between hub and wheel; null without one.</summary>
    public static Outline? Spacer(in Fitting fitting, in Envelope envelope)
    {
        var thickness = fitting.Wheel.SpacerMm;
        if (!(thickness > 0)) return null;
        var padRadius = PadRadiusMm(envelope, fitting.Wheel.BoltCircle);
        var bore = BoreRadiusMm(fitting.Wheel.CentreBoreMm, padRadius);
        return new Outline(
            new(0, bore),
            OutlineStep.Line(new(0, padRadius)),
            OutlineStep.Line(new(thickness, padRadius)),
            OutlineStep.Line(new(thickness, bore)));
    }
}
