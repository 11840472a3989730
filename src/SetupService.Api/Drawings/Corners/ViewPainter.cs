using SetupService.Domain.Numerics;

namespace SetupService.Api.Drawings.Corners;

/// <summary>Draws one view.</summary>
internal static class ViewPainter
{
    private static readonly Lettering Heading = new(Lettering.Small, InkRole.Ink, IsBold: true);
    private static readonly Lettering Caption = new(Lettering.Small, InkRole.Soft);

    public static void Paint(ViewCanvas canvas, CornerFrame frame)
    {
        var (svg, unit, place) = (canvas.Svg, canvas.Unit, canvas.Place);
        svg.OpenGroup(canvas.IsFront ? "front" : "side");
        svg.Letters(frame.Left + (DrawingFrame.EdgeUnits * unit), place.HeadingY, canvas.IsFront ? "seen from behind" : "seen from the left", Heading);
        canvas.Line((place.Region.Left, place.GroundY), (place.Region.Right, place.GroundY), Pen.Full(InkRole.Ink, 1.6));
        WheelPainter.Paint(canvas);
        LinkPainter.Paint(canvas);
        AxisPainter.Paint(canvas);
        InstantCentrePainter.Keep(canvas);
        if (canvas.IsFront) RollCentrePainter.Paint(canvas);
        LinkPainter.PaintNumbers(canvas);
        InstantCentrePainter.Paint(canvas);
        Captions(canvas, frame);
        svg.Close();
    }

    private static void Captions(ViewCanvas canvas, CornerFrame frame)
    {
        var (svg, unit, y) = (canvas.Svg, canvas.Unit, canvas.Place.CaptionY);
        var (left, right) = (frame.Left + (DrawingFrame.EdgeUnits * unit), frame.Left + frame.Width - (DrawingFrame.EdgeUnits * unit));
        var indent = (DirectionArrow.LengthUnits + 7) * unit;
        DirectionArrow.Paint(svg, left, y, unit);
        svg.Letters(left + indent, y, canvas.IsFront ? "outboard" : "forward", Caption);
        if (canvas.IsFront)
        {
            svg.Letters(canvas.Place.Projection.ToPage(new ViewPoint(0, 0)).X, y, "centre plane", Caption with { Anchor = "middle" });
            return;
        }

        DirectionArrow.Paint(svg, right, y, -unit);
        svg.Letters(right - indent, y, "rearward", Caption with { Anchor = "end" });
    }
}

/// <summary>Draws the wheel as a disc of the loaded radius, as wide as the tyre.</summary>
internal static class WheelPainter
{
    private const double AxleShare = 0.32;

    public static void Paint(ViewCanvas canvas)
    {
        var (svg, shape) = (canvas.Svg, canvas.Shape);
        var wheel = shape.Views.Wheel;
        svg.OpenGroup(canvas.Id("wheel"));
        svg.Path(Polyline.From(ConvexHull.Compute(shape.Sidewalls().Select(canvas.ToPage)), closed: true), Pen.Full(InkRole.Soft, 1.3).WithFill(InkRole.Soft, 0.13));
        svg.Path(Polyline.From([.. shape.Circle(0).Select(canvas.ToPage)], closed: true), Pen.Dashed(InkRole.Soft, 0.9, 5, 4));
        var axle = AxleShare * shape.Views.LoadedRadiusMm * wheel.Spin;
        canvas.Line(wheel.Centre - axle, wheel.Centre + axle, CornerPens.CentreLine);
        CornerMarks.Cross(svg, canvas.Unit, canvas.ToPage(wheel.Centre));
        svg.Circle(canvas.ToPage(shape.Contact).X, canvas.ToPage(shape.Contact).Y, 4 * canvas.Unit, Pen.Filled(InkRole.Ink));
        svg.Close();
    }
}

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
        var (contact, axis) = (canvas.ToPage(canvas.Shape.Contact), canvas.ToPage(foot));
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

/// <summary>Draws what joins what, and the points with their numbers.</summary>
internal static class LinkPainter
{
    private const double SamePlaceUnits = 11;
    private const double FirstRingUnits = 17;
    private const double LeaderFromUnits = 26;

    // A number belongs beside its point, even on a line.
    private const double NumberStepCost = 1;

    private static readonly Lettering Number = new(Lettering.Small, InkRole.Ink, IsBold: true);

    public static void Paint(ViewCanvas canvas)
    {
        var views = canvas.Shape.Views;
        canvas.Svg.OpenGroup(canvas.Id("links"));

        // Arms over what carries the wheel, axes under everything.
        foreach (var link in views.Links.OrderByDescending(link => link.Kind)) canvas.Line(link.From.Position, link.To.Position, CornerPens.For(link.Kind));
        foreach (var point in views.Points)
        {
            var at = canvas.ToPage(point.Position);
            CornerMarks.Point(canvas.Svg, canvas.Unit, at, point.IsOnBody);
            canvas.Labels.Keep(PictureBox.Around(at, SamePlaceUnits * canvas.Unit, SamePlaceUnits * canvas.Unit));
        }

        canvas.Svg.Close();
    }

    /// <summary>Writes the numbers once everything else has its place; points that fall together share a label.</summary>
    public static void PaintNumbers(ViewCanvas canvas)
    {
        var groups = new List<((double X, double Y) At, List<int> Numbers)>();
        for (var i = 0; i < canvas.Shape.Views.Points.Count; i++)
        {
            var at = canvas.ToPage(canvas.Shape.Views.Points[i].Position);
            var group = groups.Find(other => Distance(other.At, at) < SamePlaceUnits * canvas.Unit);
            if (group.Numbers is null) groups.Add((at, [i + 1]));
            else group.Numbers.Add(i + 1);
        }

        canvas.Svg.OpenGroup(canvas.Id("numbers"));
        foreach (var (at, numbers) in groups) Write(canvas, at, [.. groups.Select(group => group.At).Where(other => other != at)], string.Join(", ", numbers));
        canvas.Svg.Close();
    }

    private static void Write(ViewCanvas canvas, (double X, double Y) at, List<(double X, double Y)> others, string text)
    {
        var wide = text.Length > 2 ? 1.5 : 1;

        // A place nearer to another point would name that one.
        var places = LabelPlacer.Around(at, FirstRingUnits * canvas.Unit, wide)
            .OrderBy(place => others.Exists(other => Distance(place, other) < Distance(place, at)));
        var box = canvas.Label([text], Number, places, NumberStepCost);
        var middle = (X: (box.Left + box.Right) / 2, Y: (box.Top + box.Bottom) / 2);
        if (Distance(middle, at) < LeaderFromUnits * wide * canvas.Unit) return;
        var end = box.Clip(at, middle)?.From ?? middle;
        canvas.Svg.Line(at.X, at.Y, end.X, end.Y, Pen.Full(InkRole.Ink, 0.8));
    }

    private static double Distance((double X, double Y) a, (double X, double Y) b) => Math.Sqrt(((a.X - b.X) * (a.X - b.X)) + ((a.Y - b.Y) * (a.Y - b.Y)));
}
