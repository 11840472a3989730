using SetupService.Api.Http.Contract;

namespace SetupService.Api.Handling.WhatIf;

/// <summary>What a change is judged by: values of a car, or how far a change moves them; null where a figure is not known.</summary>
public sealed record WhatIfFiguresPart
{
    /// <summary>Roll of the body in the turn.</summary>
    [Sample(3.1)]
    public required double? RollDeg { get; init; }

    /// <summary>Inclination of the outer front wheel to the road.</summary>
    [Sample(0.4)]
    public required double? FrontInclinationDeg { get; init; }

    /// <summary>Inclination of the outer rear wheel to the road.</summary>
    [Sample(-0.2)]
    public required double? RearInclinationDeg { get; init; }

    /// <summary>Front axle's share of the load transfer.</summary>
    [Sample(56.0)]
    public required double? FrontLoadTransferPct { get; init; }

    /// <summary>Understeer gradient at this turn.</summary>
    [Sample(2.1)]
    public required double? UndersteerDegPerG { get; init; }

    /// <summary>Travel left to the bump stop at the outer front wheel in the turn.</summary>
    [Sample(24.0)]
    public required double? FrontBumpLeftMm { get; init; }

    /// <summary>Travel left to the bump stop at the outer rear wheel in the turn.</summary>
    [Sample(31.0)]
    public required double? RearBumpLeftMm { get; init; }

    /// <summary>Front ride frequency, the tyre in series.</summary>
    [Sample(1.41)]
    public required double? FrontRideFrequencyHz { get; init; }

    /// <summary>Rear ride frequency, the tyre in series.</summary>
    [Sample(1.5)]
    public required double? RearRideFrequencyHz { get; init; }

    /// <summary>Mean of bump and rebound damping ratio in front.</summary>
    [Sample(0.37)]
    public required double? FrontDampingRatio { get; init; }

    /// <summary>Mean of bump and rebound damping ratio behind.</summary>
    [Sample(0.3)]
    public required double? RearDampingRatio { get; init; }

    /// <summary>How much higher the front stands than the car as given.</summary>
    [Sample(-12.0)]
    public required double? FrontRideHeightChangeMm { get; init; }

    /// <summary>How much higher the rear stands than the car as given.</summary>
    [Sample(-8.0)]
    public required double? RearRideHeightChangeMm { get; init; }
}
