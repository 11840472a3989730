using SetupService.Domain.Answers;
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
            else Sideways(svg, view, frame, line, GapLabel.From(line, result, view.Units));
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
            if (polygon.Count > 2) svg.Path(SvgPath.FromPolygon(polygon), Pen.Full(InkRole.Fail, 1).WithFill(InkRole.Fail, 0.55));
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

/// <summary>The lines of text beside a dimension.</summary>
internal sealed class GapLabel
{
    private const double LineSpacing = 1.2;

    private readonly (string Text, Lettering Lettering)[] _lines;

    private GapLabel(params (string Text, Lettering Lettering)[] lines) => _lines = lines;

    public double HeightUnits => _lines.Sum(line => line.Lettering.Size * LineSpacing);

    public double WidthUnits => _lines.Max(line => line.Lettering.Size * TextWidth.Em(line.Text, line.Lettering.IsBold));

    public static GapLabel From(RoomLine line, in CheckResult result, UnitSystem units)
    {
        var ink = DrawingWords.StatusInk(result.Status);
        var name = (DrawingWords.Place(line.Place), new Lettering(Lettering.Small, InkRole.Ink, HasHalo: true));
        var word = new Lettering(Lettering.Small, ink, IsBold: true, HasHalo: true);
        var size = DrawingWords.Length(Math.Abs(line.NominalMm), units);
        var figureSize = Math.Min(Lettering.Figure, DrawingFrame.ColumnTextUnits / TextWidth.Em(size, isBold: true));
        if (line.NominalMm < 0)
        {
            return new(name, ("touches,", word), (size, word with { Size = figureSize }), ("too much", word));
        }

        var figure = (size, new Lettering(figureSize, InkRole.Ink, IsBold: true, HasHalo: true));
        return result.Status == CheckStatus.Fail
            ? new(name, figure, ("probably", word), ("touches", word))
            : new(name, figure, (DrawingWords.Status(result), word));
    }

    /// <summary>The same in two lines, for the place over the tread, where there is more width than height.</summary>
    public static GapLabel Wide(RoomLine line, in CheckResult result, UnitSystem units)
    {
        var size = DrawingWords.Length(Math.Abs(line.NominalMm), units);
        var status = DrawingWords.Status(result);
        var ink = DrawingWords.StatusInk(result.Status);
        return new(
            (DrawingWords.Place(line.Place), new Lettering(Lettering.Small, InkRole.Ink, HasHalo: true)),
            line.NominalMm < 0
                ? ($"touches, {size} too much", new Lettering(Lettering.Small, ink, IsBold: true, HasHalo: true))
                : ($"{size}, {status}", new Lettering(Lettering.Figure - 1, ink, IsBold: true, HasHalo: true)));
    }

    /// <summary>Writes the lines downwards from <paramref name="topMm"/>.</summary>
    public void Write(SvgWriter svg, double unitMm, double x, double topMm, string? anchor)
    {
        var y = topMm;
        foreach (var (text, lettering) in _lines)
        {
            y += lettering.Size * LineSpacing * unitMm;
            svg.Letters(x, y - (0.28 * lettering.Size * unitMm), text, lettering with { Anchor = anchor });
        }
    }
}

/// <summary>One row of the schedule of gaps.</summary>
/// <param name="Place">Where.</param>
/// <param name="Nominal">Nominal margin, with its unit.</param>
/// <param name="WorstCase">Worst-case margin, with its unit.</param>
/// <param name="Status">The word for it.</param>
/// <param name="Ink">The word's colour.</param>
internal sealed record GapRow(string Place, string Nominal, string WorstCase, string Status, InkRole Ink)
{
    /// <summary>A row for every gap whose margin is known, also for those that have no direction to be drawn in.</summary>
    public static IReadOnlyList<GapRow> All(CornerView view)
    {
        var rows = new List<GapRow>(CheckIdSet.ClearanceCount);
        for (var place = CheckId.InboardClearance; place <= CheckId.SpringSeatClearance; place++)
        {
            ref readonly var result = ref view.Sheet[place];
            if (!view.Sheet.Applicable.Contains(place) || result.Margin is not { } margin) continue;
            rows.Add(new(
                DrawingWords.Place(place),
                DrawingWords.Length(margin.NominalMm, view.Units),
                DrawingWords.Length(margin.WorstCaseMm, view.Units),
                DrawingWords.Status(result),
                DrawingWords.StatusInk(result.Status)));
        }

        return rows;
    }
}
