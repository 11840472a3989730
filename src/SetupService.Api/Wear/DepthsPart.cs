using SetupService.Api.Http.Contract;
using SetupService.Domain.Wear.Readings;

namespace SetupService.Api.Wear;

/// <summary>One figure at three places across a tread, in the unit of the member it stands under; outer and inner are away from and towards the car's centre.</summary>
public sealed record DepthsPart
{
    /// <summary>At the outer shoulder.</summary>
    [Sample(3.9)]
    public required double Outer { get; init; }

    /// <summary>In the middle.</summary>
    [Sample(5.6)]
    public required double Centre { get; init; }

    /// <summary>At the inner shoulder.</summary>
    [Sample(5.8)]
    public required double Inner { get; init; }

    internal static DepthsPart Of(AcrossTread<double> values) => new() { Outer = values.Outer, Centre = values.Centre, Inner = values.Inner };
}
