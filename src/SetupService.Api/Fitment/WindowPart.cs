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

    /// <summary>Whether any offset fits: unknown where neither end is known.</summary>
    [Sample("pass")]
    public required WindowStatus Status { get; init; }

    /// <summary>The offsets that fail no check of room.</summary>
    public required OffsetRange OffsetMm { get; init; }

    /// <summary>The places that set the ends.</summary>
    public required WindowLimits LimitedBy { get; init; }

    /// <summary>The place that no offset can clear; null where there is none.</summary>
    [Sample("radialClearance")]
    public required CheckId? BlockedBy { get; init; }

    /// <summary>Whether the tyre permits a rim of this width, as the check of the rim width tells it.</summary>
    [Sample("pass")]
    public required CheckStatus RimWidthStatus { get; init; }
}

/// <summary>Offsets from one end to the other; <c>from</c> above <c>to</c> where nothing fits between them.</summary>
public sealed record OffsetRange
{
    /// <summary>The least offset: with any less the wheel stands out too far; null where no outboard gap is known.</summary>
    [Sample(31.2)]
    public required double? From { get; init; }

    /// <summary>The greatest offset: with any more the wheel stands in too far; null where no inboard gap is known.</summary>
    [Sample(49.6)]
    public required double? To { get; init; }
}

/// <summary>The places that set the ends of a window.</summary>
public sealed record WindowLimits
{
    /// <summary>The place that sets the least offset; null where that end is not known.</summary>
    [Sample("outboardClearance")]
    public required CheckId? From { get; init; }

    /// <summary>The place that sets the greatest offset; null where that end is not known.</summary>
    [Sample("inboardClearance")]
    public required CheckId? To { get; init; }
}
