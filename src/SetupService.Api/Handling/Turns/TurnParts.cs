using System.Text.Json.Serialization;
using SetupService.Api.Http.Contract;
using SetupService.Api.Http.Shared;
using SetupService.Domain.Handling.Cornering;

namespace SetupService.Api.Handling.Turns;

/// <summary>The four wheels.</summary>
public sealed record TurnWheelsResponse
{
    /// <summary>Front left.</summary>
    public required TurnWheelResponse FrontLeft { get; init; }

    /// <summary>Front right.</summary>
    public required TurnWheelResponse FrontRight { get; init; }

    /// <summary>Rear left.</summary>
    public required TurnWheelResponse RearLeft { get; init; }

    /// <summary>Rear right.</summary>
    public required TurnWheelResponse RearRight { get; init; }
}

/// <summary>How one wheel stands in the turn.</summary>
public sealed record TurnWheelResponse
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

    /// <summary>Force along the car; negative = braked. Only with longitudinalG.</summary>
    [JsonIgnore(Condition = JsonIgnoreCondition.WhenWritingNull)]
    [Sample(-1100.0)]
    public double? LongitudinalForceN { get; init; }

    /// <summary>Inclination to the road; negative = top towards the car's centre plane. Null where an inner wheel is beyond what was read of its suspension.</summary>
    [Sample(0.4)]
    public required double? InclinationDeg { get; init; }

    /// <summary>What that is made of.</summary>
    public required InclinationContributionsResponse Contributions { get; init; }

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

/// <summary>What a wheel's inclination to the road is made of, degrees; the five add up to it.</summary>
public sealed record InclinationContributionsResponse
{
    /// <summary>Camber as set.</summary>
    [Sample(-2.0)]
    public required double Static { get; init; }

    /// <summary>What travel, and a changed ride height, do; null where an inner wheel is beyond what was read of its suspension.</summary>
    [Sample(-0.4)]
    public required double? Kinematic { get; init; }

    /// <summary>What the roll of the body does.</summary>
    [Sample(2.6)]
    public required double Roll { get; init; }

    /// <summary>What steering about the inclined axis does.</summary>
    [Sample(-0.3)]
    public required double Steer { get; init; }

    /// <summary>What side force does by the give of the suspension.</summary>
    [Sample(0.5)]
    public required double Compliance { get; init; }
}

/// <summary>Both axles.</summary>
public sealed record TurnAxlesResponse
{
    /// <summary>The front axle.</summary>
    public required TurnAxleResponse Front { get; init; }

    /// <summary>The rear axle.</summary>
    public required TurnAxleResponse Rear { get; init; }
}

/// <summary>How load crosses one axle against rest, half the difference of outer and inner wheel; the three parts add up to the whole.</summary>
public sealed record TurnAxleResponse
{
    /// <summary>Load that crosses from the inner to the outer wheel.</summary>
    [Sample(1900.0)]
    public required double LoadTransferN { get; init; }

    /// <summary>What springs, bar and stops carry across.</summary>
    [Sample(1500.0)]
    public required double ElasticN { get; init; }

    /// <summary>What the links carry across, from side force and roll centre.</summary>
    [Sample(240.0)]
    public required double GeometricN { get; init; }

    /// <summary>What the unsprung masses move across by themselves.</summary>
    [Sample(160.0)]
    public required double UnsprungN { get; init; }

    /// <summary>Load that braking, driving and the air add to the axle. Only with longitudinalG.</summary>
    [JsonIgnore(Condition = JsonIgnoreCondition.WhenWritingNull)]
    [Sample(770.0)]
    public double? AddedLoadN { get; init; }

    /// <summary>Force along the car of both tyres; negative = braked. Only with longitudinalG.</summary>
    [JsonIgnore(Condition = JsonIgnoreCondition.WhenWritingNull)]
    [Sample(-2600.0)]
    public double? LongitudinalForceN { get; init; }

    /// <summary>That force by the most the tyres could give as brakes or differential share it; above 100 they cannot. Null where they hold nothing, or without longitudinalG.</summary>
    [JsonIgnore(Condition = JsonIgnoreCondition.WhenWritingNull)]
    [Sample(25.0)]
    public double? LongitudinalUsedPct { get; init; }

    /// <summary>How far the body rose at this axle; positive = jacked up.</summary>
    [Sample(1.2)]
    public required double HeaveMm { get; init; }

    /// <summary>Share of the most its two tyres can give at one slip angle that its side force takes; above 100 they cannot hold the turn, and 1000 is told where it is more, or where they give nothing.</summary>
    [Sample(88.0)]
    public required double GripUsedPct { get; init; }

    /// <summary>Slip angle of the axle; positive = pulling into the turn.</summary>
    [Sample(4.0)]
    public required double SlipDeg { get; init; }

    /// <summary>Height of the roll centre above the ground at ride height.</summary>
    [Sample(55.0)]
    public required double RollCentreHeightMm { get; init; }
}

/// <summary>Which end of the car gives way first, and by which tyres that is told.</summary>
public sealed record BalanceResponse
{
    /// <summary>Front axle's share of the load that crosses the car; null where hardly any does.</summary>
    [Sample(54.0)]
    public required double? FrontLoadTransferPct { get; init; }

    /// <summary>Change of steer per g beyond what the turn's own geometry takes, radius held, at the road wheels (ISO 8855's understeer gradient); positive = understeer. Null where an axle uses more than nine tenths of its grip, a wheel has lifted, or there is no turn a little harder.</summary>
    [Sample(1.3)]
    public required double? UndersteerDegPerG { get; init; }

    /// <summary>Which axle gives up first, what each uses of its grip here, how the steer grows, and whose tyres these are.</summary>
    [Sample("The front gives up first, at 1.02 g; the rear holds 1.08 g. Here the front uses 88 % of its grip, the rear 82 %. …")]
    public required string Text { get; init; }
}

/// <summary>What each axle can hold: the lateral acceleration at which its share of the mass needs the most its two tyres give, the other axle supplying what it needs. With <c>detail=turn</c> null, and first unclear.</summary>
public sealed record LimitResponse
{
    /// <summary>The front axle's limit, g; null where the car has no equilibrium up to there.</summary>
    public required UncertaintyResponse? Front { get; init; }

    /// <summary>The rear axle's limit, g; null where the car has no equilibrium up to there.</summary>
    public required UncertaintyResponse? Rear { get; init; }

    /// <summary>The rear's limit less the front's, g, by joint draws of all inputs: what both have in common, such as the road, leaves it alone. Null where either is.</summary>
    public required UncertaintyResponse? Margin { get; init; }

    /// <summary>The axle that gives up first; unclear where neither does in nine draws of ten.</summary>
    [Sample("front")]
    public required FirstAxle First { get; init; }

    /// <summary>Probability that the front gives up first, percent; null where the margin is not known.</summary>
    [Sample(95.0)]
    public required double? FrontFirstPct { get; init; }

    /// <summary>The same in words.</summary>
    [Sample("The front gives up first, at 1.02 g; the rear holds 1.08 g.")]
    public required string Text { get; init; }
}
