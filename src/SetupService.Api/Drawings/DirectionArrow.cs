namespace SetupService.Api.Drawings;

/// <summary>The small arrow beside a word for a direction.</summary>
internal static class DirectionArrow
{
    /// <summary>How long it is, text units.</summary>
    public const double LengthUnits = 22;

    /// <summary>Draws it level with a line of text; its tail runs to the right, or to the left where <paramref name="unit"/> is negative.</summary>
    public static void Paint(SvgWriter svg, double tip, double baseline, double unit)
    {
        var y = baseline - (6 * Math.Abs(unit));
        svg.Line(tip, y, tip + (LengthUnits * unit), y, Pen.Full(InkRole.Soft, 1.3));
        svg.Line(tip, y, tip + (7 * unit), y - (4 * Math.Abs(unit)), Pen.Full(InkRole.Soft, 1.3));
        svg.Line(tip, y, tip + (7 * unit), y + (4 * Math.Abs(unit)), Pen.Full(InkRole.Soft, 1.3));
    }
}
