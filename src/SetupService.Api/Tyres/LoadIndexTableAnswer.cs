using SetupService.Api.Http.Contract;

namespace SetupService.Api.Tyres;

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
