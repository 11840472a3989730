namespace SetupService.Domain.Vehicles;

/// <summary>
/// The smallest gaps between the car and the wheel and tyre it carries now, as a person measured them.
/// A gap that was not measured is null.
/// </summary>
public sealed record Clearance
{
    /// <summary>Straight ahead, inboard: to strut, spring seat, arm, hose or liner; mm.</summary>
    public double? InboardMm { get; init; }

    /// <summary>Inboard at the worse steering lock; mm.</summary>
    public double? InboardAtFullLockMm { get; init; }

    /// <summary>Level to the arch lip; mm.</summary>
    public double? OutboardMm { get; init; }

    /// <summary>From the tread to what is above or around it; mm.</summary>
    public double? RadialMm { get; init; }

    /// <summary>From the tyre to the spring seat or coil that stands above it; mm.</summary>
    public double? SpringSeatMm { get; init; }

    /// <summary>Where the suspension stood; null where nobody said.</summary>
    public ClearanceMeasuredAt? MeasuredAt { get; init; }

    /// <summary>Half-width of the measuring error, mm; null where nobody said.</summary>
    public double? UncertaintyMm { get; init; }

    /// <summary>What was nearest inboard; null where nobody said.</summary>
    public InboardNeighbour? InboardTo { get; init; }

    /// <summary>Height of the narrowest place inboard above the ground, mm; null where nobody said.</summary>
    public double? InboardHeightMm { get; init; }
}

/// <summary>Where in its travel the suspension stood when the gaps were measured.</summary>
public enum ClearanceMeasuredAt
{
    /// <summary>The person has already allowed for travel: the gap is the smallest over all of it.</summary>
    WorstTravel,

    /// <summary>At ride height; travel still comes off.</summary>
    RideHeight,
}

/// <summary>The part of the car that the wheel comes nearest to inboard.</summary>
public enum InboardNeighbour
{
    /// <summary>The body, a liner, or a hose held by it: the wheel moves against it by all of its travel.</summary>
    Body,

    /// <summary>The strut that carries the upright: it moves with the wheel.</summary>
    Strut,

    /// <summary>A suspension arm or link: it follows the wheel in part.</summary>
    Arm,
}
