using OxyPlot;

namespace SetupService.Api.Drawings.Charts;

/// <summary>Draws nothing and keeps how wide the widest number beside an upright axis is, so that all panels can begin below each other.</summary>
internal sealed class LabelMeter : RenderContextBase
{
    private int _clips;

    /// <summary>The widest so far, text units.</summary>
    public double WidestUnits { get; private set; }

    /// <inheritdoc />
    public override int ClipCount => _clips;

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
        if (horizontalAlignment != HorizontalAlignment.Right) return;
        WidestUnits = Math.Max(WidestUnits, MeasureText(text, fontFamily, fontSize, fontWeight).Width);
    }

    /// <inheritdoc />
    public override OxySize MeasureText(string text, string fontFamily, double fontSize, double fontWeight) =>
        string.IsNullOrEmpty(text) ? OxySize.Empty : new(TextWidth.Em(text, isBold: false) * fontSize, fontSize);

    /// <inheritdoc />
    public override void DrawLine(
        IList<ScreenPoint> points, OxyColor stroke, double thickness, EdgeRenderingMode edgeRenderingMode, double[] dashArray, LineJoin lineJoin)
    {
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
    }

    /// <inheritdoc />
    public override void PushClip(OxyRect clippingRectangle) => _clips++;

    /// <inheritdoc />
    public override void PopClip() => _clips--;
}
