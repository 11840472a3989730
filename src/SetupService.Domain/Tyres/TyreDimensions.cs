namespace SetupService.Domain.Tyres;

/// <summary>
/// The design dimensions of a tyre on its measuring rim, in mm, and the limits they grow to. Made by <see cref="TyreDimensionRules"/>;
/// the default instance has all dimensions zero and is no tyre.
/// Sources: overall diameter d + 2H and width S1 + 0.4 (A − A1) from a clause of a UN tyre regulation as quoted by others;
/// the in-service limits from memory (UN Regulation No. 30, 6.1.4 and 6.1.5).
/// </summary>
public readonly record struct TyreDimensions
{
    /// <summary>How far the section widens for each mm of rim width: 0.4.</summary>
    public const double SectionPerRimWidth = 0.4;

    /// <summary>Millimetres in an inch, exact.</summary>
    internal const double MmPerInch = 25.4;

    internal TyreDimensions(
        double rimDiameterMm,
        double sectionHeightMm,
        double theoreticalRimWidthMm,
        double measuringRimWidthIn,
        double designSectionWidthMm,
        double widthGrowthFactor,
        double maximumOverallDiameterMm)
    {
        RimDiameterMm = rimDiameterMm;
        SectionHeightMm = sectionHeightMm;
        TheoreticalRimWidthMm = theoreticalRimWidthMm;
        MeasuringRimWidthIn = measuringRimWidthIn;
        DesignSectionWidthMm = designSectionWidthMm;
        InServiceMaximumWidthFactor = widthGrowthFactor;
        MaximumOverallDiameterMm = maximumOverallDiameterMm;
    }

    /// <summary>The rim diameter d: the code times 25.4, rounded to whole mm.</summary>
    public double RimDiameterMm { get; }

    /// <summary>
    /// The section height H from bead seat to tread, rounded to whole mm; where the outer diameter itself is marked, half the
    /// difference of the diameters.
    /// </summary>
    public double SectionHeightMm { get; }

    /// <summary>The design outer diameter d + 2H, new and unloaded.</summary>
    public double OverallDiameterMm => RimDiameterMm + (2 * SectionHeightMm);

    /// <summary>The theoretical rim width A1, on which the tyre would be as wide as its marking says.</summary>
    public double TheoreticalRimWidthMm { get; }

    /// <summary>The rim width code the design width is stated for, in half inches.</summary>
    public double MeasuringRimWidthIn { get; }

    /// <summary>The design section width on the measuring rim, rounded to whole mm, without lettering or protective ribs.</summary>
    public double DesignSectionWidthMm { get; }

    /// <summary>How far the width of a tyre in service may exceed its section width: 1.04 radial, 1.06 otherwise; from memory.</summary>
    public double InServiceMaximumWidthFactor { get; }

    /// <summary>The largest outer diameter: d + 2H × 1.04 radial, 1.08 otherwise, and 1 % more for a snow tyre; from memory.</summary>
    public double MaximumOverallDiameterMm { get; }

    /// <summary>The smallest outer diameter: d + 2H × 0.97; from memory.</summary>
    public double MinimumOverallDiameterMm => RimDiameterMm + (2 * SectionHeightMm * 0.97);

    /// <summary>The section width in mm on a rim of another width, unrounded: 5.08 mm more for each half inch of rim.</summary>
    public double SectionWidthOnRimMm(double rimWidthIn) =>
        DesignSectionWidthMm + (SectionPerRimWidth * MmPerInch * (rimWidthIn - MeasuringRimWidthIn));

    /// <summary>The widest the tyre may be on a rim of this width, in mm; from memory.</summary>
    public double MaximumSectionWidthOnRimMm(double rimWidthIn) => SectionWidthOnRimMm(rimWidthIn) * InServiceMaximumWidthFactor;
}
