using SetupService.Api.Http.Contract;
using SetupService.Api.Http.Shared;
using SetupService.Domain.Wear.Pressures;

namespace SetupService.Api.Wear.Temperatures;

/// <summary>A cold pressure to set for the hot aim; gauge.</summary>
public sealed record ColdSettingPart
{
    /// <summary>What to set: never less than the load needs; null where it would be outside 80 to 500 kPa.</summary>
    [Sample(197.0)]
    public required double? SetKpa { get; init; }

    /// <summary>What the hot aim alone asks for; null where it would be outside 80 to 500 kPa.</summary>
    public required UncertaintyResponse? NeededKpa { get; init; }

    /// <summary>What the setting comes to hot.</summary>
    public required UncertaintyResponse? HotThenKpa { get; init; }

    /// <summary>Whether the load needs more than the hot aim asks for.</summary>
    [Sample(false)]
    public required bool IsHeldByLoad { get; init; }

    internal static ColdSettingPart? Of(ColdSetting? setting) => setting is not { } one ? null : new()
    {
        SetKpa = one.SetKpa,
        NeededKpa = one.NeededKpa is { } needed ? UncertaintyResponse.Of(needed) : null,
        HotThenKpa = one.HotThenKpa is { } hot ? UncertaintyResponse.Of(hot) : null,
        IsHeldByLoad = one.IsHeldByLoad,
    };
}
