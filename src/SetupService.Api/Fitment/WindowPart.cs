using SetupService.Api.Http.Contract;
using SetupService.Domain.Answers;
using SetupService.Domain.Fitment;

namespace SetupService.Api.Fitment;

/// <summary>The feasible offsets of one rim width.</summary>
public sealed record WindowPart
{
    /// <summary>The rim width.</summary>
    [Sample(8.0)]
    public required double RimWidthIn { get; init; }

    /// <summary>Whether any offset fits.</summary>
    [Sample("fits")]
    public required WindowStatus Status { get; init; }

    /// <summary>The least offset that fails no check of room; null where no outboard gap is known.</summary>
    [Sample(31.2)]
    public required double? MinimumOffsetMm { get; init; }

    /// <summary>The greatest offset that fails no check of room; null where no inboard gap is known.</summary>
    [Sample(49.6)]
    public required double? MaximumOffsetMm { get; init; }

    /// <summary>The places that set the ends.</summary>
    public required WindowLimitsPart LimitedBy { get; init; }

    /// <summary>The place that no offset can clear; null where there is none.</summary>
    [Sample("radialClearance")]
    public required CheckId? BlockedBy { get; init; }

    /// <summary>Whether the tyre permits a rim of this width, as the check of the rim width tells it.</summary>
    [Sample("pass")]
    public required CheckStatus RimWidthStatus { get; init; }
}
