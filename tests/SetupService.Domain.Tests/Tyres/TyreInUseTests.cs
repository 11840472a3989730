using SetupService.Domain.Tyres;

namespace SetupService.Domain.Tests.Tyres;

public sealed class TyreInUseTests
{
    private static readonly TyreMarking Marking = TyreMarkingReader.Read("225/45R17 91W").Value!;

    // The handbook's table of load against pressure (Automotive Engineering, p. 290, after ETRTO) begins at 1.5 bar.
    [Theory]
    [InlineData(149, null)]
    [InlineData(150, 408.7)]
    [InlineData(250, 615.0)]
    [InlineData(300, 615.0)]
    public void No_load_is_told_below_where_the_table_begins(double pressureKpa, double? expectedKg)
    {
        var carries = TyreInUse.Compute(Marking, null, pressureKpa, 200, null, null).LoadCapacityAtPressureKg;

        Assert.Equal(expectedKg, carries is { } kg ? Math.Round(kg, 1) : null);
    }

    [Theory]
    [InlineData(20, 150.0)]
    [InlineData(500, 193.0)]
    [InlineData(616, null)]
    public void The_pressure_for_a_load_is_at_least_where_the_table_begins(double loadKg, double? expectedKpa)
    {
        var pressure = TyreInUse.Compute(Marking, null, null, 200, loadKg, null).PressureForLoadKpa;

        Assert.Equal(expectedKpa, pressure is { } kpa ? Math.Round(kpa) : null);
    }

    // Half of 634 mm less 435 kg · 9.80665 m/s² / 210 N/mm.
    [Theory]
    [InlineData(435.0, 210, 296.7)]
    [InlineData(5000.0, 20, null)]
    [InlineData(null, 210, null)]
    public void The_loaded_radius_stays_above_the_rim(double? loadKg, double rateNPerMm, double? expectedMm)
    {
        var radius = TyreInUse.Compute(Marking, null, null, null, loadKg, rateNPerMm).LoadedRadiusMm;

        Assert.Equal(expectedMm, radius is { } mm ? Math.Round(mm, 1) : null);
    }
}
