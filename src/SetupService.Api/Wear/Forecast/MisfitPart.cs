using SetupService.Api.Http.Contract;
using SetupService.Domain.Wear.Readings;

namespace SetupService.Api.Wear.Forecast;

/// <summary>A reading further from straight wear than the gauge errs.</summary>
public sealed record MisfitPart
{
    /// <summary>JSON Pointer to the depth in the request.</summary>
    [Sample("/readings/3/depthMm/inner")]
    public required string Input { get; init; }

    /// <summary>The zone.</summary>
    [Sample("inner")]
    public required TreadPlace Zone { get; init; }

    /// <summary>How much deeper it reads than the line; negative where shallower.</summary>
    [Sample(0.9)]
    public required double AboveLineMm { get; init; }
}
