namespace SetupService.Domain.Fitment;

/// <summary>A change of static camber made together with the change of wheel and tyre.</summary>
/// <param name="ChangeDeg">Change of camber, degrees; negative = top further inboard.</param>
/// <param name="At">Where it is made.</param>
/// <param name="PivotHeightMm">Height above the ground of the point the wheel turns about, mm; null if not known.</param>
/// <param name="NarrowestHeightMm">Height above the ground of the narrowest place inboard, mm; null if not known.</param>
public sealed record CamberChange(double ChangeDeg, CamberChangePlace At, double? PivotHeightMm, double? NarrowestHeightMm)
{
    /// <summary>Movement inboard per mm of height above the pivot.</summary>
    public double InboardPerMm { get; } = Math.Tan(double.DegreesToRadians(-ChangeDeg));

    /// <summary>Rise of a shoulder per mm of half width, whichever way the wheel leans.</summary>
    public double ShoulderRisePerMm { get; } = Math.Sin(double.DegreesToRadians(Math.Abs(ChangeDeg)));

    /// <summary>Height of the narrowest place above the pivot, mm; null where either is not known.</summary>
    public double? NarrowestAbovePivotMm => NarrowestHeightMm - PivotHeightMm;
}
