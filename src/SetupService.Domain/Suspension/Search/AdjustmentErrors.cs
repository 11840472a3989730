namespace SetupService.Domain.Suspension.Search;

/// <summary>
/// What errors of a suspension's points leave open in the angles after an adjustment: independent errors of every coordinate, each corner
/// with one coordinate moved closed and adjusted anew; to first order.
/// </summary>
/// <param name="CamberDeg">Standard deviation of camber, degrees.</param>
/// <param name="CasterDeg">Standard deviation of caster, degrees; null where nothing steers the wheel.</param>
public readonly record struct AdjustmentErrors(double CamberDeg, double? CasterDeg)
{
    /// <summary>The errors; null where the points are exact, or a corner with one coordinate moved does not close with the adjustments made.</summary>
    /// <param name="suspension">What is known of the suspension.</param>
    /// <param name="setup">How the wheel is set; camber, toe and loaded radius are exact.</param>
    /// <param name="adjustments">What is adjusted, by how much.</param>
    /// <param name="resetToe">Whether toe is then set to what it was.</param>
    public static AdjustmentErrors? After(SuspensionModel suspension, WheelSetup setup, ReadOnlySpan<Adjustment> adjustments, bool resetToe)
    {
        if (suspension is not HardpointSuspension { PointErrorMm: > 0 } points) return null;
        var camber = 0.0;
        double? caster = 0.0;
        foreach (var (moreModel, lessModel) in points.Moved())
        {
            if (AdjustableCorner.AsStated(moreModel, setup)?.With(adjustments, resetToe) is not { } more
                || AdjustableCorner.AsStated(lessModel, setup)?.With(adjustments, resetToe) is not { } less) return null;
            camber = double.Hypot(camber, points.Deviation(more.CamberDeg, less.CamberDeg));
            caster = more.CasterDeg is { } moreDeg && less.CasterDeg is { } lessDeg && caster is { } sum ? double.Hypot(sum, points.Deviation(moreDeg, lessDeg)) : null;
        }

        return new(camber, caster);
    }
}
