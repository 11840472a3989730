namespace SetupService.Domain.Tyres;

/// <summary>
/// Permitted rim widths: a short list of common sizes and, for every other size, the pattern that reproduces most such lists.
/// Both are from memory.
/// </summary>
public static class PermittedRimWidthTable
{
    /// <summary>What <see cref="PermittedRimWidth.Source"/> says for a size in the list.</summary>
    public const string ListedSource = "listed, from memory";

    /// <summary>What <see cref="PermittedRimWidth.Source"/> says for any other size.</summary>
    public const string PatternSource = "pattern, from memory: measuring rim −0.5 to +1.0 in";

    private static readonly (double WidthMm, double AspectPct, double RimIn, double MinimumIn, double MaximumIn)[] Listed =
    [
        (175, 65, 14, 5.0, 6.0),
        (195, 65, 15, 5.5, 7.0),
        (205, 55, 16, 5.5, 7.5),
        (225, 45, 17, 7.0, 8.5),
        (225, 40, 18, 7.5, 9.0),
        (245, 40, 18, 8.0, 9.5),
        (255, 35, 19, 8.5, 10.0),
    ];

    /// <summary>
    /// The rim widths a size may be fitted to. <paramref name="aspectRatioPct"/> is null for a high-flotation size, which is
    /// never in the list.
    /// </summary>
    public static PermittedRimWidth For(
        double nominalSectionWidthMm, double? aspectRatioPct, double rimDiameterIn, double measuringRimWidthIn)
    {
        foreach (var row in Listed)
        {
            // Sizes are whole numbers read from text, so equality is exact.
            if (row.WidthMm == nominalSectionWidthMm && row.AspectPct == aspectRatioPct && row.RimIn == rimDiameterIn)
            {
                return new PermittedRimWidth(row.MinimumIn, row.MaximumIn, IsListed: true, ListedSource);
            }
        }

        return new PermittedRimWidth(measuringRimWidthIn - 0.5, measuringRimWidthIn + 1.0, IsListed: false, PatternSource);
    }
}

/// <summary>
/// The narrowest and the widest rim a tyre may be fitted to, as rim width codes in inches. No published list could be read, so
/// both kinds of answer are from memory and say so; the tyre maker's own list decides.
/// </summary>
/// <param name="MinimumIn">The narrowest rim width, inches.</param>
/// <param name="MaximumIn">The widest rim width, inches.</param>
/// <param name="IsListed">True where the size itself is in the table, false where the common pattern was applied.</param>
/// <param name="Source">Where the two figures come from, for a person.</param>
public readonly record struct PermittedRimWidth(double MinimumIn, double MaximumIn, bool IsListed, string Source)
{
    /// <summary>True when a rim of this width lies within the two limits, both included.</summary>
    public bool Includes(double rimWidthIn) => rimWidthIn >= MinimumIn && rimWidthIn <= MaximumIn;
}
