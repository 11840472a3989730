using SetupService.Api.Http.Contract;
using SetupService.Api.Http.Shared;
using SetupService.Domain.Answers;
using SetupService.Domain.Numerics.Statistics;

namespace SetupService.Api.Wear.BeforeAfter;

/// <summary>A ratio of two rates. Its range may be open above, where the lower rate is not shown to be above zero.</summary>
public sealed record RatioPart
{
    /// <summary>The ratio with its 90 % range; null where that is open.</summary>
    public required UncertaintyResponse? Range { get; init; }

    /// <summary>The least it is, with 95 %; null where it is not bounded from below either.</summary>
    [Sample(0.55)]
    public required double? AtLeast { get; init; }

    internal static RatioPart? Of(RatioRange? ratio) => ratio is not { } range ? null : new RatioPart
    {
        Range = range is { Value: { } value, AtLeast: { } least, AtMost: { } most } ? UncertaintyResponse.Of(new Uncertainty(value, least, most, Uncertainty.NinetyPct)) : null,
        AtLeast = range.AtLeast,
    };
}
