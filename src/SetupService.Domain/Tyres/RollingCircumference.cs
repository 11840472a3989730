namespace SetupService.Domain.Tyres;

/// <summary>
/// The distance a tyre covers in one turn: a fixed share of its design outer diameter, at maximum load, specified pressure and
/// 60 km/h. Source: the ETRTO factors and the speed correction of the German tyre industry association (WdK), both as quoted
/// by a vehicle-theory textbook.
/// </summary>
public static class RollingCircumference
{
    /// <summary>The speed in km/h the factors are stated for.</summary>
    public const double ReferenceSpeedKmh = 60;

    /// <summary>Rolling circumference over outer diameter: 3.05 radial, 2.99 diagonal and bias-belted.</summary>
    public static double Factor(TyreConstruction construction) => construction == TyreConstruction.Radial ? 3.05 : 2.99;

    /// <summary>The rolling circumference in mm at 60 km/h.</summary>
    public static double Mm(TyreDimensions dimensions, TyreConstruction construction) =>
        Factor(construction) * dimensions.OverallDiameterMm;

    /// <summary>The rolling circumference in mm at another speed: 1 % longer for each 100 km/h above 60.</summary>
    public static double AtSpeedMm(double circumferenceMm, double speedKmh) =>
        circumferenceMm * (1 + ((speedKmh - ReferenceSpeedKmh) / 10_000));

    /// <summary>Turns of the wheel in a kilometre.</summary>
    public static double RevolutionsPerKm(double circumferenceMm) => 1_000_000 / circumferenceMm;
}
