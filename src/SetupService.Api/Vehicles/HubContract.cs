using System.ComponentModel.DataAnnotations;
using System.Text.Json.Serialization;
using SetupService.Api.Http.Contract;
using SetupService.Domain.Vehicles;
using SetupService.Domain.Wheels;

namespace SetupService.Api.Vehicles;

/// <summary>The smallest gaps between the car and the wheel and tyre named beside it.</summary>
public sealed record ClearanceDocument
{
    /// <summary>Gap straight ahead to strut, spring seat, arm, hose or liner; negative = it touches by that much.</summary>
    [Range(-100, 500)]
    [Sample(14.0)]
    public double? InboardMm { get; set; }

    /// <summary>Gap level to the arch lip; negative = the wheel stands out beyond it.</summary>
    [Range(-200, 500)]
    [Sample(18.0)]
    public double? OutboardMm { get; set; }

    /// <summary>Gap from the tread to what is above or around it.</summary>
    [Range(-100, 500)]
    [Sample(12.0)]
    public double? RadialMm { get; set; }

    /// <summary>Gap inboard at the worse steering lock.</summary>
    [Range(-100, 500)]
    [Sample(11.0)]
    public double? InboardAtFullLockMm { get; set; }

    /// <summary>Gap from the tyre up to the spring seat or coil above it.</summary>
    [Range(-100, 500)]
    [Sample(9.0)]
    public double? SpringSeatMm { get; set; }

    /// <summary>Whether the gaps were taken with travel allowed for or at ride height; worst travel where left out.</summary>
    [Sample("worstTravel")]
    public ClearanceMeasuredAt? MeasuredAt { get; set; }

    /// <summary>Error of the measurement, to either side.</summary>
    [Range(0, 50)]
    [Sample(1.0)]
    public double? UncertaintyMm { get; set; }

    /// <summary>What was nearest inboard; where left out, the part that leaves least room.</summary>
    [Sample("body")]
    public InboardNeighbour? InboardTo { get; set; }

    /// <summary>Height of the narrowest place inboard above the ground; where left out, the height that leaves least room.</summary>
    [Range(0, 1500)]
    [Sample(380.0)]
    public double? InboardHeightMm { get; set; }
}

/// <summary>The hub and what the wheel is fastened to it with.</summary>
public sealed record HubDocument
{
    /// <summary>Number of fasteners and diameter of their circle in mm, as people write it.</summary>
    [StringLength(BoltCircleReader.MaximumLength)]
    [Sample("5x108")]
    public string? BoltCircle { get; set; }

    /// <summary>Diameter of the hub's spigot.</summary>
    [Range(30, 250)]
    [Sample(63.4)]
    public double? CentreBoreMm { get; set; }

    /// <summary>Thread of the bolts or studs.</summary>
    [StringLength(FastenerThreadReader.MaximumLength)]
    [Sample("M14x1.5")]
    public string? FastenerThread { get; set; }

    /// <summary>Whether bolts or nuts hold the wheel.</summary>
    [Sample("bolt")]
    public FastenerKind? FastenerKind { get; set; }

    /// <summary>Length of a bolt's shank below its seat, or of a stud beyond the hub face.</summary>
    [Range(5, 200)]
    [Sample(28.0)]
    public double? FastenerLengthMm { get; set; }

    /// <summary>Shape of the seat of the bolts or nuts.</summary>
    [Sample("cone60")]
    public FastenerSeat? FastenerSeat { get; set; }

    /// <summary>Smallest rim the brakes let pass, as the car's maker states it.</summary>
    [Range(8, 26)]
    [Sample(16.0)]
    public double? MinimumRimDiameterIn { get; set; }

    /// <summary>The brake caliper's outline as radii at stations from the hub face.</summary>
    [Count(1, 100)]
    public CaliperPointDocument[]? CaliperProfile { get; set; }
}

/// <summary>One point of the brake caliper's outline: how far out it reaches at a distance from the hub face.</summary>
public sealed record CaliperPointDocument
{
    /// <summary>Distance along the wheel's axis from the hub face; positive outboard, away from the car.</summary>
    [JsonRequired]
    [Range(-300, 300)]
    [Sample(18.0)]
    public double FromHubFaceMm { get; set; }

    /// <summary>Largest radius of the caliper at that station, from the wheel's axis.</summary>
    [JsonRequired]
    [Range(20, 400)]
    [Sample(165.0)]
    public double RadiusMm { get; set; }
}
