namespace SetupService.Domain.Tyres;

/// <summary>A speed symbol and the speed up to which the tyre carries its load under the conditions of the standards.</summary>
/// <param name="Letter">The symbol, a capital letter.</param>
/// <param name="MaximumKmh">The speed the symbol stands for, in km/h.</param>
/// <param name="IsFromMemory">True where no published table could be read for this symbol.</param>
/// <param name="Source">Where the figure was read, or that it is from memory.</param>
public sealed record SpeedSymbol(char Letter, double MaximumKmh, bool IsFromMemory, string Source);
