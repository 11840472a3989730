using System.Text.Json.Serialization;
using SetupService.Api.Http.Contract;
using SetupService.Api.Http.Shared;

namespace SetupService.Api.Geometry.TravelSweeps;

/// <summary>The corner at one position; null where its kind has no such figure, or where an input is missing (<c>unknown</c> says which).</summary>
public sealed record TravelSweepRow
{
    /// <summary>Wheel travel; positive = bump.</summary>
    [Sample(-10.0)]
    public required double TravelMm { get; init; }

    /// <summary>Rack travel; positive = to the left.</summary>
    [Sample(0.0)]
    public required double RackMm { get; init; }

    /// <summary>Camber against the body; negative = top leaning to the car's centre.</summary>
    [Sample(-1.2)]
    public required double CamberDeg { get; init; }

    /// <summary>Toe of this wheel; positive = toe-in.</summary>
    [Sample(0.06)]
    public required double? ToeDeg { get; init; }

    /// <summary>Steer of this, the left wheel; positive = left.</summary>
    [Sample(-0.06)]
    public required double? SteerDeg { get; init; }

    /// <summary>Caster; positive = steering axis' top rearward.</summary>
    [Sample(5.3)]
    public required double? CasterDeg { get; init; }

    /// <summary>Steering-axis inclination; positive = top inboard.</summary>
    [Sample(13.1)]
    public required double? SteeringAxisInclinationDeg { get; init; }

    /// <summary>Movement of the contact centre outboard from the stated position.</summary>
    [Sample(-1.4)]
    public required double? HalfTrackChangeMm { get; init; }

    /// <summary>Movement of the contact centre forward from the stated position.</summary>
    [Sample(0.3)]
    public required double? ContactForwardMm { get; init; }

    /// <summary>Kinematic roll centre of a mirrored pair at equal travel, above the contact centre.</summary>
    [Sample(55.0)]
    public required double? RollCentreHeightMm { get; init; }

    /// <summary>Front-view instant centre, to the left of the car's centre plane.</summary>
    [Sample(-2895.0)]
    public required double? InstantCentreYMm { get; init; }

    /// <summary>Front-view instant centre's height, in the axes of the points.</summary>
    [Sample(334.0)]
    public required double? InstantCentreZMm { get; init; }

    /// <summary>Front-view swing arm: from the contact centre across the car to the instant centre; positive = the instant centre is inboard.</summary>
    [Sample(3645.0)]
    public required double? SwingArmMm { get; init; }

    /// <summary>Side-view instant centre, forward in the axes of the points.</summary>
    [Sample(-9800.0)]
    public required double? SideInstantCentreXMm { get; init; }

    /// <summary>Side-view instant centre's height, in the axes of the points.</summary>
    [Sample(374.0)]
    public required double? SideInstantCentreZMm { get; init; }

    /// <summary>Scrub radius; positive = the axis meets the ground inboard of the contact centre.</summary>
    [Sample(-6.8)]
    public required double? ScrubRadiusMm { get; init; }

    /// <summary>Mechanical trail; positive = the axis meets the ground ahead of the contact centre.</summary>
    [Sample(15.5)]
    public required double? MechanicalTrailMm { get; init; }

    /// <summary>Spring travel per wheel travel.</summary>
    [Sample(0.95)]
    public required double? SpringMotionRatio { get; init; }

    /// <summary>Damper travel per wheel travel.</summary>
    [Sample(0.95)]
    public required double? DamperMotionRatio { get; init; }

    /// <summary>Distance between the spring's points.</summary>
    [Sample(444.5)]
    public required double? SpringLengthMm { get; init; }

    /// <summary>Distance between the damper's points.</summary>
    [Sample(444.5)]
    public required double? DamperLengthMm { get; init; }

    /// <summary>Change of camber per mm of bump.</summary>
    [Sample(-0.0157)]
    public required double? CamberGainDegPerMm { get; init; }

