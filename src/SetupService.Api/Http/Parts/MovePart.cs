using SetupService.Api.Http.Contract;

namespace SetupService.Api.Http.Parts;

/// <summary>What one output would be at both ends of the range an assumed input plausibly lies in, the other inputs as they are.</summary>
public sealed record MovePart
{
    /// <summary>JSON Pointer to the output in this answer.</summary>
    [Sample("/rollDeg")]
    public required string Output { get; init; }

    /// <summary>At the lower end of the range, in the output's unit; null where the car has no such figure there.</summary>
    [Sample(2.9)]
    public required double? Lower { get; init; }

    /// <summary>At the upper end.</summary>
    [Sample(3.6)]
    public required double? Upper { get; init; }
}
