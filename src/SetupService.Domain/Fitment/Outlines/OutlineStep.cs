namespace SetupService.Domain.Fitment.Outlines;

/// <summary>One piece of an outline: a straight line or a cubic Bézier curve from the point before it.</summary>
/// <param name="FirstControl">Control point at the beginning; of a straight line, its end.</param>
/// <param name="SecondControl">Control point at the end; of a straight line, its end.</param>
/// <param name="End">Where the piece ends.</param>
/// <param name="IsStraight">True for a straight line.</param>
public readonly record struct OutlineStep(OutlinePoint FirstControl, OutlinePoint SecondControl, OutlinePoint End, bool IsStraight)
{
    /// <summary>A straight line.</summary>
    public static OutlineStep Line(OutlinePoint end) => new(end, end, end, true);

    /// <summary>A curve.</summary>
    public static OutlineStep Curve(OutlinePoint firstControl, OutlinePoint secondControl, OutlinePoint end) =>
        new(firstControl, secondControl, end, false);

    /// <summary>The point of the piece at a share of it, 0 to 1, by halving the control polygon (de Casteljau).</summary>
    internal OutlinePoint At(OutlinePoint start, double share)
    {
        if (IsStraight) return start.Towards(End, share);
        var middle = FirstControl.Towards(SecondControl, share);
        var early = start.Towards(FirstControl, share).Towards(middle, share);
        var late = middle.Towards(SecondControl.Towards(End, share), share);
        return early.Towards(late, share);
    }
}
