using SetupService.Api.Http.Contract;
using SetupService.Api.Http.Shared;
using SetupService.Domain.Wear.Pressures;

namespace SetupService.Api.Wear.Temperatures;

/// <summary>What a tyre's pressures tell; gauge pressures.</summary>
public sealed record TyrePressureResponse
{
    /// <summary>The least cold pressure the load as driven needs, else half the axle's greatest; no setting goes below it.</summary>
    [Sample(193.0)]
    public required double? LeastColdKpa { get; init; }

    /// <summary>What the car's plate states, cold; on the road it comes first.</summary>
    [Sample(230.0)]
    public required double? PlateKpa { get; init; }

    /// <summary>Temperature of the gas when hot, by the ideal gas law.</summary>
    public required UncertaintyResponse? HotGasC { get; init; }

    /// <summary>The cold setting for the hot aim on a day like this.</summary>
    public required ColdSettingResponse? ColdNow { get; init; }

    /// <summary>The same at nextColdTemperatureC.</summary>
    public required ColdSettingResponse? ColdNext { get; init; }

    /// <summary>What the gauge reads cold at nextColdTemperatureC where nothing is let in or out.</summary>
    public required UncertaintyResponse? UntouchedColdKpa { get; init; }

    /// <summary>What that comes to hot.</summary>
    public required UncertaintyResponse? UntouchedHotKpa { get; init; }

    /// <summary>What to do while the tyre is hot.</summary>
    public required HotAdjustmentResponse? HotNow { get; init; }

    /// <summary>What the cold aim comes to hot on a day like this.</summary>
    public required UncertaintyResponse? HotOnColdAimKpa { get; init; }

    /// <summary>Why cold and hot pressure cannot be of one filling that got warm.</summary>
    [Sample("none")]
    public required PressureContradiction Contradiction { get; init; }

    /// <summary>The same in sentences, what is unsafe first.</summary>
    [Sample("On a day like this set 197 kPa (193 kPa to 201 kPa) for 245 kPa hot.")]
    public required string Text { get; init; }

    /// <summary>Key of the method page.</summary>
    [Sample("tyre-pressure")]
    public required string Method { get; init; }
}

/// <summary>A cold pressure to set for the hot aim; gauge.</summary>
public sealed record ColdSettingResponse
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

    /// <summary>By how much the hot aim is then passed; 0 where it is reached.</summary>
    [Sample(0.0)]
    public required double OverAimKpa { get; init; }

    internal static ColdSettingResponse? From(ColdSetting? setting) => setting is not { } one ? null : new()
    {
        SetKpa = one.SetKpa,
        NeededKpa = UncertaintyResponse.From(one.NeededKpa),
        HotThenKpa = UncertaintyResponse.From(one.HotThenKpa),
        IsHeldByLoad = one.IsHeldByLoad,
        OverAimKpa = one.OverAimKpa,
    };
}

/// <summary>What to let out of or into the tyre while it is as hot as read.</summary>
public sealed record HotAdjustmentResponse
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

    internal static HotAdjustmentResponse? From(HotAdjustment? adjustment) => adjustment is not { } one ? null : new()
    {
        ChangeKpa = one.ChangeKpa,
        HotThenKpa = one.HotThenKpa,
        ColdThenKpa = UncertaintyResponse.From(one.ColdThenKpa),
        IsHeldByLoad = one.IsHeldByLoad,
    };
}
