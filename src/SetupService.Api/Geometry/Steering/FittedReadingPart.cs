using SetupService.Api.Http.Contract;

namespace SetupService.Api.Geometry.Steering;

/// <summary>A camber reading beside what the fitted axis says.</summary>
public sealed record FittedReadingPart
{
    /// <summary>Steer angle of the reading; positive = left.</summary>
    [Sample(20.0)]
    public required double SteerDeg { get; init; }

    /// <summary>Camber read.</summary>
    [Sample(2.35)]
    public required double CamberDeg { get; init; }

    /// <summary>Camber the fitted axis gives there.</summary>
    [Sample(2.31)]
    public required double FittedCamberDeg { get; init; }

    /// <summary>Camber read less the fitted one.</summary>
    [Sample(0.04)]
    public required double ResidualDeg { get; init; }
}
