using OxyPlot;

namespace SetupService.Api.Drawings.Charts;

/// <summary>Draws nothing and keeps how wide the widest numbers beside and below a plot are.</summary>
internal sealed class LabelMeter : RenderContextBase
{
    private int _clips;

    /// <summary>The widest number beside an upright axis so far, text units.</summary>
    public double WidestBesideUnits { get; private set; }

    /// <summary>The widest number below a plot so far, text units.</summary>
    public double WidestBelowUnits { get; private set; }

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
        var width = MeasureText(text, fontFamily, fontSize, fontWeight).Width;
        if (horizontalAlignment == HorizontalAlignment.Right) WidestBesideUnits = Math.Max(WidestBesideUnits, width);
        else WidestBelowUnits = Math.Max(WidestBelowUnits, width);
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
