using System.ComponentModel.DataAnnotations;
using System.Text.Json.Serialization;
using SetupService.Api.Http.Contract;
using SetupService.Api.Http.Shared;
using SetupService.Api.Vehicles;
using SetupService.Domain.Geometry.Alignment;
using SetupService.Domain.Suspension.Steering;
using SetupService.Domain.Vehicles;

namespace SetupService.Api.Geometry.Alignment;

/// <summary>A car with its alignments, and the ranges they are to lie in.</summary>
public sealed record AlignmentRequest
{
    /// <summary>The car. Read of it: each axle's alignment (right where it differs), the front track for the setback, and where an axle stands higher or lower than where its angles were taken its suspension.</summary>
    [JsonRequired]
    public VehicleDocument Vehicle { get; set; } = null!;

    /// <summary>The ranges the angles are to lie in.</summary>
    public AlignmentTargetsDocument? Targets { get; set; }

    /// <summary>How much further back the right front wheel stands than the left one; negative = further ahead.</summary>
    [Range(-200, 200)]
    [Sample(3.0)]
    public double? SetbackMm { get; set; }

    /// <summary>Diameter at which toe is told in mm, as a rule the rim's edge; 400 where left out.</summary>
    [Range(200, 1000)]
    [Sample(450.0)]
    public double? MeasuringDiameterMm { get; set; }
}

/// <summary>The ranges the angles of both axles are to lie in.</summary>
public sealed record AlignmentTargetsDocument
{
    /// <summary>Front axle.</summary>
    public AxleTargetsDocument? Front { get; set; }

    /// <summary>Rear axle.</summary>
    public AxleTargetsDocument? Rear { get; set; }
}

/// <summary>The ranges the angles of one axle are to lie in; only what is given is compared.</summary>
public sealed record AxleTargetsDocument
{
    /// <summary>Camber of each wheel.</summary>
    public AngleRangeDocument? CamberDeg { get; set; }

    /// <summary>Caster of each wheel.</summary>
    public AngleRangeDocument? CasterDeg { get; set; }

    /// <summary>Toe of each wheel; positive = toe-in.</summary>
    public AngleRangeDocument? ToeDeg { get; set; }

    /// <summary>Steering-axis inclination of each wheel.</summary>
    public AngleRangeDocument? SteeringAxisInclinationDeg { get; set; }

    /// <summary>Total toe: the sum of both wheels'.</summary>
    public AngleRangeDocument? TotalToeDeg { get; set; }

    /// <summary>Camber, left less right.</summary>
    public AngleRangeDocument? CrossCamberDeg { get; set; }

    /// <summary>Caster, left less right.</summary>
    public AngleRangeDocument? CrossCasterDeg { get; set; }
}

/// <summary>A range an angle is to lie in, degrees, both ends belonging to it.</summary>
public sealed record AngleRangeDocument
{
    /// <summary>Lower end.</summary>
    [JsonRequired]
    [Range(-40, 40)]
    [Sample(-1.5)]
    public double From { get; set; }

    /// <summary>Upper end.</summary>
    [JsonRequired]
    [Range(-40, 40)]
    [Sample(-0.5)]
    public double To { get; set; }
}

/// <summary>What follows from the alignment measured; null where a reading is missing.</summary>
public sealed record AlignmentAnswer
{
    /// <summary>Front axle.</summary>
    public required AxleAlignmentResponse Front { get; init; }

    /// <summary>Rear axle.</summary>
    public required AxleAlignmentResponse Rear { get; init; }

    /// <summary>Each angle for which a range was given; empty without targets.</summary>
    public required AngleComparisonResponse[] Comparisons { get; init; }

    /// <summary>Thrust angle: where the rear wheels push the car to, against its centre plane; positive = points left.</summary>
    [Sample(-0.05)]
    public required double? ThrustAngleDeg { get; init; }

    /// <summary>Mean heading of the front wheels against the thrust line: how far they stand from where the car runs straight; positive = to the left.</summary>
    [Sample(0.05)]
    public required double? SteerAheadDeg { get; init; }

    /// <summary>Toe of the front left wheel against the thrust line.</summary>
    public required ToeResponse? FrontLeftToeToThrustLine { get; init; }

    /// <summary>Toe of the front right wheel against the thrust line.</summary>
    public required ToeResponse? FrontRightToeToThrustLine { get; init; }

    /// <summary>Angle of the line through both front wheel centres against square to the car; positive = right wheel further back, a sign of this service's own.</summary>
    [Sample(0.11)]
    public required double? SetbackAngleDeg { get; init; }

    /// <summary>The diameter every toe in mm is told at.</summary>
    [Sample(450.0)]
    public required double MeasuringDiameterMm { get; init; }

    /// <summary>The figures left null, each by its JSON Pointer in this answer, and the readings it lacks by theirs in the request.</summary>
    public required UnknownResponse[] Unknown { get; init; }

    /// <summary>The page under /docs/methods that derives every figure.</summary>
    [Sample("alignment")]
    public required string Method { get; init; }

