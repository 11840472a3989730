using SetupService.Api.Http.Contract;
using SetupService.Domain.Fitment;

namespace SetupService.Api.Fitment;

/// <summary>The places that set the ends of a window.</summary>
public sealed record WindowLimitsPart
{
    /// <summary>The place that sets the least offset; null where that end is not known.</summary>
    [Sample("outboardClearance")]
    public required CheckId? Minimum { get; init; }

    /// <summary>The place that sets the greatest offset; null where that end is not known.</summary>
    [Sample("inboardClearance")]
    public required CheckId? Maximum { get; init; }
}
