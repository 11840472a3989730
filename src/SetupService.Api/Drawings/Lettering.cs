namespace SetupService.Api.Drawings;

/// <summary>How a text is lettered.</summary>
/// <param name="Size">Font size in text units.</param>
/// <param name="Ink">Its colour.</param>
/// <param name="IsBold">Whether it is bold.</param>
/// <param name="Anchor">middle or end; null where the text begins at its point.</param>
/// <param name="HasHalo">Whether a rim of paper keeps it clear of lines behind it.</param>
internal readonly record struct Lettering(double Size, InkRole Ink, bool IsBold = false, string? Anchor = null, bool HasHalo = false)
{
    /// <summary>The smallest size: 12 pixels where the picture is shown 400 pixels wide.</summary>
    public const double Small = 17;

    /// <summary>The size of a dimension's figure.</summary>
    public const double Figure = 21;
}
