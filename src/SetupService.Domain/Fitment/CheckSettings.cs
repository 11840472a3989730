namespace SetupService.Domain.Fitment;

/// <summary>What the caller sets of a check.</summary>
public sealed record CheckSettings
{
    /// <summary>Worst-case room below which a clearance is a caution where nobody says otherwise: common practice, no source.</summary>
    public const double DefaultMinimumMarginMm = 3;

    /// <summary>The caller's least worst-case room, mm; null = <see cref="DefaultMinimumMarginMm"/>.</summary>
    public double? MinimumMarginMm { get; init; }

    /// <summary>The checks whose being unknown makes the verdict unknown; null = the usual ones (<see cref="AxleUnderCheck.RequiredFor"/>).</summary>
    public CheckIdSet? Required { get; init; }

    /// <summary>A change of static camber made at the same time.</summary>
    public CamberChange? CamberChange { get; init; }
}
