namespace SetupService.Api.Drawings.Corners;

/// <summary>The signs for points.</summary>
internal static class CornerMarks
{
    private const double SquareUnits = 9;
    private const double JointUnits = 4.6;
    private const double CrossUnits = 9;
    private const double CentreUnits = 5.5;

    /// <summary>A point fixed to the body is an open square, one that moves a disc.</summary>
    public static void Point(SvgWriter svg, double unit, (double X, double Y) at, bool isOnBody)
    {
        if (isOnBody)
            svg.Rectangle(at.X - (SquareUnits / 2 * unit), at.Y - (SquareUnits / 2 * unit), SquareUnits * unit, SquareUnits * unit, CornerPens.BodyPoint);
        else
            svg.Circle(at.X, at.Y, JointUnits * unit, CornerPens.Joint);
    }

    /// <summary>A cross, for a point that is no joint.</summary>
    public static void Cross(SvgWriter svg, double unit, (double X, double Y) at)
    {
        var reach = CrossUnits * unit;
        svg.Line(at.X - reach, at.Y, at.X + reach, at.Y, Pen.Full(InkRole.Ink, 1.3));
        svg.Line(at.X, at.Y - reach, at.X, at.Y + reach, Pen.Full(InkRole.Ink, 1.3));
    }

    /// <summary>A ring around a cross, for an instant centre and a roll centre.</summary>
    public static void Centre(SvgWriter svg, double unit, (double X, double Y) at)
    {
        Cross(svg, unit, at);
        svg.Circle(at.X, at.Y, CentreUnits * unit, Pen.Full(InkRole.Ink, 1.6).WithFill(InkRole.Paper, 1));
    }
}
