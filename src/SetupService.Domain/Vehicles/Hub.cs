using SetupService.Domain.Wheels;

namespace SetupService.Domain.Vehicles;

/// <summary>What the wheel is bolted to.</summary>
public sealed record Hub
{
    /// <summary>The bolt circle of the hub.</summary>
    public BoltCircle? BoltCircle { get; init; }

    /// <summary>Diameter of the spigot that centres the wheel, mm.</summary>
    public double? CentreBoreMm { get; init; }

    /// <summary>Thread of bolts or studs.</summary>
    public FastenerThread? FastenerThread { get; init; }

    /// <summary>Bolts or nuts.</summary>
    public FastenerKind? FastenerKind { get; init; }

    /// <summary>Bolt: length under the seat. Stud: length standing out of the hub face. mm.</summary>
    public double? FastenerLengthMm { get; init; }

    /// <summary>Seat of the fastener.</summary>
    public FastenerSeat? FastenerSeat { get; init; }

    /// <summary>Smallest rim diameter code that clears the brakes, inches, as the car's papers state it.</summary>
    public double? MinimumRimDiameterIn { get; init; }

    /// <summary>
    /// Outline of the caliper: station from the hub face (outboard positive) and radius from the wheel axis,
    /// in ascending order of station; empty where it was not measured.
    /// </summary>
    public IReadOnlyList<ProfilePoint> CaliperProfile { get; init; } = [];
}

/// <summary>How the wheel is held to the hub.</summary>
public enum FastenerKind
{
    /// <summary>Bolts screwed into the hub.</summary>
    Bolt,

    /// <summary>Nuts on studs that stand in the hub.</summary>
    Nut,
}
