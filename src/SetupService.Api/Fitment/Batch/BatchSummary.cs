using System.Text.Json.Serialization;
using SetupService.Api.Http.Contract;

namespace SetupService.Api.Fitment.Batch;

/// <summary>The counts of a batch.</summary>
public sealed record BatchSummary
{
    /// <summary>Number of lines that got an answer line: answered and refused together.</summary>
    [Sample(3)]
    public required long LineCount { get; init; }

    /// <summary>Number of lines answered with a verdict.</summary>
    [Sample(2)]
    public required long AnsweredCount { get; init; }

    /// <summary>Number of lines answered with a problem.</summary>
    [Sample(1)]
    public required long RefusedCount { get; init; }

    /// <summary>True when everything sent was read to its end; false when the service stopped waiting for a line.</summary>
    [Sample(true)]
    public required bool IsComplete { get; init; }

    /// <summary>Why the batch is not complete; left out where it is.</summary>
    [JsonIgnore(Condition = JsonIgnoreCondition.WhenWritingNull)]
    [Sample("No bytes came for 30 s, so the service stopped waiting. Send the lines after the last one answered again.")]
    public string? Reason { get; init; }
}
