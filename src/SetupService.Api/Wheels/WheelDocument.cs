using System.ComponentModel.DataAnnotations;
using System.Text.Json.Serialization;
using SetupService.Api.Http.Contract;
using SetupService.Domain.Wheels;

namespace SetupService.Api.Wheels;

/// <summary>A wheel, with the spacer fitted under it. Diameter, width and offset are needed: as three members, or from its marking.</summary>
public sealed record WheelDocument
{
    /// <summary>What is stamped on the wheel, as people type it: size and offset, with bolt circle, centre bore and load rating where it has them. What it says need not be given again; members that contradict it are refused.</summary>
    [StringLength(WheelMarkingReader.MaximumLength)]
    [Sample("7.5Jx17 ET45")]
    public string? Marking { get; set; }

    /// <summary>Nominal rim diameter code. Needed where no marking tells it.</summary>
    [Range(8, 26)]
    [Sample(17.0)]
    public double? RimDiameterIn { get; set; }

    /// <summary>Rim width between the flanges. Needed where no marking tells it.</summary>
    [Range(3, 16)]
    [Sample(7.5)]
    public double? RimWidthIn { get; set; }

    /// <summary>Wheel offset: positive = mounting face outboard of the rim's centre plane. Needed where no marking tells it.</summary>
    [Range(-150, 150)]
    [Sample(45.0)]
    public double? OffsetMm { get; set; }

    /// <summary>Thickness of a spacer between hub and wheel; none where left out.</summary>
    [Range(0, 80)]
    [Sample(0.0)]
    public double? SpacerMm { get; set; }

    /// <summary>Diameter of the hole with which the spacer sits on the hub.</summary>
    [Range(30, 250)]
    [Sample(63.4)]
    public double? SpacerPilotBoreMm { get; set; }

    /// <summary>Diameter of the spacer's own spigot, on which the wheel sits.</summary>
    [Range(30, 250)]
    [Sample(63.4)]
    public double? SpacerPilotDiameterMm { get; set; }

    /// <summary>Whether the wheel is fastened to the spacer, and the spacer to the hub by fasteners of its own; false where left out.</summary>
    [Sample(false)]
    public bool? SpacerHasOwnFasteners { get; set; }

    /// <summary>Mass of the wheel without tyre.</summary>
    [Range(1, 80)]
    [Sample(9.6)]
    public double? MassKg { get; set; }

    /// <summary>Number of fasteners and diameter of their circle in mm, as people write it.</summary>
    [StringLength(BoltCircleReader.MaximumLength)]
    [Sample("5x108")]
    public string? BoltCircle { get; set; }

    /// <summary>Diameter of the centre hole.</summary>
    [Range(30, 250)]
    [Sample(63.4)]
    public double? CentreBoreMm { get; set; }

    /// <summary>Load the wheel is rated for by its maker, per wheel.</summary>
    [Range(50, 5000)]
    [Sample(650.0)]
    public double? LoadRatingKg { get; set; }

    /// <summary>Shape of the seat the bolts or nuts bear on.</summary>
    [Sample("cone60")]
    public FastenerSeat? FastenerSeat { get; set; }

    /// <summary>Thickness of the wheel between hub face and fastener seat.</summary>
    [Range(1, 80)]
    [Sample(14.0)]
    public double? PadThicknessMm { get; set; }

    /// <summary>The inside of the barrel as radii at stations from the mounting face, for the check against the brake.</summary>
    [Count(1, 100)]
    public ProfilePointDocument[]? InnerProfile { get; set; }
}

/// <summary>One point of a wheel's inner profile: the free radius inside the barrel at a distance from the mounting face.</summary>
public sealed record ProfilePointDocument
{
    /// <summary>Distance along the wheel's axis from the mounting face; positive outboard, away from the car.</summary>
    [JsonRequired]
    [Range(-300, 300)]
    [Sample(20.0)]
    public double FromMountingFaceMm { get; set; }

    /// <summary>Smallest radius of the wheel's inside at that station.</summary>
    [JsonRequired]
    [Range(20, 400)]
    [Sample(178.0)]
    public double RadiusMm { get; set; }
}
