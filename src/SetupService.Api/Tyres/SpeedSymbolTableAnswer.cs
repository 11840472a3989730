using SetupService.Api.Http.Contract;

namespace SetupService.Api.Tyres;

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
