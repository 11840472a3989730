using SetupService.Api.Http.Contract;
using SetupService.Api.Http.Shared;
using SetupService.Domain.Vehicles;

namespace SetupService.Api.Wear.Diagnosis;

/// <summary>The wear model of an axle after it learned from its treads.</summary>
public sealed record AxleWearPart
{
    /// <summary>Which axle.</summary>
    [Sample("front")]
    public required CarAxle Axle { get; init; }

    /// <summary>By how many degrees the static camber is less negative than what stands the outer tread flat on average of its work; negative = it is more.</summary>
    public required UncertaintyResponse CamberShortDeg { get; init; }

    /// <summary>The same before the treads were looked at: by the cornering model alone.</summary>
    public required UncertaintyResponse CamberShortBeforehandDeg { get; init; }

    /// <summary>Mean wear of a thousand kilometres of road.</summary>
    public required UncertaintyResponse WearPer1000KmMm { get; init; }

    /// <summary>Mean wear of a lap.</summary>
    public required UncertaintyResponse WearPerLapMm { get; init; }

    /// <summary>How many depths it learned from.</summary>
    [Sample(6)]
    public required int DepthsLearnedFromCount { get; init; }

    /// <summary>What a static camber set by that much would do at the same use; null where no use is told.</summary>
    public required CamberEffectPart? WithCamberSet { get; init; }

    /// <summary>The camber with which the axle's fastest-worn place lasts longest at the same use, within 5° of the present one; null where no use is told.</summary>
    public required CamberEffectPart? LongestLife { get; init; }
}