    /// <summary>Degrees of camber against the body that the outer wheel gains per degree of roll; negative = it leans in against the roll.</summary>
    [Sample(-0.21)]
    public required double? CamberGainPerRoll { get; init; }

    /// <summary>Change of toe per 10 mm of bump; positive = toe-in.</summary>
    [Sample(-0.018)]
    public required double? BumpSteerDegPer10Mm { get; init; }

    /// <summary>The same at the measuring diameter.</summary>
    [Sample(-0.127)]
    public required double? BumpSteerMmPer10Mm { get; init; }

    /// <summary>Front axle: share of the load shifted by braking that the links carry, brakes at the wheels.</summary>
    [Sample(12.9)]
    public required double? AntiDivePct { get; init; }

    /// <summary>Rear axle: the same in braking; a front axle that drives alone: in driving.</summary>
    [Sample(43.9)]
    public required double? AntiLiftPct { get; init; }

    /// <summary>Rear axle that drives alone: share of the load shifted by driving that the links carry.</summary>
    [Sample(62.4)]
    public required double? AntiSquatPct { get; init; }

    /// <summary>Steer of the other, the right wheel; positive = left.</summary>
    [Sample(8.1)]
    public required double? OtherSteerDeg { get; init; }

    /// <summary>100 (inner − outer)/(inner − ideal outer): 0 = parallel wheels, 100 = their axes meet on the rear axle's line. The ideal outer angle belongs to the inner one. Null below 5° at the inner wheel, and where both steering axes meet the ground in one place.</summary>
    [Sample(21.5)]
    public required double? AckermannPct { get; init; }

    /// <summary>Diameter of the track of the outer front wheel's contact; null below 5° at the inner wheel.</summary>
    [Sample(10.9)]
    public required double? TurningCircleM { get; init; }

    /// <summary>How sure the figures are, where the gauge error of readings or pointErrorMm tells it; null where points are taken as exact.</summary>
    public required SweepRangesResponse? Ranges { get; init; }
}

/// <summary>The figures of a row with what the error of readings or points leaves open. Of readings camber and toe alone; of points every figure the row has, the rest left out.</summary>
public sealed record SweepRangesResponse
{
    /// <summary>Camber.</summary>
    public required UncertaintyResponse CamberDeg { get; init; }

    /// <summary>Toe; null where it was not read.</summary>
    public required UncertaintyResponse? ToeDeg { get; init; }

    /// <summary>Caster.</summary>
    [JsonIgnore(Condition = JsonIgnoreCondition.WhenWritingNull)]
    public UncertaintyResponse? CasterDeg { get; init; }

    /// <summary>Steering-axis inclination.</summary>
    [JsonIgnore(Condition = JsonIgnoreCondition.WhenWritingNull)]
    public UncertaintyResponse? SteeringAxisInclinationDeg { get; init; }

    /// <summary>Scrub radius.</summary>
    [JsonIgnore(Condition = JsonIgnoreCondition.WhenWritingNull)]
    public UncertaintyResponse? ScrubRadiusMm { get; init; }

    /// <summary>Mechanical trail.</summary>
    [JsonIgnore(Condition = JsonIgnoreCondition.WhenWritingNull)]
    public UncertaintyResponse? MechanicalTrailMm { get; init; }

    /// <summary>Movement of the contact centre outboard.</summary>
    [JsonIgnore(Condition = JsonIgnoreCondition.WhenWritingNull)]
    public UncertaintyResponse? HalfTrackChangeMm { get; init; }

    /// <summary>Movement of the contact centre forward.</summary>
    [JsonIgnore(Condition = JsonIgnoreCondition.WhenWritingNull)]
    public UncertaintyResponse? ContactForwardMm { get; init; }

    /// <summary>Front-view instant centre, across.</summary>
    [JsonIgnore(Condition = JsonIgnoreCondition.WhenWritingNull)]
    public UncertaintyResponse? InstantCentreYMm { get; init; }

    /// <summary>Front-view instant centre, height.</summary>
    [JsonIgnore(Condition = JsonIgnoreCondition.WhenWritingNull)]
    public UncertaintyResponse? InstantCentreZMm { get; init; }

