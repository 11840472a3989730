namespace SetupService.Domain.Suspension.Sweep;

/// <summary>What the figures of a whole axle need beside the corner; null where it is not known.</summary>
public readonly record struct AxleInputs
{
    /// <summary>Diameter at which toe is told where nobody says, mm: about the rim of a 16-inch wheel (common practice, no source).</summary>
    public const double DefaultMeasuringDiameterMm = 400;

    /// <summary>Whether this is the front axle.</summary>
    public bool? IsFront { get; init; }

    /// <summary>Distance between the axles, mm.</summary>
    public double? WheelbaseMm { get; init; }

    /// <summary>The whole car's centre of gravity above the ground, mm.</summary>
    public double? CentreOfGravityHeightMm { get; init; }

    /// <summary>Share of the braking force at the front axle, %.</summary>
    public double? BrakeShareFrontPct { get; init; }

    /// <summary>What drives the car.</summary>
    public AxleDrive? Drive { get; init; }

    /// <summary>True where both wheels of a twist beam move oppositely: braking and driving move both alike, so anti figures have no meaning there.</summary>
    public bool MovesOppositely { get; init; }

    /// <summary>Diameter at which a toe gauge measures, mm.</summary>
    public double MeasuringDiameterMm { get; init; }
}
