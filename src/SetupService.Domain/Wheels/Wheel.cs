namespace SetupService.Domain.Wheels;

/// <summary>
/// A wheel on the car. Offset is positive where the mounting face lies outboard of the rim's centre plane ("inset" in
/// ISO 3911). Unknown figures are null.
/// </summary>
public sealed record Wheel
{
    /// <summary>Rim diameter code, inches.</summary>
    public required double RimDiameterIn { get; init; }

    /// <summary>Rim width code, inches, between the inner faces of the flanges.</summary>
    public required double RimWidthIn { get; init; }

    /// <summary>Offset in mm, positive = mounting face outboard of the centre plane.</summary>
    public required double OffsetMm { get; init; }

    /// <summary>Thickness in mm of a spacer between hub and wheel; 0 without one.</summary>
    public double SpacerMm { get; init; }

    /// <summary>Diameter in mm of the hole with which the spacer sits on the hub.</summary>
    public double? SpacerPilotBoreMm { get; init; }

    /// <summary>Diameter in mm of the spacer's own spigot, on which the wheel sits.</summary>
    public double? SpacerPilotDiameterMm { get; init; }

    /// <summary>True when the wheel is fastened to the spacer, and the spacer to the hub by fasteners of its own; null where not stated.</summary>
    public bool? SpacerHasOwnFasteners { get; init; }

    /// <summary>Mass of the wheel alone, in kg.</summary>
    public double? MassKg { get; init; }

    /// <summary>The holes' circle.</summary>
    public BoltCircle? BoltCircle { get; init; }

    /// <summary>Diameter of the centre bore, in mm.</summary>
    public double? CentreBoreMm { get; init; }

    /// <summary>The load the wheel is rated for, in kg.</summary>
    public double? LoadRatingKg { get; init; }

    /// <summary>The seat its fasteners bed on.</summary>
    public FastenerSeat? FastenerSeat { get; init; }

    /// <summary>Thickness in mm of the pad between the mounting face and the fastener's seat.</summary>
    public double? PadThicknessMm { get; init; }

    /// <summary>The inside of the wheel, stations from its mounting face; empty where not known.</summary>
    public IReadOnlyList<ProfilePoint> InnerProfile { get; init; } = [];

    /// <summary>True when the inside lies within the rim: no radius beyond the bead seat's own.</summary>
    public static bool IsInside(double rimDiameterIn, double radiusMm) => radiusMm <= rimDiameterIn * 25.4 / 2;

    /// <summary>Rim width in mm between the flanges.</summary>
    public double RimWidthMm => RimWidth.Mm(RimWidthIn);

    /// <summary>The flange of the contour stamped in the wheel's marking; null where that is not known.</summary>
    public RimFlange? StampedFlange { get; init; }

    /// <summary>
    /// The wheel from flange edge to flange edge in mm: rim width plus two flanges of the stamped contour, else of J, 11.0 mm each at least (J is
    /// common practice, no source for the choice); the width is from JIS D 4218:2021, Table 3.
    /// </summary>
    public double OverFlangesMm => RimWidth.OverFlangesMm(RimWidthIn, StampedFlange ?? RimFlangeTable.J);

    /// <summary>Mounting face to the inboard flange edge in mm, without any spacer.</summary>
    public double BackspacingMm => RimWidth.BackspacingMm(OverFlangesMm, OffsetMm);

    /// <summary>
    /// Distance of the rim's centre plane from the hub's face in mm, positive outboard: spacer less offset. Offset 45 without
    /// a spacer gives −45.
    /// </summary>
    public double CentrePlaneMm => SpacerMm - OffsetMm;
}

/// <summary>One point of a profile turned about the spin axis, such as the inside of a wheel or the outside of a caliper.</summary>
/// <param name="StationMm">
/// Distance along the spin axis in mm from the face the profile is measured from (the wheel's mounting face, the hub's face);
/// positive outboard.
/// </param>
/// <param name="RadiusMm">Distance from the spin axis in mm.</param>
public readonly record struct ProfilePoint(double StationMm, double RadiusMm);

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