    /// <summary>Edition of model and tables.</summary>
    [Sample("2026.11")]
    public required string Edition { get; init; }

    /// <summary>The calls that usually follow.</summary>
    public required NextCallResponse[] Next { get; init; }

    /// <summary>What was taken although nobody gave it.</summary>
    public required AssumptionResponse[] Assumptions { get; init; }

    /// <summary>What can hurt somebody who acts on the answer.</summary>
    public required CautionResponse[] Cautions { get; init; }
}

/// <summary>What follows from the readings of an axle; null where one is missing.</summary>
public sealed record AxleAlignmentResponse
{
    /// <summary>Total toe: the sum of both wheels'.</summary>
    public required ToeResponse? TotalToe { get; init; }

    /// <summary>Camber, left less right.</summary>
    [Sample(0.1)]
    public required double? CrossCamberDeg { get; init; }

    /// <summary>Caster, left less right.</summary>
    [Sample(0.2)]
    public required double? CrossCasterDeg { get; init; }

    /// <summary>Steering-axis inclination, left less right.</summary>
    [Sample(0.1)]
    public required double? CrossSteeringAxisInclinationDeg { get; init; }

    /// <summary>Included angle, left less right.</summary>
    [Sample(0.2)]
    public required double? CrossIncludedAngleDeg { get; init; }

    /// <summary>What the sides' difference in inclination and included angle hints at; null where the right side was not measured.</summary>
    public required IncludedAngleHintResponse? IncludedAngleHint { get; init; }

    /// <summary>Left wheel.</summary>
    public required WheelAlignmentResponse Left { get; init; }

    /// <summary>Right wheel.</summary>
    public required WheelAlignmentResponse Right { get; init; }
}

/// <summary>What follows from the readings of one wheel; null where one is missing.</summary>
public sealed record WheelAlignmentResponse
{
    /// <summary>Camber as the car stands.</summary>
    [Sample(-0.7)]
    public required double? CamberDeg { get; init; }

    /// <summary>Caster as the car stands.</summary>
    [Sample(6.4)]
    public required double? CasterDeg { get; init; }

    /// <summary>Steering-axis inclination as the car stands.</summary>
    [Sample(13.1)]
    public required double? SteeringAxisInclinationDeg { get; init; }

    /// <summary>Toe of this wheel against the car's centre plane.</summary>
    public required ToeResponse? Toe { get; init; }

    /// <summary>Inclination and camber together: the angle between steering axis and wheel plane in front view, which only the parts between joint and hub decide.</summary>
    [Sample(12.4)]
    public required double? IncludedAngleDeg { get; init; }
}

/// <summary>One toe in the three units the trade has for it; positive = toe-in.</summary>
public sealed record ToeResponse
{
    /// <summary>In degrees.</summary>
    [Sample(0.08)]
    public required double ToeDeg { get; init; }

    /// <summary>In minutes of arc.</summary>
    [Sample(4.8)]
    public required double ToeArcmin { get; init; }

    /// <summary>How much nearer to the car's centre plane the front of the wheel is than its rear, over measuringDiameterMm; of an axle, both wheels together.</summary>
    [Sample(0.63)]
    public required double ToeMm { get; init; }

    /// <summary>The part of a toe; null where it is not known.</summary>
    internal static ToeResponse? From(ToeFigures? toe) => toe is { } known
        ? new() { ToeDeg = known.Deg, ToeArcmin = known.Minutes, ToeMm = known.Mm }
        : null;
}

/// <summary>What the two sides' inclinations and included angles hint at. An inspection of the parts decides.</summary>
public sealed record IncludedAngleHintResponse
{
    /// <summary>Where to look first.</summary>
    [Sample("noDifference")]
    public required IncludedAngleHint Hint { get; init; }

    /// <summary>The hint as sentences, with the figures of the case.</summary>
    [Sample("Left and right differ by 0.10° in steering-axis inclination and by 0.20° in included angle. That is within the 0.50° in which sides count as equal; it does not show that parts are sound.")]
    public required string Text { get; init; }
}

/// <summary>An angle beside the range it is to lie in.</summary>
public sealed record AngleComparisonResponse
{
    /// <summary>The axle.</summary>
    [Sample("front")]
    public required CarAxle Axle { get; init; }

    /// <summary>The wheel's side; null for a figure of both wheels.</summary>
    [Sample("left")]
    public required WheelSide? Side { get; init; }

    /// <summary>The angle, as the range is named.</summary>
    [Sample("camberDeg")]
    public required string Angle { get; init; }

    /// <summary>The angle as the car stands; null where it is not known.</summary>
    [Sample(-0.3)]
    public required double? ValueDeg { get; init; }

    /// <summary>The range.</summary>
    public required RangeResponse RangeDeg { get; init; }

    /// <summary>Whether it lies in the range; null where it is not known.</summary>
    [Sample(false)]
    public required bool? IsWithin { get; init; }

    /// <summary>By how much it lies outside: positive = above the range, negative = below, 0 = within; null where it is not known.</summary>
    [Sample(0.2)]
    public required double? OutsideByDeg { get; init; }
}
