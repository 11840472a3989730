namespace SetupService.Api.Drawings.Corners;

/// <summary>Draws one view.</summary>
internal static class ViewPainter
{
    private static readonly Lettering Heading = new(Lettering.Small, InkRole.Ink, IsBold: true);
    private static readonly Lettering Caption = new(Lettering.Small, InkRole.Soft);

    public static void Paint(ViewCanvas canvas, CornerFrame frame)
    {
        var (svg, unit, place) = (canvas.Svg, canvas.Unit, canvas.Place);
        svg.OpenGroup(canvas.IsFront ? "front" : "side");
        svg.Letters(frame.Left + (DrawingFrame.EdgeUnits * unit), place.HeadingY, canvas.IsFront ? "seen from behind" : "seen from the left", Heading);
        canvas.Line((place.Region.Left, place.GroundY), (place.Region.Right, place.GroundY), Pen.Full(InkRole.Ink, 1.6));
        WheelPainter.Paint(canvas);
        LinkPainter.Paint(canvas);
        AxisPainter.Paint(canvas);
        InstantCentrePainter.Keep(canvas);
        if (canvas.IsFront) RollCentrePainter.Paint(canvas);
        LinkPainter.PaintNumbers(canvas);
        InstantCentrePainter.Paint(canvas);
        Captions(canvas, frame);
        svg.Close();
    }

    private static void Captions(ViewCanvas canvas, CornerFrame frame)
    {
        var (svg, unit, y) = (canvas.Svg, canvas.Unit, canvas.Place.CaptionY);
        var (left, right) = (frame.Left + (DrawingFrame.EdgeUnits * unit), frame.Left + frame.Width - (DrawingFrame.EdgeUnits * unit));
        var indent = (DirectionArrow.LengthUnits + 7) * unit;
        DirectionArrow.Paint(svg, left, y, unit);
        svg.Letters(left + indent, y, canvas.IsFront ? "outboard" : "forward", Caption);
        if (canvas.IsFront)
        {
            svg.Letters(canvas.Place.Projection.Of(new ViewPoint(0, 0)).X, y, "centre plane", Caption with { Anchor = "middle" });
            return;
        }

        DirectionArrow.Paint(svg, right, y, -unit);
        svg.Letters(right - indent, y, "rearward", Caption with { Anchor = "end" });
    }
}
