namespace SetupService.Domain.Wheels;

/// <summary>The edge of a rim that holds the bead from outside, in mm.</summary>
/// <param name="Contour">The contour letter, stamped beside the rim width.</param>
/// <param name="MinimumWidthMm">The least width of the flange, from the bead's face to its outer edge.</param>
/// <param name="HeightMm">Height of the flange above the bead seat's diameter.</param>
/// <param name="HeightToleranceMm">How far the height may lie to either side.</param>
/// <param name="MinimumRadiusMm">The least radius of the flange's curve.</param>
public sealed record RimFlange(
    string Contour, double MinimumWidthMm, double HeightMm, double HeightToleranceMm, double MinimumRadiusMm);
