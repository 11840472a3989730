using SetupService.Domain.Tests.TestData;
using SetupService.Domain.Tyres;

namespace SetupService.Domain.Tests.Tyres;

public class LoadIndexTableTests
{
    [Fact]
    public void Every_index_stands_for_the_load_both_national_texts_print()
    {
        // Read in the French order of 24 October 1994 on tyres, Annex I, and in the Dutch Regeling voertuigen, Annex VIII, annex 4.
        var rows = CsvTable.Rows("load-index.csv");

        Assert.Equal(201, rows.Count);
        Assert.Equal(200, rows.Count(row => row.NumberOrNull("kg_dutch_regulation") is not null));
        Assert.All(rows, row =>
        {
            var capacityKg = LoadIndexTable.CapacityKg((int)row.Number("load_index"));
            Assert.Equal(row.Number("kg_french_order"), capacityKg);
            Assert.Equal(row.NumberOrNull("kg_dutch_regulation") ?? capacityKg, capacityKg);
        });
    }

    [Fact]
    public void The_table_follows_the_geometric_series_it_is_built_on()
    {
        // Own observation on the printed table: 45 kg × 10^(index/80), never more than 2.4 % off; 2.0 % leaving out the disputed 59.
        Assert.All(LoadIndexTable.All, entry =>
        {
            var seriesKg = 45 * Math.Pow(10, entry.LoadIndex / 80.0);
            Assert.InRange(entry.CapacityKg / seriesKg, entry.IsDisputed ? 0.976 : 0.98, entry.IsDisputed ? 1.024 : 1.02);
        });
    }

    [Fact]
    public void Only_index_59_is_disputed() =>
        Assert.Equal(new LoadIndexEntry(59, 240, true), Assert.Single(LoadIndexTable.All, entry => entry.IsDisputed));

    [Theory]
    [InlineData(-1)]
    [InlineData(201)]
    [InlineData(int.MinValue)]
    [InlineData(int.MaxValue)]
    public void An_index_outside_the_table_has_no_load(int loadIndex) => Assert.Null(LoadIndexTable.CapacityKg(loadIndex));
}
