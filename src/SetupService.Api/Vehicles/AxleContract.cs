using System.ComponentModel.DataAnnotations;
using System.Text.Json.Serialization;
using SetupService.Api.Http.Contract;
using SetupService.Api.Tyres;
using SetupService.Api.Vehicles.Suspensions;
using SetupService.Api.Wheels;
using SetupService.Domain.Vehicles;
using SetupService.Domain.Wheels;

namespace SetupService.Api.Vehicles;

/// <summary>One axle: its wheels, tyres, hubs, gaps, angles, springs. The left corner stands for both unless said otherwise.</summary>
public sealed record AxleDocument
{
    /// <summary>Distance between the contact centres of left and right.</summary>
    [Range(900, 2200)]
    [Sample(1510.0)]
    public double? TrackMm { get; set; }

    /// <summary>Unsprung mass per wheel, wheel and tyre included.</summary>
    [Range(5, 500)]
    [Sample(38.0)]
    public double? UnsprungMassKg { get; set; }

    /// <summary>Largest load the axle may carry, as the car's plate states it.</summary>
    [Range(50, 5000)]
    [Sample(870.0)]
    public double? MaximumAxleLoadKg { get; set; }

    /// <summary>Cold tyre pressure the car's plate states for this axle, for the load it is mostly driven with.</summary>
    [Range(80, 500)]
    [Sample(230.0)]
    public double? PlacardPressureKpa { get; set; }

    /// <summary>Lowest tyre load index the car's papers allow.</summary>
    [Range(0, 200)]
    [Sample(87)]
    public int? MinimumLoadIndex { get; set; }

    /// <summary>Height of the wheel centre above the ground, measured with the car as driven; estimated from tyre and load where left out.</summary>
    [Range(100, 600)]
    [Sample(302.0)]
    public double? LoadedRadiusMm { get; set; }

    /// <summary>The wheel fitted now.</summary>
    public WheelDocument? Wheel { get; set; }

    /// <summary>The tyre fitted now.</summary>
    public TyreDocument? Tyre { get; set; }

    /// <summary>The hub and its fasteners.</summary>
    public HubDocument? Hub { get; set; }

    /// <summary>The gaps around the wheel and tyre fitted now.</summary>
    public ClearanceDocument? Clearance { get; set; }

    /// <summary>Wheel and steering-axis angles.</summary>
    public AlignmentDocument? Alignment { get; set; }

    /// <summary>The suspension's geometry, by kind.</summary>
    public SuspensionDocument? Suspension { get; set; }

    /// <summary>The main spring.</summary>
    public SpringDocument? Spring { get; set; }

    /// <summary>The damper.</summary>
    public DamperDocument? Damper { get; set; }

    /// <summary>The bump stop.</summary>
    public BumpStopDocument? BumpStop { get; set; }

    /// <summary>The anti-roll bar.</summary>
    public AntiRollBarDocument? AntiRollBar { get; set; }

    /// <summary>How far the wheel gives under side force.</summary>
    public ComplianceDocument? Compliance { get; set; }

    /// <summary>Height of the roll centre above the ground at ride height.</summary>
    [Range(-500, 1000)]
    [Sample(55.0)]
    public double? RollCentreHeightMm { get; set; }

    /// <summary>Wheel travel from ride height to the first touch of the bump stop.</summary>
    [Range(0, 500)]
    [Sample(68.0)]
    public double? BumpTravelMm { get; set; }

    /// <summary>Wheel travel from ride height to full droop.</summary>
    [Range(0, 500)]
    [Sample(85.0)]
    public double? ReboundTravelMm { get; set; }

    /// <summary>How much higher the body stands at this axle than where points, angles and travels are stated; negative = lowered.</summary>
    [Range(-150, 150)]
    [Sample(-15.0)]
    public double? RideHeightChangeMm { get; set; }

    /// <summary>How far the wheel angles can be set with the parts fitted.</summary>
    public AdjustableDocument? Adjustable { get; set; }
}

