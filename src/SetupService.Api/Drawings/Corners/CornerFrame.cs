namespace SetupService.Api.Drawings.Corners;

/// <summary>
/// Where everything stands: heading, view from behind, view from the side, key. One unit of the picture is 1 mm and the view from
/// behind has its origin where the points have theirs; letters and lines are measured in text units.
/// </summary>
internal sealed class CornerFrame
{
    private const double WidthUnits = DrawingFrame.WidthUnits;
    private const double Edge = DrawingFrame.EdgeUnits;

    // Beside what is drawn: room for numbers, and in the view from behind for what is said of the centre plane.
    private const double NumberUnits = 34;
    private const double ColumnUnits = 158;
    private const double SideRoomUnits = 96;

    private const double HighestViewUnits = 520;
    private const double HeadingUnits = 30;
    private const double DimensionUnits = 28;
    private const double BelowUnits = 58;
    private const double CaptionUnits = 82;
    private const double GapUnits = 16;

    // A roll centre further than this many loaded radii from the ground gets an arrow, not a place.
    private const double FarRollCentre = 0.55;

    public CornerFrame(CornerShape shape, double headUnits, double keyUnits)
    {
        var front = Content(shape, isFront: true);
        var side = Content(shape, isFront: false);
        UnitMm = Math.Max(
            Math.Max(front.Width / (WidthUnits - NumberUnits - ColumnUnits), side.Width / (WidthUnits - (2 * SideRoomUnits))),
            Math.Max(front.Height, side.Height) / HighestViewUnits);
        var unit = UnitMm;
        var spare = ((WidthUnits - NumberUnits - ColumnUnits) * unit) - front.Width;
        Left = front.Left - (NumberUnits * unit) - (spare / 2);
        var headingY = front.Top - (NumberUnits * unit);
        Top = headingY - ((Edge + headUnits + HeadingUnits) * unit);
        Front = Place(new(true, 0, 0), headingY, front.Bottom, -shape.Contact.Z);
        var sideHeadingY = Front.CaptionY + ((HeadingUnits + GapUnits) * unit);
        var shift = (X: Left + (WidthUnits / 2 * unit) - ((side.Left + side.Right) / 2), Y: sideHeadingY + (NumberUnits * unit) - side.Top);
        Side = Place(new(false, shift.X, shift.Y), sideHeadingY, side.Bottom + shift.Y, shift.Y - shape.Contact.Z);
        KeyTop = Side.CaptionY + (GapUnits * unit);
        Height = KeyTop + ((keyUnits + Edge) * unit) - Top;
    }

    /// <summary>Size of a text unit, mm.</summary>
    public double UnitMm { get; }

    public double Left { get; }

    public double Top { get; }

    public double Width => WidthUnits * UnitMm;

    public double Height { get; }

    public ViewPlace Front { get; }

    public ViewPlace Side { get; }

    public double KeyTop { get; }

    private ViewPlace Place(ViewProjection projection, double headingY, double bottom, double groundY)
    {
        var region = new PictureBox(Left + (6 * UnitMm), headingY + (5 * UnitMm), Left + Width - (6 * UnitMm), bottom + (BelowUnits * UnitMm));
        return new(projection, region, headingY, groundY, bottom + (DimensionUnits * UnitMm), bottom + (CaptionUnits * UnitMm));
    }

    /// <summary>What a view has to hold, as a box of a picture whose origin is that of the points.</summary>
    private static PictureBox Content(CornerShape shape, bool isFront)
    {
        var projection = new ViewProjection(isFront, 0, 0);
        var points = shape.Sidewalls().Concat(shape.Views.Points.Select(point => point.Position)).Append(shape.Contact).Select(point => projection.ToPage(point)).ToList();
        if (isFront)
        {
            var height = shape.Views.RollCentreHeightMm is { } rollCentre && IsNear(shape, rollCentre) ? rollCentre : 0;
            points.Add((0, -shape.Contact.Z - height));
        }

        return new(points.Min(point => point.X), points.Min(point => point.Y), points.Max(point => point.X), points.Max(point => point.Y));
    }

    private static bool IsNear(CornerShape shape, double rollCentreHeightMm) => Math.Abs(rollCentreHeightMm) <= FarRollCentre * shape.Views.LoadedRadiusMm;
}

/// <summary>An upright rectangle of the picture; y runs down.</summary>
internal readonly record struct PictureBox(double Left, double Top, double Right, double Bottom)
{
    public double Width => Right - Left;

    public double Height => Bottom - Top;

    public static PictureBox Around((double X, double Y) centre, double width, double height) =>
        new(centre.X - (width / 2), centre.Y - (height / 2), centre.X + (width / 2), centre.Y + (height / 2));

    public bool Contains((double X, double Y) point) => point.X >= Left && point.X <= Right && point.Y >= Top && point.Y <= Bottom;

    public bool Contains(PictureBox other) => other.Left >= Left && other.Right <= Right && other.Top >= Top && other.Bottom <= Bottom;

    public bool Overlaps(PictureBox other) => Left < other.Right && other.Left < Right && Top < other.Bottom && other.Top < Bottom;

    public PictureBox Shrunk(double by) => new(Left + by, Top + by, Right - by, Bottom - by);

    /// <summary>What of a line is inside; null where nothing is.</summary>
    public ((double X, double Y) From, (double X, double Y) To)? Clip((double X, double Y) from, (double X, double Y) to)
    {
        var (dx, dy) = (to.X - from.X, to.Y - from.Y);
        var (start, end) = (0.0, 1.0);
        if (!Cut(-dx, from.X - Left) || !Cut(dx, Right - from.X) || !Cut(-dy, from.Y - Top) || !Cut(dy, Bottom - from.Y)) return null;
        return ((from.X + (start * dx), from.Y + (start * dy)), (from.X + (end * dx), from.Y + (end * dy)));

        // One side: how fast the line runs towards it, and how much room there is.
        bool Cut(double speed, double room)
        {
            if (speed == 0) return room >= 0;
            if (speed > 0) end = Math.Min(end, room / speed);
            else start = Math.Max(start, room / speed);
            return start <= end;
        }
    }
}
