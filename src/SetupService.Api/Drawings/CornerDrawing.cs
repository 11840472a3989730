using SetupService.Domain.Answers;
using SetupService.Domain.Fitment;
using SetupService.Domain.Fitment.Outlines;

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
    /// <param name="kind">What the ids in it begin with, where several stand in one page.</param>
    /// <returns>An SVG document without script and without reference to anything outside it.</returns>
    public static string Draw(FitmentContext car, in Fitting candidate, CheckSheet sheet, UnitSystem units, string kind = "drawing")
    {
        ArgumentNullException.ThrowIfNull(car);
        ArgumentNullException.ThrowIfNull(sheet);
        var view = new CornerView(car, candidate, sheet, units);
        var legend = Legend.From(view);
        var frame = DrawingFrame.Around(view, legend.HeightUnits);
        using var svg = new SvgWriter(frame.UnitMm);
        SvgDocument.Open(
            svg, kind, (frame.LeftMm, frame.TopMm, frame.WidthMm, frame.HeightMm), DrawingWords.Title(view), DrawingWords.Description(view));
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

/// <summary>What is to be drawn of a check: both fittings' outlines and the lines the car comes to around them.</summary>
internal sealed class CornerView
{
    public CornerView(FitmentContext car, in Fitting candidate, CheckSheet sheet, UnitSystem units)
    {
        Car = car;
        Candidate = candidate;
        Sheet = sheet;
        Units = units;
        CandidateOutlines = FittingOutlines.Create(candidate);
        PresentOutlines = car.Present is { } present ? FittingOutlines.Create(present) : null;
        Hub = HubOutlines.Create(car.Axle.Hub, candidate);
        var lines = new List<RoomLine>(3);
        for (var place = CheckId.InboardClearance; place <= CheckId.RadialClearance; place++)
        {
            if (RoomLine.Create(car, CandidateOutlines.Envelope, sheet, place) is { } line) lines.Add(line);
        }

        Lines = lines;
    }

    public FitmentContext Car { get; }

    public Fitting Candidate { get; }

    public CheckSheet Sheet { get; }

    public UnitSystem Units { get; }

    public FittingOutlines CandidateOutlines { get; }

    public FittingOutlines? PresentOutlines { get; }

    public HubOutlines Hub { get; }

    /// <summary>The lines of the places whose margin is known, in the order of the checks.</summary>
    public IReadOnlyList<RoomLine> Lines { get; }

    public RoomLine? LineAt(CheckId place)
    {
        foreach (var line in Lines)
        {
            if (line.Place == place) return line;
        }

        return null;
    }
}