    /// <summary>Front-view swing arm.</summary>
    [JsonIgnore(Condition = JsonIgnoreCondition.WhenWritingNull)]
    public UncertaintyResponse? SwingArmMm { get; init; }

    /// <summary>Roll centre.</summary>
    [JsonIgnore(Condition = JsonIgnoreCondition.WhenWritingNull)]
    public UncertaintyResponse? RollCentreHeightMm { get; init; }

    /// <summary>Side-view instant centre, forward.</summary>
    [JsonIgnore(Condition = JsonIgnoreCondition.WhenWritingNull)]
    public UncertaintyResponse? SideInstantCentreXMm { get; init; }

    /// <summary>Side-view instant centre, height.</summary>
    [JsonIgnore(Condition = JsonIgnoreCondition.WhenWritingNull)]
    public UncertaintyResponse? SideInstantCentreZMm { get; init; }

    /// <summary>Anti-dive.</summary>
    [JsonIgnore(Condition = JsonIgnoreCondition.WhenWritingNull)]
    public UncertaintyResponse? AntiDivePct { get; init; }

    /// <summary>Anti-lift.</summary>
    [JsonIgnore(Condition = JsonIgnoreCondition.WhenWritingNull)]
    public UncertaintyResponse? AntiLiftPct { get; init; }

    /// <summary>Anti-squat.</summary>
    [JsonIgnore(Condition = JsonIgnoreCondition.WhenWritingNull)]
    public UncertaintyResponse? AntiSquatPct { get; init; }

    /// <summary>Spring travel per wheel travel.</summary>
    [JsonIgnore(Condition = JsonIgnoreCondition.WhenWritingNull)]
    public UncertaintyResponse? SpringMotionRatio { get; init; }

    /// <summary>Length between the spring's points.</summary>
    [JsonIgnore(Condition = JsonIgnoreCondition.WhenWritingNull)]
    public UncertaintyResponse? SpringLengthMm { get; init; }

    /// <summary>Damper travel per wheel travel.</summary>
    [JsonIgnore(Condition = JsonIgnoreCondition.WhenWritingNull)]
    public UncertaintyResponse? DamperMotionRatio { get; init; }

    /// <summary>Length between the damper's points.</summary>
    [JsonIgnore(Condition = JsonIgnoreCondition.WhenWritingNull)]
    public UncertaintyResponse? DamperLengthMm { get; init; }

    /// <summary>Change of camber per mm of bump.</summary>
    [JsonIgnore(Condition = JsonIgnoreCondition.WhenWritingNull)]
    public UncertaintyResponse? CamberGainDegPerMm { get; init; }

    /// <summary>Camber gained per degree of roll.</summary>
    [JsonIgnore(Condition = JsonIgnoreCondition.WhenWritingNull)]
    public UncertaintyResponse? CamberGainPerRoll { get; init; }

    /// <summary>Change of toe per 10 mm of bump.</summary>
    [JsonIgnore(Condition = JsonIgnoreCondition.WhenWritingNull)]
    public UncertaintyResponse? BumpSteerDegPer10Mm { get; init; }

    /// <summary>The same at the measuring diameter.</summary>
    [JsonIgnore(Condition = JsonIgnoreCondition.WhenWritingNull)]
    public UncertaintyResponse? BumpSteerMmPer10Mm { get; init; }

    /// <summary>Steer of the right wheel.</summary>
    [JsonIgnore(Condition = JsonIgnoreCondition.WhenWritingNull)]
    public UncertaintyResponse? OtherSteerDeg { get; init; }

    /// <summary>Ackermann.</summary>
    [JsonIgnore(Condition = JsonIgnoreCondition.WhenWritingNull)]
    public UncertaintyResponse? AckermannPct { get; init; }

    /// <summary>Turning circle.</summary>
    [JsonIgnore(Condition = JsonIgnoreCondition.WhenWritingNull)]
    public UncertaintyResponse? TurningCircleM { get; init; }
}
