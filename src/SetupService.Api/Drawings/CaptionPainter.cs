namespace SetupService.Api.Drawings;

/// <summary>Writes the heading, and under the wheel which side is which.</summary>
internal static class CaptionPainter
{
    public static void Paint(SvgWriter svg, CornerView view, DrawingFrame frame)
    {
        var unit = frame.UnitMm;
        var (left, right) = (frame.LeftMm + (DrawingFrame.EdgeUnits * unit), frame.RightMm - (DrawingFrame.EdgeUnits * unit));
        svg.Letters(left, frame.TopMm + (34 * unit), DrawingWords.Heading(view.Car.Position), new Lettering(Lettering.Figure, InkRole.Ink, IsBold: true));
        DirectionArrow.Paint(svg, left, frame.CaptionMm, unit);
        DirectionArrow.Paint(svg, right, frame.CaptionMm, -unit);
        var indent = (DirectionArrow.LengthUnits + 7) * unit;
        svg.Letters(left + indent, frame.CaptionMm, "outboard", new Lettering(Lettering.Small, InkRole.Soft));
        svg.Letters(right - indent, frame.CaptionMm, "inboard", new Lettering(Lettering.Small, InkRole.Soft, Anchor: "end"));
        svg.Letters((left + right) / 2, frame.CaptionMm, "ground", new Lettering(Lettering.Small, InkRole.Soft, Anchor: "middle"));
    }
}
