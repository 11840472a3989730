namespace SetupService.Domain.Tyres;

/// <summary>
/// The height of the wheel centre above the road with the car standing, in mm: from the tyre's vertical rate, or estimated from its size, pressure
/// and load. The rolling radius of the standard's rule is another figure, that of a turning tyre.
/// </summary>
public static class LoadedRadius
{
    /// <summary>
    /// Half the outer diameter less the deflection load / rate. The rate is the tyre's secant rate at this load and pressure;
    /// it must be above zero.
    /// </summary>
    public static double FromVerticalRateMm(double overallDiameterMm, double loadN, double rateNPerMm) =>
        (overallDiameterMm / 2) - (loadN / rateNPerMm);

    /// <summary>
    /// The standing height where no vertical rate is known, an estimate to be listed: half the outer diameter less load / rate, with the rate k of the formula
    /// 0.00028 p √((1.03 − 0.004 A) S (S A / 50 + d)) + 3.45 kg/mm, p in kPa, aspect A in percent, width S and rim diameter d in mm (Tire Science and Technology 33(3), 2005, from
    /// memory; against one published set of rates 1 to 13 % low). It is never let onto the rim.
    /// </summary>
    /// <param name="marking">The tyre.</param>
    /// <param name="loadN">Load on it, N; null = the load index's own, or where there is none 0.93 of the free radius is the answer (the GOST R 52899 rows of radial tyres have 0.91 to 0.94).</param>
    /// <param name="pressureKpa">Cold gauge pressure, kPa; null = the reference pressure of its load version, or 250.</param>
    public static double StaticEstimateMm(TyreMarking marking, double? loadN, double? pressureKpa)
    {
        ArgumentNullException.ThrowIfNull(marking);
        var dimensions = marking.Dimensions;
        var freeMm = dimensions.OverallDiameterMm / 2;
        if ((loadN ?? (marking.LoadCapacityKg * KgToN)) is not { } pressingN) return UsualShare * freeMm;
        var widthMm = marking.NominalSectionWidthMm;
        var heightMm = (dimensions.OverallDiameterMm - dimensions.RimDiameterMm) / 2;
        var aspectPct = 100 * heightMm / widthMm;
        var kpa = pressureKpa ?? LoadCapacity.ReferencePressureKpa(marking) ?? UsualPressureKpa;
        var root = Math.Sqrt(Math.Max(0, (1.03 - (0.004 * aspectPct)) * widthMm * ((widthMm * aspectPct / 50) + dimensions.RimDiameterMm)));
        var rateNPerMm = KgToN * ((0.00028 * kpa * root) + 3.45);
        return Math.Max(freeMm - (pressingN / rateNPerMm), dimensions.RimDiameterMm / 2);
    }

    private const double KgToN = 9.80665;
    private const double UsualShare = 0.93;
    private const double UsualPressureKpa = 250;
}
