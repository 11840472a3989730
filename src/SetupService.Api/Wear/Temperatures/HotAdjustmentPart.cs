using SetupService.Api.Http.Contract;
using SetupService.Api.Http.Shared;
using SetupService.Domain.Wear.Pressures;

namespace SetupService.Api.Wear.Temperatures;

/// <summary>What to let out of or into the tyre while it is as hot as read.</summary>
public sealed record HotAdjustmentPart
{
    /// <summary>Change of the gauge's reading; negative = let out.</summary>
    [Sample(-17.0)]
    public required double ChangeKpa { get; init; }

    /// <summary>What it then reads hot.</summary>
    [Sample(245.0)]
    public required double HotThenKpa { get; init; }

    /// <summary>What it reads when it is as cold again as before.</summary>
    public required UncertaintyResponse ColdThenKpa { get; init; }

    /// <summary>Whether the load needs more than the hot aim leaves.</summary>
    [Sample(false)]
    public required bool IsHeldByLoad { get; init; }

    internal static HotAdjustmentPart? Of(HotAdjustment? adjustment) => adjustment is not { } one ? null : new()
    {
        ChangeKpa = one.ChangeKpa,
        HotThenKpa = one.HotThenKpa,
        ColdThenKpa = UncertaintyResponse.Of(one.ColdThenKpa),
        IsHeldByLoad = one.IsHeldByLoad,
    };
}
