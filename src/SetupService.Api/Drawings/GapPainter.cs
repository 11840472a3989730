using SetupService.Domain.Fitment;
using SetupService.Domain.Fitment.Outlines;

namespace SetupService.Api.Drawings;

/// <summary>Dimensions the gaps: arrows between the candidate's edge and the line there, figure and word beside them.</summary>
internal static class GapPainter
{
    private const int PiecesPerCurve = 24;

    private static readonly Pen Thin = Pen.Full(InkRole.Ink, 1.1);

    public static void Paint(SvgWriter svg, CornerView view, DrawingFrame frame)
    {
        svg.OpenGroup("gaps");
        foreach (var line in view.Lines)
        {
            ref readonly var result = ref view.Sheet[line.Place];
            if (line.Place == CheckId.RadialClearance) Radial(svg, view, frame, line, GapLabel.Wide(line, result, view.Units));
            else Sideways(svg, view, frame, line, GapLabel.Of(line, result, view.Units));
        }

        svg.Close();
    }

    /// <summary>Fills what of the candidate lies beyond the lines.</summary>
    public static void PaintOverlaps(SvgWriter svg, CornerView view)
    {
        svg.OpenGroup("overlaps");
        foreach (var line in view.Lines) Overlap(svg, view, line);
        svg.Close();
    }

    /// <summary>What of the candidate lies beyond the line, above the axis where the line is.</summary>
    private static void Overlap(SvgWriter svg, CornerView view, RoomLine line)
    {
        if (!(line.NominalMm < 0)) return;
        foreach (var outline in (ReadOnlySpan<Outline>)[view.CandidateOutlines.TyreBody, view.CandidateOutlines.Rim])
        {
            var polygon = line.Beyond(outline, PiecesPerCurve);
            if (polygon.Count > 2) svg.Path(SvgPath.OfPolygon(polygon), Pen.Full(InkRole.Fail, 1).WithFill(InkRole.Fail, 0.55));
        }
    }

    private static void Sideways(SvgWriter svg, CornerView view, DrawingFrame frame, RoomLine line, GapLabel label)
    {
        var isInboard = line.Place == CheckId.InboardClearance;
        var away = isInboard ? 1 : -1;
        var y = SvgPath.Y(view.CandidateOutlines.EdgeHeightMm);
        var (edge, wall) = (SvgPath.X(line.EdgeMm), SvgPath.X(line.PositionMm));
        var tick = 9 * frame.UnitMm;
        if (Math.Abs(edge - wall) > tick / 2) svg.Line(edge, y - tick, edge, y + tick, Thin);
        var (_, outer) = DimensionLine.Paint(svg, frame.UnitMm, edge * away, wall * away, (along, across) => (along * away, y + across));
        var column = isInboard ? frame.ContentRightMm : frame.ContentLeftMm;
        svg.Line(outer * away, y, column + ((DrawingFrame.ColumnIndentUnits - 6) * frame.UnitMm * away), y, Thin);
        var x = column + (DrawingFrame.ColumnIndentUnits * frame.UnitMm * away);
        label.Write(svg, frame.UnitMm, x, y - (label.HeightUnits / 2 * frame.UnitMm), isInboard ? null : "end");
    }

    private static void Radial(SvgWriter svg, CornerView view, DrawingFrame frame, RoomLine line, GapLabel label)
    {
        var x = SvgPath.X(view.CandidateOutlines.Envelope.CentrePlaneMm);
        var (edge, wall) = (line.EdgeMm, line.PositionMm);
        var (_, outer) = DimensionLine.Paint(svg, frame.UnitMm, edge, wall, (along, across) => (x + across, -along));
        var labelBottom = frame.WallTopMm - (26 * frame.UnitMm);
        svg.Line(x, -outer, x, labelBottom, Thin);

        // The label stays over the section, clear of the columns on either side.
        var half = label.WidthUnits / 2 * frame.UnitMm;
        var middle = Math.Clamp(x, Math.Min(frame.ContentLeftMm + half, x), Math.Max(frame.ContentRightMm - half, Math.Min(frame.ContentLeftMm + half, x)));
        label.Write(svg, frame.UnitMm, middle, labelBottom - ((label.HeightUnits + 4) * frame.UnitMm), "middle");
    }
}
