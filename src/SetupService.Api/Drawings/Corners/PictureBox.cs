namespace SetupService.Api.Drawings.Corners;

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
