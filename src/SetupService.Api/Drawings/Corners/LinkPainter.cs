namespace SetupService.Api.Drawings.Corners;

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
        foreach (var link in views.Links.OrderByDescending(link => link.Part)) canvas.Line(link.From.Position, link.To.Position, CornerPens.Of(link.Part));
        foreach (var point in views.Points)
        {
            var at = canvas.Of(point.Position);
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
            var at = canvas.Of(canvas.Shape.Views.Points[i].Position);
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
