namespace SetupService.Domain.Wear.Readings;

/// <summary>Gauge pressures of one tyre, kPa; what is not known is null.</summary>
/// <param name="ColdKpa">As set, cold.</param>
/// <param name="HotKpa">Straight after driving.</param>
/// <param name="AimColdKpa">What it should be cold.</param>
/// <param name="AimHotKpa">What it should be hot.</param>
public readonly record struct TyrePressures(double? ColdKpa, double? HotKpa, double? AimColdKpa, double? AimHotKpa)
{
    /// <summary>How much more than its aim it is, as a share of the aim; hot where that is known; null where neither is.</summary>
    public double? OffShare => HotKpa is { } hot && AimHotKpa is { } aimHot ? (hot - aimHot) / aimHot
        : ColdKpa is { } cold && AimColdKpa is { } aimCold ? (cold - aimCold) / aimCold : null;
}
