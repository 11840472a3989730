namespace SetupService.Domain.Fitment;

/// <summary>What the caller sets of a check.</summary>
public sealed record CheckSettings
{
    /// <summary>Worst-case room below which a clearance is a caution where nobody says otherwise: common practice, no source.</summary>
    public const double DefaultMinimumMarginMm = 3;

    /// <summary>The caller's least worst-case room, mm; null = <see cref="DefaultMinimumMarginMm"/>.</summary>
    public double? MinimumMarginMm { get; init; }

    /// <summary>The checks whose being unknown makes the verdict unknown; null = the usual ones (<see cref="FitmentContext.RequiredFor"/>).</summary>
    public CheckIdSet? Required { get; init; }

    /// <summary>A change of static camber made at the same time.</summary>
    public CamberChange? CamberChange { get; init; }
}

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

/// <summary>Where static camber is changed, and so about which point the wheel turns.</summary>
public enum CamberChangePlace
{
    /// <summary>The strut's top is moved; strut, upright and wheel turn together about the lower ball joint.</summary>
    StrutTop,

    /// <summary>The upright is turned on the strut; the wheel turns against the strut.</summary>
    StrutToKnuckle,

    /// <summary>The lower ball joint is moved; the wheel turns about the strut's top or the upper joint.</summary>
    LowerJoint,
}