/// <summary>
/// How far each wheel angle can be set with the parts fitted: a range, or null where it cannot be set at all. Left out, the kind of suspension tells: a twist beam and a trailing arm have
/// nothing to set, of other kinds nobody knows.
/// </summary>
public sealed record AdjustableDocument
{
    private CamberRangeDocument? _camberDeg;
    private ToeRangeDocument? _toeDeg;
    private CasterRangeDocument? _casterDeg;

    /// <summary>Camber; null = not at all.</summary>
    public CamberRangeDocument? CamberDeg
    {
        get => _camberDeg;
        set => (_camberDeg, IsCamberSaid) = (value, true);
    }

    /// <summary>Toe of each wheel; null = not at all.</summary>
    public ToeRangeDocument? ToeDeg
    {
        get => _toeDeg;
        set => (_toeDeg, IsToeSaid) = (value, true);
    }

    /// <summary>Caster; null = not at all.</summary>
    public CasterRangeDocument? CasterDeg
    {
        get => _casterDeg;
        set => (_casterDeg, IsCasterSaid) = (value, true);
    }

    /// <summary>Whether camber was sent, as a range or as null.</summary>
    internal bool IsCamberSaid { get; private set; }

    /// <summary>Whether toe was sent.</summary>
    internal bool IsToeSaid { get; private set; }

    /// <summary>Whether caster was sent.</summary>
    internal bool IsCasterSaid { get; private set; }
}

/// <summary>Ends of a camber setting.</summary>
public sealed record CamberRangeDocument
{
    /// <summary>The most negative.</summary>
    [JsonRequired]
    [Range(-15, 15)]
    [Sample(-3.0)]
    public double From { get; set; }

    /// <summary>The least negative.</summary>
    [JsonRequired]
    [Range(-15, 15)]
    [Sample(0.0)]
    public double To { get; set; }
}

/// <summary>Ends of a toe setting of each wheel; positive = toe-in.</summary>
public sealed record ToeRangeDocument
{
    /// <summary>The lowest.</summary>
    [JsonRequired]
    [Range(-5, 5)]
    [Sample(-0.5)]
    public double From { get; set; }

    /// <summary>The highest.</summary>
    [JsonRequired]
    [Range(-5, 5)]
    [Sample(0.5)]
    public double To { get; set; }
}

/// <summary>Ends of a caster setting.</summary>
public sealed record CasterRangeDocument
{
    /// <summary>Least.</summary>
    [JsonRequired]
    [Range(-5, 20)]
    [Sample(5.0)]
    public double From { get; set; }

    /// <summary>Most.</summary>
    [JsonRequired]
    [Range(-5, 20)]
    [Sample(8.0)]
    public double To { get; set; }
}

/// <summary>Wheel and steering-axis angles at ride height: the left wheel's, and the right's where they differ.</summary>
public sealed record AlignmentDocument : AlignmentAnglesDocument
{
    /// <summary>The right wheel's angles, only where they differ from the left's.</summary>
    [JsonPropertyOrder(1)]
    public AlignmentAnglesDocument? Right { get; set; }
}

/// <summary>Wheel and steering-axis angles of one wheel at ride height; those of a right wheel only where they differ from the left's.</summary>
public record AlignmentAnglesDocument
{
    /// <summary>Camber as a gauge on the wheel reads it; negative = top leaning to the car's centre.</summary>
    [Range(-15, 15)]
    [Sample(-0.7)]
    public double? CamberDeg { get; set; }

    /// <summary>Caster; positive = steering axis' top rearward.</summary>
    [Range(-5, 20)]
    [Sample(6.4)]
    public double? CasterDeg { get; set; }

    /// <summary>Toe of this wheel; positive = toe-in.</summary>
    [Range(-5, 5)]
    [Sample(0.08)]
    public double? ToeDeg { get; set; }

    /// <summary>Steering-axis inclination; positive = top inboard.</summary>
    [Range(-10, 40)]
    [Sample(13.1)]
    public double? SteeringAxisInclinationDeg { get; set; }
}

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
