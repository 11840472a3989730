namespace SetupService.Domain.Tyres;

/// <summary>
/// Computes a tyre's design dimensions from its marking: D = d + 2H and S = S1 + 0.4 (A − A1), with d and H each rounded to
/// whole mm first. The formulas are a UN tyre regulation's, quoted by others; the choice of measuring rim and of theoretical
/// rim is from memory and stands in <see cref="MeasuringRimWidthIn"/> and <see cref="TheoreticalRimFactor"/>.
/// </summary>
public static class TyreDimensionRules
{
    /// <summary>
    /// The aspect ratio in percent of a tyre that has none marked (185R14C): 82. Source: UK vehicle inspectorate's MOT
    /// inspection manual, section 5.2.
    /// </summary>
    public const double UnmarkedAspectRatioPct = 82;

    // 31x10.50R15 is measured on 8.5, 33x12.50R15 on 10: both from memory, both 0.80 of the width.
    private const double FlotationMeasuringRimFactor = 0.80;

    private const double SnowGrowthFactor = 1.01;

    /// <summary>The dimensions of a tyre marked with a section width in mm and an aspect ratio in percent.</summary>
    public static TyreDimensions ForMetric(
        double nominalSectionWidthMm, double aspectRatioPct, double rimDiameterIn, TyreConstruction construction, bool isSnowTyre)
    {
        var measuringRimIn = MeasuringRimWidthIn(nominalSectionWidthMm, aspectRatioPct);
        var theoreticalRimMm = TheoreticalRimFactor(aspectRatioPct) * nominalSectionWidthMm;
        var sectionWidthMm = nominalSectionWidthMm
            + (TyreDimensions.SectionPerRimWidth * ((measuringRimIn * TyreDimensions.MmPerInch) - theoreticalRimMm));
        return Make(
            rimDiameterMm: RimDiameterMm(rimDiameterIn),
            sectionHeightMm: Whole(nominalSectionWidthMm * aspectRatioPct / 100),
            theoreticalRimMm,
            measuringRimIn,
            Whole(sectionWidthMm),
            construction,
            isSnowTyre);
    }

    /// <summary>
    /// The dimensions of a high-flotation tyre, whose outer diameter and width are marked in inches. The marked width is taken
    /// as the design width on a measuring rim 0.80 as wide (from memory).
    /// </summary>
    public static TyreDimensions ForFlotation(
        double overallDiameterIn, double sectionWidthIn, double rimDiameterIn, TyreConstruction construction, bool isSnowTyre)
    {
        var rimDiameterMm = RimDiameterMm(rimDiameterIn);
        var measuringRimIn = NearestHalf(sectionWidthIn * FlotationMeasuringRimFactor);
        return Make(
            rimDiameterMm,
            sectionHeightMm: (Whole(overallDiameterIn * TyreDimensions.MmPerInch) - rimDiameterMm) / 2,
            theoreticalRimMm: measuringRimIn * TyreDimensions.MmPerInch,
            measuringRimIn,
            Whole(sectionWidthIn * TyreDimensions.MmPerInch),
            construction,
            isSnowTyre);
    }

    /// <summary>The rim diameter in whole mm of a rim diameter code: 17 gives 432.</summary>
    public static double RimDiameterMm(double rimDiameterIn) => Whole(rimDiameterIn * TyreDimensions.MmPerInch);

    /// <summary>The theoretical rim's width as a share of the section width: 0.70 from series 50 up, 0.85 below; from memory.</summary>
    public static double TheoreticalRimFactor(double aspectRatioPct) => aspectRatioPct >= 50 ? 0.70 : 0.85;

    /// <summary>
    /// The measuring rim's width code: a share of the section width that grows as the series gets lower, to the nearest half
    /// inch. The shares are from memory: 0.70 from series 75 up, 0.75 from 60, 0.80 from 50, 0.85 from 45, 0.90 from 35, 0.92 below.
    /// </summary>
    public static double MeasuringRimWidthIn(double nominalSectionWidthMm, double aspectRatioPct)
    {
        var share = aspectRatioPct switch
        {
            >= 75 => 0.70,
            >= 60 => 0.75,
            >= 50 => 0.80,
            >= 45 => 0.85,
            >= 35 => 0.90,
            _ => 0.92,
        };
        return NearestHalf(nominalSectionWidthMm * share / TyreDimensions.MmPerInch);
    }

    private static TyreDimensions Make(
        double rimDiameterMm,
        double sectionHeightMm,
        double theoreticalRimMm,
        double measuringRimIn,
        double designSectionWidthMm,
        TyreConstruction construction,
        bool isSnowTyre)
    {
        var isRadial = construction == TyreConstruction.Radial;
        var largestMm = rimDiameterMm + (2 * sectionHeightMm * (isRadial ? 1.04 : 1.08));
        return new TyreDimensions(
            rimDiameterMm,
            sectionHeightMm,
            theoreticalRimMm,
            measuringRimIn,
            designSectionWidthMm,
            widthGrowthFactor: isRadial ? 1.04 : 1.06,
            maximumOverallDiameterMm: isSnowTyre ? largestMm * SnowGrowthFactor : largestMm);
    }

    private static double Whole(double valueMm) => Math.Round(valueMm, MidpointRounding.AwayFromZero);

    private static double NearestHalf(double valueIn) => Math.Round(valueIn * 2, MidpointRounding.AwayFromZero) / 2;
}
