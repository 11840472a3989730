using SetupService.Domain.Suspension.Kinematics;

namespace SetupService.Api.Drawings.Corners;

/// <summary>How the parts of a corner are drawn. No two differ by colour alone.</summary>
internal static class CornerPens
{
    public static readonly Pen SteeringAxis = Pen.Dashed(InkRole.Third, 2.2, 16, 5);

    public static readonly Pen InstantCentre = Pen.Dashed(InkRole.Ink, 1.5, 2, 3.5);

    public static readonly Pen CentreLine = Pen.Dashed(InkRole.Soft, 1.1, 16, 4, 3, 4);

    public static readonly Pen BodyPoint = Pen.Full(InkRole.Ink, 1.8).WithFill(InkRole.Paper, 1);

    public static readonly Pen Joint = Pen.Full(InkRole.Paper, 1).WithFill(InkRole.Candidate, 1);

    public static Pen For(CornerLinkKind part) => part switch
    {
        CornerLinkKind.Arm => Pen.Full(InkRole.Candidate, 3.6),
        CornerLinkKind.TieRod => Pen.Dashed(InkRole.Current, 2.8, 20, 3),
        CornerLinkKind.Strut => Pen.Full(InkRole.Ink, 2.4),
        CornerLinkKind.Spring => Pen.Dashed(InkRole.Soft, 3.2, 3, 3),
        CornerLinkKind.Upright => Pen.Full(InkRole.Soft, 1.3),
        _ => Pen.Dashed(InkRole.Current, 1.3, 12, 3, 2, 3),
    };

    public static string Name(CornerLinkKind part) => part switch
    {
        CornerLinkKind.Arm => "arm or link",
        CornerLinkKind.TieRod => "tie rod",
        CornerLinkKind.Strut => "strut",
        CornerLinkKind.Spring => "spring or damper",
        CornerLinkKind.Upright => "upright",
        _ => "pivot axis",
    };
}

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
