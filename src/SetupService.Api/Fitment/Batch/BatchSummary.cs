using SetupService.Api.Http.Contract;

namespace SetupService.Api.Fitment.Batch;

/// <summary>What a batch came to.</summary>
public sealed record BatchSummary
{
    /// <summary>Number of lines answered.</summary>
    [Sample(3)]
    public required long Lines { get; init; }

    /// <summary>Number of them answered with a verdict.</summary>
    [Sample(2)]
    public required long Succeeded { get; init; }

    /// <summary>Number of them answered with a problem.</summary>
    [Sample(1)]
    public required long Failed { get; init; }

    /// <summary>True where everything sent was read to its end; false where the service stopped waiting for a line.</summary>
    [Sample(true)]
    public required bool Completed { get; init; }
}
