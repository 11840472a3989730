using OxyPlot;

namespace SetupService.Api.Drawings.Charts;

/// <summary>Draws what the plotting library lays out with this service's own pens, letters and inks.</summary>
internal sealed class SvgRenderContext(SvgWriter svg) : RenderContextBase
{
    private const double BoldFrom = 600;

    private int _clips;

    /// <inheritdoc />
    public override int ClipCount => _clips;

    /// <inheritdoc />
    public override void DrawLine(
        IList<ScreenPoint> points, OxyColor stroke, double thickness, EdgeRenderingMode edgeRenderingMode, double[] dashArray, LineJoin lineJoin)
    {
        if (points.Count < 2 || !stroke.IsVisible()) return;
        svg.Path(Polyline.From([.. points.Select(point => (point.X, point.Y))]), Line(stroke, thickness, dashArray));
    }

    /// <inheritdoc />
    public override void DrawPolygon(
        IList<ScreenPoint> points,
        OxyColor fill,
        OxyColor stroke,
        double thickness,
        EdgeRenderingMode edgeRenderingMode,
        double[] dashArray,
        LineJoin lineJoin)
    {
        var pen = Shape(fill, stroke, thickness, dashArray);
        if (pen is { Line: null, Fill: null }) return;
        svg.Path(Polyline.From([.. points.Select(point => (point.X, point.Y))], closed: true), pen);
    }

    /// <inheritdoc />
    public override void DrawEllipse(OxyRect rect, OxyColor fill, OxyColor stroke, double thickness, EdgeRenderingMode edgeRenderingMode) =>
        svg.Circle(rect.Center.X, rect.Center.Y, rect.Width / 2, Shape(fill, stroke, thickness, []));

    /// <inheritdoc />
    public override void DrawText(
        ScreenPoint p,
        string text,
        OxyColor fill,
        string fontFamily,
        double fontSize,
        double fontWeight,
        double rotation,
        HorizontalAlignment horizontalAlignment,
        VerticalAlignment verticalAlignment,
        OxySize? maxSize)
    {
        if (string.IsNullOrEmpty(text)) return;
        var anchor = horizontalAlignment switch { HorizontalAlignment.Center => "middle", HorizontalAlignment.Right => "end", _ => null };
        var drop = verticalAlignment switch { VerticalAlignment.Top => 0.76, VerticalAlignment.Middle => 0.34, _ => -0.2 };
        svg.Letters(p.X, p.Y + (drop * fontSize), text, new Lettering(fontSize, RoleColour.Role(fill), fontWeight >= BoldFrom, anchor));
    }

    /// <inheritdoc />
    public override OxySize MeasureText(string text, string fontFamily, double fontSize, double fontWeight) =>
        string.IsNullOrEmpty(text) ? OxySize.Empty : new(TextWidth.Em(text, fontWeight >= BoldFrom) * fontSize, fontSize);

    // Nothing is clipped: the axes hold all there is to draw.

    /// <inheritdoc />
    public override void PushClip(OxyRect clippingRectangle) => _clips++;

    /// <inheritdoc />
    public override void PopClip() => _clips--;

    private static Pen Line(OxyColor stroke, double thickness, double[]? dashes) =>
        new(RoleColour.Role(stroke), thickness, dashes ?? [], LineOpacity: RoleColour.Opacity(stroke));

    private static Pen Shape(OxyColor fill, OxyColor stroke, double thickness, double[]? dashes)
    {
        var hasLine = stroke.IsVisible() && thickness > 0;
        var line = hasLine ? Line(stroke, thickness, dashes) : new Pen(null, 0, []);
        return fill.IsVisible() ? line.WithFill(RoleColour.Role(fill), RoleColour.Opacity(fill)) : line;
    }
}
