using SetupService.Api.Http.Contract;

namespace SetupService.Api.Handling.CamberTarget;

/// <summary>A static camber on the straight, by a tread of springs across its width: an upper bound, as a belt bends.</summary>
public sealed record StraightPart
{
    /// <summary>The static camber.</summary>
    [Sample(-2.6)]
    public required double CamberDeg { get; init; }

    /// <summary>Share of the load on the third of the tread towards the car's centre; 33.3 upright.</summary>
    [Sample(39.0)]
    public required double InnerShoulderLoadPct { get; init; }

    /// <summary>Share of the load on the outer third.</summary>
    [Sample(27.0)]
    public required double OuterShoulderLoadPct { get; init; }

    /// <summary>Contact area left to brake on, by that of the tyre upright.</summary>
    [Sample(99.5)]
    public required double BrakingPatchPct { get; init; }

    /// <summary>Road wear of the inner third by the mean of the tread.</summary>
    [Sample(1.5)]
    public required double InnerShoulderWearRatio { get; init; }

    /// <summary>The lesser of it with the least and the most background slip plausible.</summary>
    [Sample(1.3)]
    public required double InnerShoulderWearRatioLower { get; init; }

    /// <summary>The greater of the two.</summary>
    [Sample(1.9)]
    public required double InnerShoulderWearRatioUpper { get; init; }
}
