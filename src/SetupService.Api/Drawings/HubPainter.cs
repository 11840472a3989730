using SetupService.Domain.Fitment.Outlines;

namespace SetupService.Api.Drawings;

/// <summary>Draws the hub, its face, the wheel axis and the brake caliper where its outline is known.</summary>
internal static class HubPainter
{
    public static void Paint(SvgWriter svg, HubOutlines hub, DrawingFrame frame)
    {
        svg.OpenGroup("hub");
        var metal = Pen.Full(InkRole.Soft, 1.2).WithFill(InkRole.Soft, 0.25);
        svg.Path(SvgPath.Of(hub.Flange, closed: true), metal);
        svg.Path(SvgPath.Of(hub.Flange.BelowAxis(), closed: true), metal);
        if (hub.Caliper is { } caliper) svg.Path(SvgPath.Of(caliper, closed: false), Pen.Dashed(InkRole.Ink, 2.2, 2, 3));
        var radius = hub.FlangeRadiusMm;
        svg.Line(0, -radius - (6 * frame.UnitMm), 0, radius + (6 * frame.UnitMm), Pen.Full(InkRole.Ink, 2.2), "hub-face");
        svg.Line(frame.ContentLeftMm, 0, frame.ContentRightMm, 0, Pen.Dashed(InkRole.Soft, 1, 16, 4, 3, 4), "wheel-axis");
        svg.Close();
    }
}
