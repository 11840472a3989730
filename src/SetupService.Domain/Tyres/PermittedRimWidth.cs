namespace SetupService.Domain.Tyres;

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
    /// <summary>Whether a rim of this width lies within the two limits, both included.</summary>
    public bool Includes(double rimWidthIn) => rimWidthIn >= MinimumIn && rimWidthIn <= MaximumIn;
}
