using SetupService.Api.Http.Contract;

namespace SetupService.Api.Handling.Cornering;

/// <summary>How one wheel stands in the turn.</summary>
public sealed record WheelPart
{
    /// <summary>Whether it is the outer wheel of its axle.</summary>
    [Sample(true)]
    public required bool IsOuter { get; init; }

    /// <summary>Load on the road.</summary>
    [Sample(5290.0)]
    public required double LoadN { get; init; }

    /// <summary>Travel from ride height; positive = bump.</summary>
    [Sample(31.0)]
    public required double TravelMm { get; init; }

    /// <summary>Heading of the wheel plane against the body, toe and give included; positive = left.</summary>
    [Sample(5.9)]
    public required double SteerDeg { get; init; }

    /// <summary>Slip angle; positive = pulling into the turn.</summary>
    [Sample(4.1)]
    public required double SlipDeg { get; init; }

    /// <summary>Side force; positive = into the turn.</summary>
    [Sample(4700.0)]
    public required double SideForceN { get; init; }

    /// <summary>Inclination to the road; negative = top towards the car's centre plane. Null where an inner wheel is beyond what was read of its suspension.</summary>
    [Sample(0.4)]
    public required double? InclinationDeg { get; init; }

    /// <summary>What that is made of.</summary>
    public required ContributionsPart Contributions { get; init; }

    /// <summary>Travel left to the bump stop; negative = pressed. Null where bumpTravelMm is not given.</summary>
    [Sample(37.0)]
    public required double? BumpLeftMm { get; init; }

    /// <summary>Travel left to full droop; negative = against it. Null where reboundTravelMm is not given.</summary>
    [Sample(116.0)]
    public required double? DroopLeftMm { get; init; }

    /// <summary>Whether it presses its bump stop.</summary>
    [Sample(false)]
    public required bool IsOnBumpStop { get; init; }

    /// <summary>Whether it has left the road.</summary>
    [Sample(false)]
    public required bool IsLifted { get; init; }
}
