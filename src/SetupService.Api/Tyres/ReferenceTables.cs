using SetupService.Api.Http;
using SetupService.Api.Http.Contract;
using SetupService.Domain.Answers;
using SetupService.Domain.Tyres;

namespace SetupService.Api.Tyres;

/// <summary>The tables that callers may keep.</summary>
internal static class ReferenceTables
{
    public static CacheableAnswer<LoadIndexTableAnswer> LoadIndices { get; } = new(static () => new LoadIndexTableAnswer
    {
        LoadIndices = [.. LoadIndexTable.All.Select(static row => new LoadIndexRow
        {
            LoadIndex = row.LoadIndex,
            LoadCapacityKg = row.CapacityKg,
            IsDisputed = row.IsDisputed,
        })],
        Source = "French order of 24 October 1994 on tyres, Annex I, and the Dutch Regeling voertuigen, Annex VIII; where a row is disputed the smooth series gives another figure",
        Method = "tyre-load",
        Edition = Edition.Current,
    });

    public static CacheableAnswer<SpeedSymbolTableAnswer> SpeedSymbols { get; } = new(static () => new SpeedSymbolTableAnswer
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

/// <summary>The whole load index table.</summary>
public sealed record LoadIndexTableAnswer
{
    /// <summary>Every index from 0 to 200.</summary>
    public required LoadIndexRow[] LoadIndices { get; init; }

    /// <summary>Where the table comes from.</summary>
    [Sample("French order of 24 October 1994 on tyres, Annex I")]
    public required string Source { get; init; }

    /// <summary>The page under /docs/methods that says more.</summary>
    [Sample("tyre-load")]
    public required string Method { get; init; }

    /// <summary>Edition of model and tables.</summary>
    [Sample("2026.11")]
    public required string Edition { get; init; }
}

/// <summary>One load index.</summary>
public sealed record LoadIndexRow
{
    /// <summary>The index.</summary>
    [Sample(91)]
    public required int LoadIndex { get; init; }

    /// <summary>The load it stands for.</summary>
    [Sample(615.0)]
    public required double LoadCapacityKg { get; init; }

    /// <summary>Whether sources print another figure as well.</summary>
    [Sample(false)]
    public required bool IsDisputed { get; init; }
}

/// <summary>The whole speed symbol table.</summary>
public sealed record SpeedSymbolTableAnswer
{
    /// <summary>Every symbol, slowest first. Note that H stands between U and V.</summary>
    public required SpeedSymbolRow[] SpeedSymbols { get; init; }

    /// <summary>The page under /docs/methods that says more.</summary>
    [Sample("tyre-load")]
    public required string Method { get; init; }

    /// <summary>Edition of model and tables.</summary>
    [Sample("2026.11")]
    public required string Edition { get; init; }
}

/// <summary>One speed symbol.</summary>
public sealed record SpeedSymbolRow
{
    /// <summary>The symbol.</summary>
    [Sample("W")]
    public required string SpeedSymbol { get; init; }

    /// <summary>The speed it stands for.</summary>
    [Sample(270.0)]
    public required double MaximumSpeedKmh { get; init; }

    /// <summary>Where the figure comes from.</summary>
    [Sample("handbook table of load capacity against top speed")]
    public required string Source { get; init; }
}
