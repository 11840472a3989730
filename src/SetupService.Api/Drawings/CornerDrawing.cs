using SetupService.Domain.Answers;
using SetupService.Domain.Fitment;

namespace SetupService.Api.Drawings;

/// <summary>
/// Draws the corner of a car as SVG: the left wheel in section, seen from behind, so that outboard is on the left. One unit of
/// the picture is one millimetre. What in it is exact and what is only indicative stands in docs/methods/fitment-drawing.md.
/// </summary>
public static class CornerDrawing
{
    /// <summary>
    /// The picture of a check: candidate and present fitting over each other, hub, what stands around them, and the nominal
    /// margins dimensioned in the caller's units. Gaps that are not known are named in a note and not drawn.
    /// </summary>
    /// <param name="car">The axle the check was made for.</param>
    /// <param name="candidate">The wheel and tyre it was made with.</param>
    /// <param name="sheet">Its results.</param>
    /// <param name="units">Units of the texts; the picture itself is in mm always.</param>
    /// <returns>An SVG document without script and without reference to anything outside it.</returns>
    public static string Draw(AxleUnderCheck car, in Fitting candidate, CheckSheet sheet, UnitSystem units)
    {
        ArgumentNullException.ThrowIfNull(car);
        ArgumentNullException.ThrowIfNull(sheet);
        var view = new CornerView(car, candidate, sheet, units);
        var legend = Legend.Of(view);
        var frame = DrawingFrame.Around(view, legend.HeightUnits);
        using var svg = new SvgWriter(frame.UnitMm);
        SvgDocument.Open(
            svg, "drawing", (frame.LeftMm, frame.TopMm, frame.WidthMm, frame.HeightMm), DrawingWords.Title(view), DrawingWords.Description(view));
        FittingPainter.PaintCandidate(svg, view.CandidateOutlines);
        HubPainter.Paint(svg, view.Hub, frame);
        FittingPainter.PaintPresent(svg, view.PresentOutlines);
        GapPainter.PaintOverlaps(svg, view);
        SurroundingsPainter.Paint(svg, view, frame);
        GapPainter.Paint(svg, view, frame);
        CaptionPainter.Paint(svg, view, frame);
        LegendPainter.Paint(svg, legend, frame);
        svg.Close();
        return svg.Finish();
    }
}
