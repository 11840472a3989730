namespace SetupService.Domain.Wear.Readings;

/// <summary>Depth at one place across the tread.</summary>
/// <param name="AcrossPct">Where, percent of the tread's width: 0 = the outer edge, 100 = the inner one.</param>
/// <param name="DepthMm">Depth, mm.</param>
public readonly record struct TreadZone(double AcrossPct, double DepthMm)
{
    /// <summary>Where outer, centre and inner are taken to be, percent across; common practice, no source: the grooves next to the shoulders.</summary>
    public static readonly AcrossTread<double> UsualPct = new(15, 50, 85);

    /// <summary>Where across, from −1 at the outer edge to 1 at the inner one.</summary>
    public double Inward => (AcrossPct / 50) - 1;

    /// <summary>The three usual places with their depths.</summary>
    public static TreadZone[] FromDepths(AcrossTread<double> depthMm) =>
        [new(UsualPct.Outer, depthMm.Outer), new(UsualPct.Centre, depthMm.Centre), new(UsualPct.Inner, depthMm.Inner)];
}
