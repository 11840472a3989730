using SetupService.Api.Http;
using SetupService.Domain.Answers;
using SetupService.Domain.Tyres;

namespace SetupService.Api.Tyres;

/// <summary>The tables that callers may keep.</summary>
internal static class ReferenceTables
{
    public static CacheableTable<LoadIndexTableAnswer> LoadIndices { get; } = new(static () => new LoadIndexTableAnswer
    {
        LoadIndices = [.. LoadIndexTable.All.Select(static row => new LoadIndexRow
        {
            LoadIndex = row.LoadIndex,
            LoadCapacityKg = row.CapacityKg,
            Disputed = row.IsDisputed,
        })],
        Source = "French order of 24 October 1994 on tyres, Annex I, and the Dutch Regeling voertuigen, Annex VIII; where a row is disputed the smooth series gives another figure",
        Method = "tyre-load",
        Edition = Edition.Current,
    });

    public static CacheableTable<SpeedSymbolTableAnswer> SpeedSymbols { get; } = new(static () => new SpeedSymbolTableAnswer
    {
        SpeedSymbols = [.. SpeedSymbolTable.All.Select(static symbol => new SpeedSymbolRow
        {
            SpeedSymbol = symbol.Letter.ToString(),
            MaximumSpeedKmh = symbol.MaximumKmh,
            Source = symbol.Source,
        })],
        Method = "tyre-load",
        Edition = Edition.Current,
    });
}
