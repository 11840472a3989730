using SetupService.Domain.Numerics;
using SetupService.Domain.Suspension.Steering;

namespace SetupService.Api.Drawings.Corners;

/// <summary>What follows from a corner's points: contact, the wheel's outline in space, where the steering axis ends.</summary>
internal sealed class CornerShape
{
    private const int CircleSteps = 72;

    // Where no width is given: a plausible one for the radius.
    private const double IndicativeWidthShare = 0.66;

    // A joint this near to the steering axis lies on it, mm.
    private const double OnAxisMm = 2;

    // How far the axis is drawn beyond its upper joint, as a share of the loaded radius.
    private const double BeyondJoint = 0.12;

    // An axis that lies nearly level meets the ground nowhere near the car.
    private const double FarthestAxisMm = 1e6;

    public CornerShape(CornerViews views)
    {
        Views = views;
        Contact = views.Wheel.Contact(views.LoadedRadiusMm);
        if (views.Axis is not { } axis) return;
        var atGround = axis.AtHeight(Contact.Z);
        if (!((atGround - Contact).Length < FarthestAxisMm)) return;
        AxisAtGround = atGround;
        AxisTop = axis.AtHeight(TopOf(axis) + (BeyondJoint * views.LoadedRadiusMm));
        Offsets = axis.Offsets(views.Wheel, Contact);
    }

    public CornerViews Views { get; }

    public Vector3 Contact { get; }

    /// <summary>Where the steering axis meets the ground; null without one, and where it does not.</summary>
    public Vector3? AxisAtGround { get; }

    /// <summary>Where the drawn steering axis ends above; null as before.</summary>
    public Vector3? AxisTop { get; }

    /// <summary>Scrub radius and trail, mm; null as before.</summary>
    public (double ScrubRadiusMm, double MechanicalTrailMm)? Offsets { get; }

    public double TyreWidthMm => Views.TyreWidthMm ?? (IndicativeWidthShare * Views.LoadedRadiusMm);

    /// <summary>The circle of the loaded radius, moved <paramref name="outboardMm"/> along the spin axis.</summary>
    public IEnumerable<Vector3> Circle(double outboardMm)
    {
        var wheel = Views.Wheel;
        var ahead = wheel.Spin.Cross(wheel.Up);
        for (var i = 0; i < CircleSteps; i++)
        {
            var (sin, cos) = Math.SinCos(2 * Math.PI * i / CircleSteps);
            yield return wheel.Centre + (outboardMm * wheel.Spin) + (Views.LoadedRadiusMm * ((sin * ahead) - (cos * wheel.Up)));
        }
    }

    /// <summary>The circles of both sidewalls.</summary>
    public IEnumerable<Vector3> Sidewalls() => Circle(TyreWidthMm / 2).Concat(Circle(-TyreWidthMm / 2));

    private double TopOf(SteeringAxis axis)
    {
        var heights = Views.Points.Where(point => FromAxisMm(axis, point.Position) < OnAxisMm).Select(point => point.Position.Z).ToList();
        return heights.Count > 0 ? heights.Max() : Contact.Z + (2 * Views.LoadedRadiusMm);
    }

    private static double FromAxisMm(SteeringAxis axis, Vector3 point) => (point - axis.Point).Cross(axis.Direction.Unit()).Length;
}

/// <summary>The samples of the key: every kind of line and sign that the views hold.</summary>
internal static class CornerSamples
{
    public static IEnumerable<(string Name, LegendSample Sample)> List(CornerShape shape)
    {
        var views = shape.Views;
        foreach (var part in views.Links.Select(link => link.Kind).Distinct().Order()) yield return (CornerPens.Name(part), Line(CornerPens.For(part)));
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
