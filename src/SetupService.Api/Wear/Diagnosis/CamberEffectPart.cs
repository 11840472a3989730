using SetupService.Api.Http.Contract;

namespace SetupService.Api.Wear.Diagnosis;

/// <summary>What another static camber does to the wear of an axle, by the wear model, at the same use.</summary>
public sealed record CamberEffectPart
{
    /// <summary>Change of the static camber of each wheel; negative = more negative.</summary>
    [Sample(-1.2)]
    public required double CamberChangeDeg { get; init; }

    /// <summary>Wear predicted over the same use, left tyre.</summary>
    public required DepthsPart LeftWornMm { get; init; }

    /// <summary>Wear predicted over the same use, right tyre.</summary>
    public required DepthsPart RightWornMm { get; init; }

    /// <summary>By what the life of the axle's fastest-worn place is multiplied.</summary>
    [Sample(1.3)]
    public required double LifeRatio { get; init; }
}
