namespace SetupService.Api.Drawings;

/// <summary>Writes the heading, and under the wheel which side is which.</summary>
internal static class CaptionPainter
{
    private const double ArrowUnits = 22;

    public static void Paint(SvgWriter svg, CornerView view, DrawingFrame frame)
    {
        var unit = frame.UnitMm;
        var (left, right) = (frame.LeftMm + (DrawingFrame.EdgeUnits * unit), frame.RightMm - (DrawingFrame.EdgeUnits * unit));
        svg.Letters(left, frame.TopMm + (34 * unit), DrawingWords.Heading(view.Car.Position), new Lettering(Lettering.Figure, InkRole.Ink, IsBold: true));
        Arrow(svg, left, frame.CaptionMm, unit);
        Arrow(svg, right, frame.CaptionMm, -unit);
        var indent = (ArrowUnits + 7) * unit;
        svg.Letters(left + indent, frame.CaptionMm, "outboard", new Lettering(Lettering.Small, InkRole.Soft));
        svg.Letters(right - indent, frame.CaptionMm, "inboard", new Lettering(Lettering.Small, InkRole.Soft, Anchor: "end"));
        svg.Letters((left + right) / 2, frame.CaptionMm, "ground", new Lettering(Lettering.Small, InkRole.Soft, Anchor: "middle"));
    }

    private static void Arrow(SvgWriter svg, double tip, double baseline, double unit)
    {
        var y = baseline - (6 * Math.Abs(unit));
        svg.Line(tip, y, tip + (ArrowUnits * unit), y, Pen.Full(InkRole.Soft, 1.3));
        svg.Line(tip, y, tip + (7 * unit), y - (4 * Math.Abs(unit)), Pen.Full(InkRole.Soft, 1.3));
        svg.Line(tip, y, tip + (7 * unit), y + (4 * Math.Abs(unit)), Pen.Full(InkRole.Soft, 1.3));
    }
}
