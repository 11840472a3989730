using SetupService.Api.Http.Contract;

namespace SetupService.Api.Host;

/// <summary>Whether the service is up.</summary>
public sealed record HealthAnswer
{
    /// <summary>live: the process answers; ready: it takes work.</summary>
    [Sample("live")]
    public required string Status { get; init; }
}
