using SetupService.Domain.Numerics;

namespace SetupService.Api.Drawings.Corners;

/// <summary>Draws the steering axis down to the ground, and there the distance to the contact: scrub radius from behind, trail from the side.</summary>
internal static class AxisPainter
{
    private const double BeyondUnits = 5;
    private const double InsetUnits = 12;

    private static readonly Pen Extension = Pen.Full(InkRole.Soft, 0.9);

    public static void Paint(ViewCanvas canvas)
    {
        canvas.Svg.OpenGroup(canvas.Id("axis"));
        if (canvas.Shape is { AxisAtGround: { } foot, AxisTop: { } top, Offsets: { } offsets })
        {
            canvas.Line(foot, top, CornerPens.SteeringAxis);
            var label = canvas.IsFront
                ? CornerWords.ScrubRadius(offsets.ScrubRadiusMm, canvas.Units)
                : CornerWords.Trail(offsets.MechanicalTrailMm, canvas.Units);
            Dimension(canvas, foot, label);
        }

        canvas.Svg.Close();
    }

    private static void Dimension(ViewCanvas canvas, Vector3 foot, string label)
    {
        var (contact, axis) = (canvas.Of(canvas.Shape.Contact), canvas.Of(foot));
        var region = canvas.Place.Region;
        if (axis.X < region.Left || axis.X > region.Right) return;
        var (svg, unit, y) = (canvas.Svg, canvas.Unit, canvas.Place.DimensionY);
        svg.Circle(axis.X, axis.Y, 3.2 * unit, Pen.Full(InkRole.Third, 1.6).WithFill(InkRole.Paper, 1));
        foreach (var x in (ReadOnlySpan<double>)[contact.X, axis.X]) svg.Line(x, canvas.Place.GroundY, x, y + (BeyondUnits * unit), Extension);
        DimensionLine.Paint(svg, unit, contact.X, axis.X, (along, across) => (along, y + across));
        var lettering = new Lettering(Lettering.Small, InkRole.Ink, IsBold: true, Anchor: "middle", HasHalo: true);
        var room = region.Shrunk(InsetUnits * unit);
        var half = TextWidth.Em(label, isBold: true) * lettering.Size * unit / 2;
        var middle = Math.Clamp((contact.X + axis.X) / 2, room.Left + half, room.Right - half);
        svg.Letters(middle, y + (23 * unit), label, lettering);
        canvas.Labels.Keep(new(middle - half, y, middle + half, y + (28 * unit)));
    }
}
