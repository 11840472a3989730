namespace SetupService.Api.Drawings.Corners;

/// <summary>The samples of the key: every kind of line and sign that the views hold.</summary>
internal static class CornerSamples
{
    public static IEnumerable<(string Name, LegendSample Sample)> Of(CornerShape shape)
    {
        var views = shape.Views;
        foreach (var part in views.Links.Select(link => link.Part).Distinct().Order()) yield return (CornerPens.Name(part), Line(CornerPens.Of(part)));
        if (shape.AxisAtGround is not null) yield return ("steering axis", Line(CornerPens.SteeringAxis));
        if (views.FrontInstantCentre is not null || views.SideInstantCentre is not null) yield return ("to the instant centre", Line(CornerPens.InstantCentre));
        if (views.Points.Any(point => point.IsOnBody)) yield return ("fixed to the body", Mark((svg, unit, at) => CornerMarks.Point(svg, unit, at, isOnBody: true)));
        if (views.Points.Any(point => !point.IsOnBody)) yield return ("moves with the wheel", Mark((svg, unit, at) => CornerMarks.Point(svg, unit, at, isOnBody: false)));
        yield return ("wheel centre", Mark(CornerMarks.Cross));
    }

    private static LegendSample Line(Pen pen) => (svg, unit, x, y) => svg.Line(x, y, x + (FlowLegend.SampleUnits * unit), y, pen);

    private static LegendSample Mark(Action<SvgWriter, double, (double X, double Y)> paint) =>
        (svg, unit, x, y) => paint(svg, unit, (x + (FlowLegend.SampleUnits / 2 * unit), y));
}
