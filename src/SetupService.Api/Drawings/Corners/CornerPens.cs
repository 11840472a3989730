namespace SetupService.Api.Drawings.Corners;

/// <summary>How the parts of a corner are drawn. No two differ by colour alone.</summary>
internal static class CornerPens
{
    public static readonly Pen SteeringAxis = Pen.Dashed(InkRole.Third, 2.2, 16, 5);

    public static readonly Pen InstantCentre = Pen.Dashed(InkRole.Ink, 1.5, 2, 3.5);

    public static readonly Pen CentreLine = Pen.Dashed(InkRole.Soft, 1.1, 16, 4, 3, 4);

    public static readonly Pen BodyPoint = Pen.Full(InkRole.Ink, 1.8).WithFill(InkRole.Paper, 1);

    public static readonly Pen Joint = Pen.Full(InkRole.Paper, 1).WithFill(InkRole.Candidate, 1);

    public static Pen Of(CornerPart part) => part switch
    {
        CornerPart.Arm => Pen.Full(InkRole.Candidate, 3.6),
        CornerPart.TieRod => Pen.Dashed(InkRole.Current, 2.8, 20, 3),
        CornerPart.Strut => Pen.Full(InkRole.Ink, 2.4),
        CornerPart.Spring => Pen.Dashed(InkRole.Soft, 3.2, 3, 3),
        CornerPart.Upright => Pen.Full(InkRole.Soft, 1.3),
        _ => Pen.Dashed(InkRole.Current, 1.3, 12, 3, 2, 3),
    };

    public static string Name(CornerPart part) => part switch
    {
        CornerPart.Arm => "arm or link",
        CornerPart.TieRod => "tie rod",
        CornerPart.Strut => "strut",
        CornerPart.Spring => "spring or damper",
        CornerPart.Upright => "upright",
        _ => "pivot axis",
    };
}
