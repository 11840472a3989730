using SetupService.Api.Http.Contract;
using SetupService.Api.Http.Shared;
using SetupService.Domain.Wear.BeforeAfter;

namespace SetupService.Api.Wear.BeforeAfter;

/// <summary>A rate before and after.</summary>
public sealed record RateChangePart
{
    /// <summary>Wear of the unit of use before: a lap, or 1000 km where the road is compared.</summary>
    public required UncertaintyResponse BeforeMm { get; init; }

    /// <summary>The same after; null where the readings after do not tell it.</summary>
    public required UncertaintyResponse? AfterMm { get; init; }

    /// <summary>After over before; null where the readings after do not tell it.</summary>
    public required RatioPart? Ratio { get; init; }

    /// <summary>Whether the 90 % range of the ratio leaves 1 out; null where the readings after do not tell.</summary>
    [Sample(true)]
    public required bool? Shown { get; init; }

    internal static RateChangePart? Of(RateChange? change) => change is not { } known ? null : new RateChangePart
    {
        BeforeMm = UncertaintyResponse.Of(known.BeforeMm),
        AfterMm = known.AfterMm is { } after ? UncertaintyResponse.Of(after) : null,
        Ratio = RatioPart.Of(known.Ratio),
        Shown = known.IsShown,
    };
}
