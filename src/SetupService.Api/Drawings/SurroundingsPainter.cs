using System.Text;
using SetupService.Domain.Fitment;
using SetupService.Domain.Fitment.Outlines;

namespace SetupService.Api.Drawings;

/// <summary>Draws what stands around the wheel: inboard, arch lip and crown where their gaps are known, and the ground.</summary>
internal static class SurroundingsPainter
{
    private const double HatchUnits = 7;

    private static readonly Pen Wall = Pen.Full(InkRole.Ink, 2.2);
    private static readonly Pen Hatch = Pen.Full(InkRole.Soft, 1);
    private static readonly Pen Measured = Pen.Dashed(InkRole.Soft, 1.2, 4, 3);

    public static void Paint(SvgWriter svg, CornerView view, DrawingFrame frame)
    {
        svg.OpenGroup("surroundings");
        if (view.LineAt(CheckId.InboardClearance) is { } strut) Upright(svg, view, frame, strut, "strut");
        if (view.LineAt(CheckId.OutboardClearance) is { } lip) Upright(svg, view, frame, lip, "arch-lip");
        if (view.LineAt(CheckId.RadialClearance) is { } crown) Crown(svg, view, frame, crown);
        Ground(svg, view, frame);
        svg.Close();
    }

    private static void Upright(SvgWriter svg, CornerView view, DrawingFrame frame, RoomLine line, string id)
    {
        var candidate = view.CandidateOutlines;
        var isInboard = line.Place == CheckId.InboardClearance;
        var bottomHeight = isInboard
            ? 0.22 * candidate.Envelope.RadiusMm
            : candidate.EdgeHeightMm - (0.2 * candidate.Envelope.RadiusMm);
        var (x, bottom, top) = (SvgPath.X(line.PositionMm), SvgPath.Y(bottomHeight), frame.WallTopMm);
        var reach = HatchUnits * frame.UnitMm * (isInboard ? 1 : -1);
        svg.Path(Strokes(bottom, top, HatchUnits * frame.UnitMm, y => (x, y), (reach, -Math.Abs(reach))), Hatch);
        svg.Line(x, bottom, x, top, Wall, id);
        if (line.HasMoved) svg.Line(SvgPath.X(line.MeasuredMm), bottom, SvgPath.X(line.MeasuredMm), top, Measured, $"{id}-measured");
    }

    private static void Crown(SvgWriter svg, CornerView view, DrawingFrame frame, RoomLine line)
    {
        var envelope = view.CandidateOutlines.Envelope;
        var left = SvgPath.X(view.LineAt(CheckId.OutboardClearance)?.PositionMm ?? envelope.OutboardMm);
        var right = SvgPath.X(view.LineAt(CheckId.InboardClearance)?.PositionMm ?? envelope.InboardMm);
        var y = SvgPath.Y(line.PositionMm);
        var reach = HatchUnits * frame.UnitMm;
        svg.Path(Strokes(left, right, reach, x => (x, y), (reach, -reach)), Hatch);
        svg.Line(left, y, right, y, Wall, "arch-crown");
        if (line.HasMoved) svg.Line(left, SvgPath.Y(line.MeasuredMm), right, SvgPath.Y(line.MeasuredMm), Measured, "arch-crown-measured");
    }

    /// <summary>The strokes that show which side of a line is solid, as one path.</summary>
    private static string Strokes(double from, double to, double reachMm, Func<double, (double X, double Y)> place, (double X, double Y) stroke)
    {
        var data = new StringBuilder();
        var (step, count) = (1.3 * reachMm * Math.Sign(to - from), (int)Math.Max(1, (Math.Abs(to - from) - reachMm) / (1.3 * reachMm)));
        for (var i = 0; i < count; i++)
        {
            var (x, y) = place(from + (i * step));
            data.Append('M').Append(SvgNumber.Write(x)).Append(' ').Append(SvgNumber.Write(y))
                .Append('l').Append(SvgNumber.Write(stroke.X)).Append(' ').Append(SvgNumber.Write(stroke.Y));
        }

        return data.ToString();
    }

    private static void Ground(SvgWriter svg, CornerView view, DrawingFrame frame)
    {
        var y = SvgPath.Y(-view.CandidateOutlines.Envelope.RadiusMm);
        var margin = 40 * frame.UnitMm;
        svg.Line(frame.ContentLeftMm - margin, y, frame.ContentRightMm + margin, y, Pen.Full(InkRole.Ink, 1.6), "ground");
    }
}
