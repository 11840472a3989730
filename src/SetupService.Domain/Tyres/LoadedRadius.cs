namespace SetupService.Domain.Tyres;

/// <summary>The height of the wheel centre above the road, in mm, two ways: from the tyre's vertical rate, or by its size alone.</summary>
public static class LoadedRadius
{
    /// <summary>
    /// Half the outer diameter less the deflection load / rate. The rate is the tyre's secant rate at this load and pressure;
    /// it must be above zero.
    /// </summary>
    public static double FromVerticalRateMm(double overallDiameterMm, double loadN, double rateNPerMm) =>
        (overallDiameterMm / 2) - (loadN / rateNPerMm);

    /// <summary>
    /// The rolling radius F × D / 2π, where no vertical rate is known. It is taken rolling at maximum load, and is a little
    /// more than the standing height of the axle. Source as for <see cref="RollingCircumference"/>.
    /// </summary>
    public static double ByStandardMm(TyreDimensions dimensions, TyreConstruction construction) =>
        RollingCircumference.Mm(dimensions, construction) / (2 * Math.PI);
}
