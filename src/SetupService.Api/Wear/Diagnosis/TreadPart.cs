using SetupService.Api.Http.Contract;
using SetupService.Api.Http.Shared;
using SetupService.Domain.Vehicles;

namespace SetupService.Api.Wear.Diagnosis;

/// <summary>What the depths of one tyre come down to; null where it was not read.</summary>
public sealed record TreadPart
{
    /// <summary>Which wheel.</summary>
    [Sample("frontLeft")]
    public required WheelPosition Position { get; init; }

    /// <summary>Depth at the grooves next to the shoulders and in the middle, by a parabola through what was read.</summary>
    public required DepthsPart? DepthMm { get; init; }

    /// <summary>The least depth read anywhere.</summary>
    [Sample(3.8)]
    public required double? LeastDepthMm { get; init; }

    /// <summary>Mean wear over the tread.</summary>
    public required UncertaintyResponse? WornMm { get; init; }

    /// <summary>Wear of the outer shoulder less that of the inner one, as a share of the mean wear.</summary>
    public required UncertaintyResponse? OuterLessInnerPct { get; init; }

    /// <summary>Wear of the centre less the mean of the shoulders', as a share of the mean wear.</summary>
    public required UncertaintyResponse? CentreLessShouldersPct { get; init; }

    /// <summary>Root-mean-square difference of depth round the tyre beyond the gauge's error.</summary>
    public required UncertaintyResponse? RoundTyreMm { get; init; }

    /// <summary>Depth the wear model predicts after it learned from the axle.</summary>
    public required DepthsPart? PredictedDepthMm { get; init; }

    /// <summary>Age in years on the day of the readings.</summary>
    [Sample(4.2)]
    public required double? AgeYears { get; init; }
}
