namespace SetupService.Api.Drawings;

/// <summary>What every drawing begins with: its size, its words for who cannot see it, the style sheet and the paper.</summary>
internal static class SvgDocument
{
    /// <summary>Opens the root element; whoever asked closes it.</summary>
    /// <param name="svg">Where it is written.</param>
    /// <param name="kind">What the ids of title and description begin with, so that drawings of several kinds can stand in one page.</param>
    /// <param name="box">Left, top, width and height of the picture.</param>
    /// <param name="title">The picture in a line.</param>
    /// <param name="description">The picture in sentences.</param>
    /// <param name="hasSize">True where a page that does not say how large shows it one pixel a unit; else it fills what room there is.</param>
    public static void Open(
        SvgWriter svg, string kind, (double Left, double Top, double Width, double Height) box, string title, string description, bool hasSize = false)
    {
        var (titleId, descriptionId) = ($"{kind}-title", $"{kind}-description");
        svg.Open(
            "svg",
            ("viewBox", string.Join(' ', ((double[])[box.Left, box.Top, box.Width, box.Height]).Select(SvgNumber.Write))),
            ("class", Palette.RootClass),
            ("role", "img"),
            ("aria-labelledby", $"{titleId} {descriptionId}"),
            ("font-family", "system-ui, sans-serif"),
            ("stroke-linejoin", "round"));
        if (hasSize) svg.Size(box.Width, box.Height);
        svg.Element("title", title, ("id", titleId));
        svg.Element("desc", description, ("id", descriptionId));
        svg.Element("style", Palette.StyleSheet);
        svg.Rectangle(box.Left, box.Top, box.Width, box.Height, Pen.Filled(InkRole.Paper));
    }
}
