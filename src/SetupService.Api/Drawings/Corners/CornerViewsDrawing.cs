using SetupService.Domain.Answers;

namespace SetupService.Api.Drawings.Corners;

/// <summary>Draws a corner seen from behind and from its side as SVG. One unit of the picture is one millimetre.</summary>
public static class CornerViewsDrawing
{
    private const double TextUnits = DrawingFrame.WidthUnits - (2 * DrawingFrame.EdgeUnits);

    /// <summary>
    /// Both views one under the other: from behind, so that outboard is on the left; from the left, so that forward is on the left.
    /// The view from behind has x = −y and y = −z of the points; the other stands below it at the same scale.
    /// </summary>
    /// <param name="views">What is to be drawn; all its numbers finite.</param>
    /// <param name="units">Units of the texts; the picture itself is in mm always.</param>
    /// <returns>An SVG document without script and without reference to anything outside it.</returns>
    public static string Draw(CornerViews views, UnitSystem units)
    {
        ArgumentNullException.ThrowIfNull(views);
        var shape = new CornerShape(views);
        var head = new TextBlock(TextUnits);
        head.Add(views.Heading, new Lettering(Lettering.Figure, InkRole.Ink, IsBold: true));
        foreach (var line in views.Lines) head.Add(line, new Lettering(Lettering.Small, InkRole.Soft));
        var key = new CornerKey(shape, units);
        var frame = new CornerFrame(shape, head.HeightUnits, key.HeightUnits);
        using var svg = new SvgWriter(frame.UnitMm);
        SvgDocument.Open(
            svg, "views", (frame.Left, frame.Top, frame.Width, frame.Height), CornerWords.Title(views), CornerWords.Description(shape, units));
        head.Write(svg, frame.UnitMm, frame.Left + (DrawingFrame.EdgeUnits * frame.UnitMm), frame.Top + (DrawingFrame.EdgeUnits * frame.UnitMm));
        ViewPainter.Paint(new ViewCanvas(svg, shape, frame.Front, frame.UnitMm, units), frame);
        ViewPainter.Paint(new ViewCanvas(svg, shape, frame.Side, frame.UnitMm, units), frame);
        key.Paint(svg, frame.UnitMm, frame.Left, frame.KeyTop);
        svg.Close();
        return svg.Finish();
    }
}
