using SetupService.Domain.Tests.TestData;
using SetupService.Domain.Tyres;

namespace SetupService.Domain.Tests.Tyres;

public class SpeedSymbolTableTests
{
    [Fact]
    public void Every_symbol_has_the_speed_of_the_table_it_was_read_in()
    {
        // Read in the French order of 24 October 1994 on tyres, Annex I (F to V), and in the handbook Automotive Engineering:
        // Powertrain, Chassis System and Vehicle Body, p. 291 (W, Y); B to E are from memory.
        var rows = CsvTable.Rows("speed-symbol.csv");

        Assert.Equal(rows.Count, SpeedSymbolTable.All.Count);
        Assert.All(rows.Zip(SpeedSymbolTable.All), pair =>
        {
            var (row, symbol) = pair;
            Assert.Equal(row["symbol"], symbol.Letter.ToString());
            Assert.Equal(row.Number("kmh"), symbol.MaximumKmh);
            Assert.Equal(row["read_in"] == "from memory", symbol.Source == "from memory");
        });
    }

    [Fact]
    public void Symbols_stand_slowest_first_with_H_between_U_and_V()
    {
        var letters = string.Concat(SpeedSymbolTable.All.Select(symbol => symbol.Letter));

        Assert.Equal("BCDEFGJKLMNPQRSTUHVWY", letters);
        Assert.Equal(SpeedSymbolTable.All.OrderBy(symbol => symbol.MaximumKmh), SpeedSymbolTable.All);
    }

    [Theory]
    [InlineData('w', 270)]
    [InlineData('H', 210)]
    public void A_symbol_is_found_in_either_case(char letter, double maximumKmh)
    {
        Assert.True(SpeedSymbolTable.TryGet(letter, out var symbol));
        Assert.Equal(maximumKmh, symbol.MaximumKmh);
    }

    // A has sub-classes (A1 to A8) and is not read; I, O, X and Z stand for no speed.
    [Theory]
    [InlineData('A')]
    [InlineData('I')]
    [InlineData('O')]
    [InlineData('X')]
    [InlineData('Z')]
    [InlineData('\0')]
    [InlineData('\ud800')]
    public void A_letter_outside_the_table_is_not_found(char letter) => Assert.False(SpeedSymbolTable.TryGet(letter, out _));
}
