using SetupService.Api.Http.Contract;
using SetupService.Api.Http.Shared;
using SetupService.Domain.Wear.Pressures;

namespace SetupService.Api.Wear.Temperatures;

/// <summary>What a tyre's pressures tell; gauge pressures.</summary>
public sealed record TyrePressurePart
{
    /// <summary>The least cold pressure the load needs; null where that is not told.</summary>
    [Sample(193.0)]
    public required double? LeastColdKpa { get; init; }

    /// <summary>Temperature of the gas when hot, by the ideal gas law.</summary>
    public required UncertaintyResponse? HotGasC { get; init; }

    /// <summary>The cold setting for the hot aim on a day like this.</summary>
    public required ColdSettingPart? ColdNow { get; init; }

    /// <summary>The same at nextColdTemperatureC.</summary>
    public required ColdSettingPart? ColdNext { get; init; }

    /// <summary>What the gauge reads cold at nextColdTemperatureC where nothing is let in or out.</summary>
    public required UncertaintyResponse? UntouchedColdKpa { get; init; }

    /// <summary>What that comes to hot.</summary>
    public required UncertaintyResponse? UntouchedHotKpa { get; init; }

    /// <summary>What to do while the tyre is hot.</summary>
    public required HotAdjustmentPart? HotNow { get; init; }

    /// <summary>What the cold aim comes to hot on a day like this.</summary>
    public required UncertaintyResponse? HotOnColdAimKpa { get; init; }

    /// <summary>Why cold and hot pressure cannot be of one filling that got warm.</summary>
    [Sample("none")]
    public required PressureContradiction Contradiction { get; init; }

    /// <summary>The same as sentences, what is unsafe first.</summary>
    [Sample("On a day like this set 197 kPa (193 kPa to 201 kPa) for 245 kPa hot.")]
    public required string[] Texts { get; init; }

    /// <summary>Key of the method page.</summary>
    [Sample("tyre-pressure")]
    public required string Method { get; init; }
}
