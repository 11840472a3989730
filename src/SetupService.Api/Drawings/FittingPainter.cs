using SetupService.Domain.Fitment.Outlines;

namespace SetupService.Api.Drawings;

/// <summary>
/// Draws a wheel and tyre. Tyre and rim make one group whose extremes are the envelope's edges; disc and spacer, which at an
/// extreme offset reach past them, make another.
/// </summary>
internal static class FittingPainter
{
    private static readonly double[] NowDashes = [7, 4];

    public static void PaintCandidate(SvgWriter svg, FittingOutlines outlines)
    {
        var rubber = Pen.Full(InkRole.Candidate, 1.8).WithFill(InkRole.Candidate, 0.3);
        var metal = Pen.Full(InkRole.Candidate, 1.3).WithFill(InkRole.Candidate, 0.14);
        svg.OpenGroup("candidate");
        Both(svg, outlines.Silhouette, Pen.Filled(InkRole.Candidate, 0.06));
        Both(svg, outlines.Tyre, rubber);
        foreach (var groove in outlines.Grooves) Both(svg, groove, Pen.Full(InkRole.Candidate, 1.8), closed: false);
        Both(svg, outlines.Rim, metal);
        svg.Close();
        svg.OpenGroup("candidate-centre");
        Both(svg, outlines.Disc, metal);
        if (outlines.Spacer is { } spacer) Both(svg, spacer, metal.WithFill(InkRole.Candidate, 0.6));
        if (outlines.InnerProfile is { } profile) Both(svg, profile, Pen.Dashed(InkRole.Candidate, 2.2, 2, 3), closed: false);
        svg.Close();
    }

    /// <summary>The fitting there is now, as dashes over the candidate; the group is there without it too.</summary>
    public static void PaintPresent(SvgWriter svg, FittingOutlines? outlines)
    {
        svg.OpenGroup("current");
        if (outlines is not null)
        {
            Both(svg, outlines.TyreBody, Pen.Dashed(InkRole.Current, 1.9, NowDashes), closed: false);
            Both(svg, outlines.RimTyreSide, Pen.Dashed(InkRole.Current, 1.1, NowDashes), closed: false);
        }

        svg.Close();
        if (outlines is null) return;
        svg.OpenGroup("current-centre");
        Both(svg, outlines.Disc, Pen.Dashed(InkRole.Current, 1.1, NowDashes));
        if (outlines.Spacer is { } spacer) Both(svg, spacer, Pen.Dashed(InkRole.Current, 1.1, NowDashes));
        svg.Close();
    }

    private static void Both(SvgWriter svg, Outline outline, Pen pen, bool closed = true)
    {
        svg.Path(SvgPath.From(outline, closed), pen);
        svg.Path(SvgPath.From(outline.BelowAxis(), closed), pen);
    }
}

/// <summary>Draws the hub, its face, the wheel axis and the brake caliper where its outline is known.</summary>
internal static class HubPainter
{
    public static void Paint(SvgWriter svg, HubOutlines hub, DrawingFrame frame)
    {
        svg.OpenGroup("hub");
        var metal = Pen.Full(InkRole.Soft, 1.2).WithFill(InkRole.Soft, 0.25);
        svg.Path(SvgPath.From(hub.Flange, closed: true), metal);
        svg.Path(SvgPath.From(hub.Flange.BelowAxis(), closed: true), metal);
        if (hub.Caliper is { } caliper) svg.Path(SvgPath.From(caliper, closed: false), Pen.Dashed(InkRole.Ink, 2.2, 2, 3));
        var radius = hub.FlangeRadiusMm;
        svg.Line(0, -radius - (6 * frame.UnitMm), 0, radius + (6 * frame.UnitMm), Pen.Full(InkRole.Ink, 2.2), "hub-face");
        svg.Line(frame.ContentLeftMm, 0, frame.ContentRightMm, 0, Pen.Dashed(InkRole.Soft, 1, 16, 4, 3, 4), "wheel-axis");
        svg.Close();
    }
}
