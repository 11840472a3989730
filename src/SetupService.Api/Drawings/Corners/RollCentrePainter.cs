namespace SetupService.Api.Drawings.Corners;

/// <summary>Draws the car's centre plane, and on it the roll centre with its height over the ground.</summary>
internal static class RollCentrePainter
{
    private const double DimensionUnits = 18;
    private const double LabelUnits = 13;
    private const double ArrowUnits = 46;

    private static readonly Lettering Label = new(Lettering.Small, InkRole.Ink, IsBold: true);

    public static void Paint(ViewCanvas canvas)
    {
        var region = canvas.Place.Region;
        var x = canvas.Place.Projection.ToPage(new ViewPoint(0, 0)).X;
        canvas.Line((x, region.Top), (x, region.Bottom), CornerPens.CentreLine);
        canvas.Svg.OpenGroup("rollCentre");
        if (canvas.Shape.Views.RollCentreHeightMm is { } height) Paint(canvas, x, height);
        canvas.Svg.Close();
    }

    private static void Paint(ViewCanvas canvas, double x, double heightMm)
    {
        var (svg, unit, ground) = (canvas.Svg, canvas.Unit, canvas.Place.GroundY);
        var y = ground - heightMm;
        var across = x + (DimensionUnits * unit);
        var inside = y >= canvas.Place.Region.Top && y <= canvas.Place.Region.Bottom;
        var middle = (ground + y) / 2;
        if (inside)
        {
            svg.Line(x, y, across + (5 * unit), y, Pen.Full(InkRole.Soft, 0.9));
            var (from, to) = DimensionLine.Paint(svg, unit, ground, y, (along, off) => (across + off, along));
            canvas.Labels.Keep((across, from), (across, to));
            CornerMarks.Centre(svg, unit, (x, y));
            canvas.Labels.Keep(PictureBox.Around((x, y), 18 * unit, 18 * unit));
        }
        else
        {
            // Too far to be drawn: which way it lies, and how far.
            var (tail, tip) = heightMm > 0
                ? (canvas.Place.Region.Top + (ArrowUnits * unit), canvas.Place.Region.Top)
                : (canvas.Place.Region.Bottom - (ArrowUnits * unit), canvas.Place.Region.Bottom);
            Arrow(canvas, across, tail, tip);
            middle = (tail + tip) / 2;
        }

        string[] lines = ["roll centre", CornerWords.Length(heightMm, canvas.Units)];
        var half = lines.Max(line => TextWidth.Em(line, Label.IsBold)) * Label.Size * unit / 2;
        canvas.Label(lines, Label, Beside(across + (LabelUnits * unit) + half, middle, 9 * unit));
    }

    private static void Arrow(ViewCanvas canvas, double x, double tail, double tip)
    {
        var head = 13 * canvas.Unit * Math.Sign(tail - tip);
        canvas.Svg.Line(x, tail, x, tip, Pen.Full(InkRole.Ink, 1.3));
        canvas.Svg.Path(Polyline.From([(x, tip), (x - (0.4 * head), tip + head), (x + (0.4 * head), tip + head)], closed: true), Pen.Filled(InkRole.Ink));
        canvas.Labels.Keep((x, tail), (x, tip));
    }

    /// <summary>Places up and down from the middle of the dimension.</summary>
    private static IEnumerable<(double X, double Y)> Beside(double x, double y, double step)
    {
        yield return (x, y);
        for (var i = 1; i < 24; i++)
        {
            yield return (x, y - (i * step));
            yield return (x, y + (i * step));
        }
    }
}
