using System.Globalization;
using OxyPlot;

namespace SetupService.Api.Drawings.Charts;

/// <summary>Writes numbers of a chart: in no culture, with a real minus sign, as closely as it makes sense.</summary>
internal static class ChartNumber
{
    private const int MostDecimals = 9;
    private const int MostReadDecimals = 5;
    private const double LargestPlain = 1e6;
    private const double SmallestPlain = 1e-4;
    private const string Short = "0.##e0";

    /// <summary>A tick's number, with the decimals the distance between ticks asks for.</summary>
    public static string AtTick(double value, double step)
    {
        if (value != 0 && Math.Abs(step) < SmallestPlain) return Sign(value.ToString(Short, CultureInfo.InvariantCulture));
        var decimals = 0;
        for (var scaled = Math.Abs(step); decimals < MostDecimals && Math.Abs(scaled - Math.Round(scaled)) > 1e-6 * scaled; scaled *= 10) decimals++;
        return Write(value, decimals);
    }

    /// <summary>A value with its unit: the decimals of the service's sentences, in other units a hundredth of what the curve spans.</summary>
    public static string Read(double value, string unit, double span)
    {
        var decimals = unit switch
        {
            "°" or "in" => 2,
            "mm" or "m" or "%" => 1,
            _ => span > 0 ? Math.Clamp(2 - (int)Math.Floor(Math.Log10(span)), 0, MostReadDecimals) : 2,
        };
        return WithUnit(Write(value, decimals), unit);
    }

    /// <summary>A value with its unit; a degree sign stands close.</summary>
    public static string WithUnit(string number, string unit) => unit switch
    {
        "" => number,
        "°" => number + unit,
        _ => $"{number} {unit}",
    };

    private static string Write(double value, int decimals)
    {
        if (Math.Abs(value) >= LargestPlain) return Sign(value.ToString(Short, CultureInfo.InvariantCulture));
        var rounded = Math.Round(value, decimals, MidpointRounding.AwayFromZero);

        // Minus zero would be written with its sign.
        return Sign((rounded == 0 ? 0 : rounded).ToString("F" + decimals, CultureInfo.InvariantCulture));
    }

    private static string Sign(string number) => number.Replace('-', '−');
}

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
