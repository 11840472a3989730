using System.Text;

namespace SetupService.Api.Drawings;

/// <summary>The arrows of a dimension.</summary>
internal static class DimensionLine
{
    private const double HeadUnits = 11;
    private const double TailUnits = 22;

    private static readonly Pen Thin = Pen.Full(InkRole.Ink, 1.1);
    private static readonly Pen Head = Pen.Filled(InkRole.Ink);

    /// <summary>
    /// Two arrow heads on the ends of a span: inside it where it is long enough, from outside where it is not. Answers where the
    /// arrows end, along the span.
    /// </summary>
    /// <param name="svg">Where it is drawn.</param>
    /// <param name="unit">Size of a text unit.</param>
    /// <param name="one">One end, along the span.</param>
    /// <param name="other">The other end.</param>
    /// <param name="place">Makes a point of the picture of a distance along and one across.</param>
    public static (double From, double To) Paint(SvgWriter svg, double unit, double one, double other, Func<double, double, (double X, double Y)> place)
    {
        var (from, to) = (Math.Min(one, other), Math.Max(one, other));
        var (head, tail) = (HeadUnits * unit, TailUnits * unit);
        if (to - from >= 3 * head)
        {
            Stroke(from, to);
            Tip(from, head);
            Tip(to, -head);
            return (from, to);
        }

        Stroke(from - tail, from);
        Stroke(to, to + tail);
        Tip(from, -head);
        Tip(to, head);
        return (from - tail, to + tail);

        void Stroke(double start, double end)
        {
            var (a, b) = (place(start, 0), place(end, 0));
            svg.Line(a.X, a.Y, b.X, b.Y, Thin);
        }

        void Tip(double at, double length) =>
            svg.Path(Polyline.From([place(at, 0), place(at + length, 0.3 * head), place(at + length, -0.3 * head)], closed: true), Head);
    }
}

/// <summary>The small arrow beside a word for a direction.</summary>
internal static class DirectionArrow
{
    /// <summary>How long it is, text units.</summary>
    public const double LengthUnits = 22;

    /// <summary>Draws it level with a line of text; its tail runs to the right, or to the left where <paramref name="unit"/> is negative.</summary>
    public static void Paint(SvgWriter svg, double tip, double baseline, double unit)
    {
        var y = baseline - (6 * Math.Abs(unit));
        svg.Line(tip, y, tip + (LengthUnits * unit), y, Pen.Full(InkRole.Soft, 1.3));
        svg.Line(tip, y, tip + (7 * unit), y - (4 * Math.Abs(unit)), Pen.Full(InkRole.Soft, 1.3));
        svg.Line(tip, y, tip + (7 * unit), y + (4 * Math.Abs(unit)), Pen.Full(InkRole.Soft, 1.3));
    }
}

/// <summary>Path data of straight lines through points of the picture.</summary>
internal static class Polyline
{
    public static string From(IReadOnlyList<(double X, double Y)> points, bool closed = false)
    {
        var data = new StringBuilder(14 * points.Count);
        for (var i = 0; i < points.Count; i++)
        {
            data.Append(i == 0 ? 'M' : 'L').Append(SvgNumber.Write(points[i].X)).Append(' ').Append(SvgNumber.Write(points[i].Y));
        }

        return closed ? data.Append('Z').ToString() : data.ToString();
    }
}
