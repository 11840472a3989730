namespace SetupService.Domain.Wheels;

/// <summary>
/// The flanges of 5° drop-centre rims. Source: JIS D 4218:2021, Table 3, which is based on ISO 4000-2:2013. The table gives B
/// for rim diameters 10, 12 and 13, J from 14 up and K for 16.
/// </summary>
public static class RimFlangeTable
{
    /// <summary>Contour J, that of nearly all present car wheels.</summary>
    public static RimFlange J { get; } = new("J", 11.0, 17.5, 1.0, 9.5);

    /// <summary>Every contour of the table.</summary>
    public static IReadOnlyList<RimFlange> All { get; } =
    [
        new("B", 10.0, 14.5, 1.0, 7.5),
        J,
        new("K", 11.5, 20.0, 1.0, 10.5),
    ];

    /// <summary>The flange of a contour letter in either case; null where the table has none.</summary>
    public static RimFlange? Find(string contour)
    {
        foreach (var flange in All)
        {
            if (flange.Contour.Equals(contour, StringComparison.OrdinalIgnoreCase))
            {
                return flange;
            }
        }

        return null;
    }
}

/// <summary>The edge of a rim that holds the bead from outside, in mm.</summary>
/// <param name="Contour">The contour letter, stamped beside the rim width.</param>
/// <param name="MinimumWidthMm">The least width of the flange, from the bead's face to its outer edge.</param>
/// <param name="HeightMm">Height of the flange above the bead seat's diameter.</param>
/// <param name="HeightToleranceMm">How far the height may lie to either side.</param>
/// <param name="MinimumRadiusMm">The least radius of the flange's curve.</param>
public sealed record RimFlange(
    string Contour, double MinimumWidthMm, double HeightMm, double HeightToleranceMm, double MinimumRadiusMm);
