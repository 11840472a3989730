namespace SetupService.Api.Drawings.Corners;

/// <summary>
/// Draws the instant centre of a view and the line from the contact to it. One that lies outside the view is an arrow at its edge
/// with the distance.
/// </summary>
internal static class InstantCentrePainter
{
    private const double ClearUnits = 14;
    private const double HeadUnits = 13;
    private const double MarkUnits = 16;

    private static readonly Lettering Label = new(Lettering.Small, InkRole.Ink);

    /// <summary>Keeps labels painted before it off what is to come.</summary>
    public static void Keep(ViewCanvas canvas)
    {
        if (Centre(canvas) is not { } centre) return;
        if (Room(canvas).Clip(canvas.ToPage(canvas.Shape.Contact), centre) is not { } inside) return;
        canvas.Labels.Keep(inside.From, inside.To);
        canvas.Labels.Keep(PictureBox.Around(inside.To, MarkUnits * canvas.Unit, MarkUnits * canvas.Unit));
    }

    public static void Paint(ViewCanvas canvas)
    {
        canvas.Svg.OpenGroup(canvas.Id("instantCentre"));
        if (Centre(canvas) is { } centre) Paint(canvas, centre);
        canvas.Svg.Close();
    }

    private static ViewPoint? Known(ViewCanvas canvas) =>
        canvas.IsFront ? canvas.Shape.Views.FrontInstantCentre : canvas.Shape.Views.SideInstantCentre;

    private static (double X, double Y)? Centre(ViewCanvas canvas) => Known(canvas) is { } known ? canvas.Place.Projection.ToPage(known) : null;

    private static PictureBox Room(ViewCanvas canvas) => canvas.Place.Region.Shrunk(ClearUnits * canvas.Unit);

    private static void Paint(ViewCanvas canvas, (double X, double Y) centre)
    {
        var (contact, room) = (canvas.ToPage(canvas.Shape.Contact), Room(canvas));
        if (room.Contains(centre))
        {
            canvas.Line(contact, centre, CornerPens.InstantCentre);
            CornerMarks.Centre(canvas.Svg, canvas.Unit, centre);
            canvas.Label(["instant centre"], Label, LabelPlacer.Around(centre, 24 * canvas.Unit, 3.2));
            return;
        }

        if (room.Clip(contact, centre) is not { } inside || Known(canvas) is not { } known) return;
        canvas.Line(inside.From, inside.To, CornerPens.InstantCentre);
        Arrow(canvas, inside.From, inside.To);
        var away = CornerWords.FarAway(canvas.Shape, known, canvas.IsFront, canvas.Units);
        canvas.Label(["instant centre", away], Label, LabelPlacer.Around(inside.To, 34 * canvas.Unit, 2.2));
    }

    private static void Arrow(ViewCanvas canvas, (double X, double Y) from, (double X, double Y) tip)
    {
        var (dx, dy) = (tip.X - from.X, tip.Y - from.Y);
        var length = Math.Sqrt((dx * dx) + (dy * dy));
        if (!(length > 0)) return;
        var (ux, uy) = (dx / length * HeadUnits * canvas.Unit, dy / length * HeadUnits * canvas.Unit);
        canvas.Svg.Path(Polyline.From([tip, (tip.X - ux - (0.4 * uy), tip.Y - uy + (0.4 * ux)), (tip.X - ux + (0.4 * uy), tip.Y - uy - (0.4 * ux))], closed: true), Pen.Filled(InkRole.Ink));
    }
}
