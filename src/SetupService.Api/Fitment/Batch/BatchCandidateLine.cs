using System.Text.Json.Serialization;
using SetupService.Api.Http.Contract;

namespace SetupService.Api.Fitment.Batch;

/// <summary>A line that asks about one candidate on the car set before it.</summary>
public sealed record BatchCandidateLine
{
    /// <summary>What the caller calls this candidate: a text or a whole number, given back as it came.</summary>
    [Sample("wheel-17-8-42")]
    public LineId? Id { get; set; }

    /// <summary>The wheel and tyre to be checked.</summary>
    [JsonRequired]
    public FittingDocument Candidate { get; set; } = null!;
}
