using System.Diagnostics.CodeAnalysis;

namespace SetupService.Domain.Tyres;

/// <summary>
/// The speed symbols B to Y, slowest first. Note that H (210 km/h) stands between U and V.
/// Sources: French order of 24 October 1994 on tyres, Annex I (F to V); the handbook "Automotive Engineering: Powertrain,
/// Chassis System and Vehicle Body", chapter 10.1, p. 291 (V, W and Y); B to E from memory.
/// </summary>
public static class SpeedSymbolTable
{
    private const string FrenchOrder = "French order of 24 October 1994 on tyres, Annex I";
    private const string Handbook = "Automotive Engineering: Powertrain, Chassis System and Vehicle Body, chapter 10.1, p. 291";

    private static readonly SpeedSymbol[] Symbols =
    [
        Remembered('B', 50), Remembered('C', 60), Remembered('D', 65), Remembered('E', 70),
        Read('F', 80), Read('G', 90), Read('J', 100), Read('K', 110), Read('L', 120), Read('M', 130), Read('N', 140),
        Read('P', 150), Read('Q', 160), Read('R', 170), Read('S', 180), Read('T', 190), Read('U', 200), Read('H', 210),
        Read('V', 240), Read('W', 270, Handbook), Read('Y', 300, Handbook),
    ];

    /// <summary>Every symbol of the table, slowest first.</summary>
    public static IReadOnlyList<SpeedSymbol> All { get; } = Array.AsReadOnly(Symbols);

    /// <summary>Finds the symbol of a letter in either case; false where the table has none.</summary>
    public static bool TryGet(char letter, [NotNullWhen(true)] out SpeedSymbol? symbol)
    {
        var capital = char.ToUpperInvariant(letter);
        symbol = Array.Find(Symbols, candidate => candidate.Letter == capital);
        return symbol is not null;
    }

    private static SpeedSymbol Read(char letter, double maximumKmh, string source = FrenchOrder) =>
        new(letter, maximumKmh, source);

    private static SpeedSymbol Remembered(char letter, double maximumKmh) =>
        new(letter, maximumKmh, "from memory");
}

/// <summary>A speed symbol and the speed up to which the tyre carries its load under the conditions of the standards.</summary>
/// <param name="Letter">The symbol, a capital letter.</param>
/// <param name="MaximumKmh">The speed the symbol stands for, in km/h.</param>
/// <param name="Source">Where the figure was read, or that it is from memory.</param>
public sealed record SpeedSymbol(char Letter, double MaximumKmh, string Source);
