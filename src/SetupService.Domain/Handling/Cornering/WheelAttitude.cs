namespace SetupService.Domain.Handling.Cornering;

/// <summary>How one wheel stands in the turn.</summary>
public readonly record struct WheelAttitude
{
    /// <summary>Load on the road, N; 0 = lifted.</summary>
    public required double LoadN { get; init; }

    /// <summary>Travel from the present ride height, mm; positive = bump.</summary>
    public required double TravelMm { get; init; }

    /// <summary>Heading against the body, degrees, positive = left; toe included.</summary>
    public required double SteerDeg { get; init; }

    /// <summary>Slip angle, degrees, positive = pulling into the turn.</summary>
    public required double SlipDeg { get; init; }

    /// <summary>Side force, N, positive = into the turn.</summary>
    public required double SideForceN { get; init; }

    /// <summary>What the inclination to the road is made of.</summary>
    public required CamberContributions Camber { get; init; }

    /// <summary>Travel left to the bump stop, mm, negative = pressed; null where no stop is known.</summary>
    public required double? BumpLeftMm { get; init; }

    /// <summary>Travel left to full droop, mm, negative = against it; null where none is known.</summary>
    public required double? DroopLeftMm { get; init; }

    /// <summary>Whether it is the outer wheel of its axle.</summary>
    public required bool IsOuter { get; init; }

    /// <summary>True where the wheel is beyond what was read of its suspension: its camber, and so its inclination, is not known.</summary>
    public bool IsBeyondReadings { get; init; }

    /// <summary>Inclination to the road, degrees; negative = top towards the car's centre. With the last camber read where it <see cref="IsBeyondReadings"/>.</summary>
    public double InclinationAngleDeg => Camber.InclinationAngleDeg;

    /// <summary>Whether it presses its bump stop.</summary>
    public bool IsOnBumpStop => BumpLeftMm < 0;

    /// <summary>Whether it has left the road.</summary>
    public bool IsLifted => LoadN <= 0;
}
