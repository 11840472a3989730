using SetupService.Api.Http.Contract;

namespace SetupService.Api.Host;

/// <summary>Which service runs, so that a result can be reproduced.</summary>
public sealed record VersionAnswer
{
    /// <summary>Edition of model and tables; every answer names it too.</summary>
    [Sample("2026.11")]
    public required string Edition { get; init; }

    /// <summary>The commit the service was built from, or "unknown" where it was built outside a repository.</summary>
    [Sample("de27f1d")]
    public required string Commit { get; init; }

    /// <summary>The runtime it runs on.</summary>
    [Sample(".NET 10.0.12")]
    public required string Runtime { get; init; }
}
