using System.ComponentModel.DataAnnotations;
using System.Text.Json.Serialization;
using SetupService.Api.Http.Contract;
using SetupService.Api.Http.Shared;
using SetupService.Api.Vehicles;
using SetupService.Domain.Handling.Ride;

namespace SetupService.Api.Handling.Ride;

/// <summary>A car, and where asked a change of it.</summary>
public sealed record RideRequest
{
    /// <summary>The car. Needed: both axle loads (or all corner weights), and each axle's track (or points) and spring rate.</summary>
    [JsonRequired]
    public VehicleDocument Vehicle { get; set; } = null!;

    /// <summary>What is changed; the answer is then for the car after it, with the car before beside it.</summary>
    public CarChangeDocument? Change { get; set; }

    /// <summary>The damping ratios, bump and rebound averaged, that serve; 0.25 to 0.7 where left out.</summary>
    public DampingRatioRangeDocument? DampingRatioRange { get; set; }
}

/// <summary>A range of damping ratios.</summary>
public sealed record DampingRatioRangeDocument
{
    /// <summary>The lowest that suits.</summary>
    [JsonRequired]
    [Range(0.01, 3)]
    [Sample(0.3)]
    public double From { get; set; }

    /// <summary>The highest that suits.</summary>
    [JsonRequired]
    [Range(0.01, 3)]
    [Sample(0.7)]
    public double To { get; set; }
}

/// <summary>How much of a ride is worked out.</summary>
public enum RideDetail
{
    /// <summary>Both axles; the turns in which stops are met stay null, and of what was assumed only value and range are told.</summary>
    Axles,

    /// <summary>Also those turns, and what the answer becomes at both ends of every assumed range.</summary>
    Full,
}

/// <summary>How the car rides: after the change where there is one, else as it is.</summary>
public sealed record RideAnswer
{
    /// <summary>The front axle.</summary>
    public required RideAxleResponse Front { get; init; }

    /// <summary>The rear axle.</summary>
    public required RideAxleResponse Rear { get; init; }

    /// <summary>Both ends against each other.</summary>
    public required FlatRideResponse FlatRide { get; init; }

    /// <summary>The car before the change; left out where nothing was changed.</summary>
    [JsonIgnore(Condition = JsonIgnoreCondition.WhenWritingNull)]
    public RideStateResponse? Before { get; init; }

    /// <summary>What is null above, and why.</summary>
    public required UnknownResponse[] Unknown { get; init; }

    /// <summary>Key of the method page.</summary>
    [Sample("ride")]
    public required string Method { get; init; }

    /// <summary>Edition of model and tables.</summary>
    [Sample("2026.11")]
    public required string Edition { get; init; }

    /// <summary>The calls that usually follow.</summary>
    public required NextCallResponse[] Next { get; init; }

    /// <summary>What was used although nobody gave it.</summary>
    public required AssumptionResponse[] Assumptions { get; init; }

    /// <summary>What can hurt somebody.</summary>
    public required CautionResponse[] Cautions { get; init; }
}

/// <summary>How the car rode before the change.</summary>
public sealed record RideStateResponse
{
    /// <summary>The front axle.</summary>
    public required RideAxleResponse Front { get; init; }

    /// <summary>The rear axle.</summary>
    public required RideAxleResponse Rear { get; init; }

    /// <summary>Both ends against each other.</summary>
    public required FlatRideResponse FlatRide { get; init; }
}

/// <summary>How one axle rides, per wheel, both sides alike.</summary>
public sealed record RideAxleResponse
{
    /// <summary>Sprung mass on one corner.</summary>
    [Sample(307.0)]
    public required double SprungMassKg { get; init; }

    /// <summary>Spring travel by wheel travel at ride height.</summary>
    [Sample(0.94)]
    public required double SpringMotionRatio { get; init; }

    /// <summary>Force in the spring at rest.</summary>
    [Sample(3203.0)]
    public required double SpringForceN { get; init; }

    /// <summary>Rate of the spring at the wheel, with what a motion ratio that changes over travel adds.</summary>
    [Sample(23.9)]
    public required double WheelRateNPerMm { get; init; }

    /// <summary>The same over travel.</summary>
    public required TravelRateResponse[] WheelRates { get; init; }

    /// <summary>Vertical rate of the tyre.</summary>
    [Sample(210.0)]
    public required double VerticalRateNPerMm { get; init; }

    /// <summary>Spring and tyre in series.</summary>
    [Sample(21.4)]
    public required double RideRateNPerMm { get; init; }

    /// <summary>Undamped frequency of the sprung mass on spring and tyre in series.</summary>
    [Sample(1.33)]
    public required double RideFrequencyHz { get; init; }

    /// <summary>Undamped frequency of the sprung mass on the spring alone.</summary>
    [Sample(1.4)]
    public required double SpringFrequencyHz { get; init; }

    /// <summary>Frequency on the spring with the mean damping, 0 where it swings no more; null where the damper is not known.</summary>
    [Sample(1.3)]
    public required double? DampedFrequencyHz { get; init; }

    /// <summary>Undamped frequency of the unsprung mass between spring and tyre.</summary>
    [Sample(12.5)]
    public required double WheelHopFrequencyHz { get; init; }

    /// <summary>Damping at the wheel that just keeps the sprung mass from swinging on the spring.</summary>
    [Sample(5416.0)]
    public required double CriticalDampingNsPerM { get; init; }

    /// <summary>Damping by that.</summary>
    public required DampingRatioResponse DampingRatio { get; init; }

    /// <summary>Sprung weight by wheel rate.</summary>
    [Sample(126.0)]
    public required double StaticDeflectionMm { get; init; }

    /// <summary>Length of the spring at ride height; null where its lengths are not known.</summary>
    [Sample(221.0)]
    public required double? SpringLengthMm { get; init; }

    /// <summary>How much higher the car stands than before the change; 0 where nothing was changed; null where the spring's lengths do not tell.</summary>
    [Sample(-12.0)]
    public required double? RideHeightChangeMm { get; init; }

    /// <summary>Wheel travel left to the bump stop at rest; null where it is not known.</summary>
    [Sample(56.0)]
    public required double? BumpLeftMm { get; init; }

    /// <summary>Wheel travel left to full droop at rest; null where it is not known.</summary>
    [Sample(97.0)]
    public required double? DroopLeftMm { get; init; }

    /// <summary>Vertical acceleration, its own weight included, at which the bump stop is met; 1 = the car stands on it.</summary>
    [Sample(1.44)]
    public required double? StopMetAtVerticalG { get; init; }

    /// <summary>Lateral acceleration at which the outer wheel meets its bump stop; null where it rolls over first, cannot be told, or with <c>detail=axles</c>.</summary>
    [Sample(1.2)]
    public required double? StopMetAtLateralG { get; init; }

    /// <summary>Spring travel left to its coils touching with the bump stop pressed flat; negative = they touch before.</summary>
    [Sample(21.0)]
    public required double? CoilClearanceMm { get; init; }

    /// <summary>How far the spring is still pressed together at full droop; negative = loose in its seats.</summary>
    [Sample(18.0)]
    public required double? SeatedAtDroopMm { get; init; }

    /// <summary>Whether the dampers can stay.</summary>
    public required DampersResponse Dampers { get; init; }
}

/// <summary>The spring at one wheel travel; the spring itself is taken as linear.</summary>
public sealed record TravelRateResponse
{
    /// <summary>Wheel travel from ride height; positive = bump.</summary>
    [Sample(20.0)]
    public required double TravelMm { get; init; }

    /// <summary>Spring travel by wheel travel.</summary>
    [Sample(0.95)]
    public required double SpringMotionRatio { get; init; }

    /// <summary>Rate at the wheel.</summary>
    [Sample(24.6)]
    public required double WheelRateNPerMm { get; init; }
}

/// <summary>Damping at the wheel by what is critical for wheel rate and sprung corner mass; null where the damper is not known.</summary>
public sealed record DampingRatioResponse
{
    /// <summary>In bump.</summary>
    [Sample(0.24)]
    public required double? Bump { get; init; }

    /// <summary>In rebound.</summary>
    [Sample(0.51)]
    public required double? Rebound { get; init; }

    /// <summary>Mean of both, which a whole swing feels.</summary>
    [Sample(0.375)]
    public required double? Mean { get; init; }
}

/// <summary>Whether an axle's dampers can stay.</summary>
public sealed record DampersResponse
{
    /// <summary>The verdict on keeping them.</summary>
    [Sample("keep")]
    public required DamperVerdict Verdict { get; init; }

    /// <summary>The verdict as a sentence, with its numbers.</summary>
    [Sample("The mean damping ratio is 0.41, before 0.50; 0.25 to 0.70 serves.")]
    public required string Text { get; init; }

    /// <summary>What a person in the car would feel; null where the damper is not known.</summary>
    [Sample("It settles at once and answers the wheel promptly.")]
    public required string? Feel { get; init; }

    /// <summary>The mean damping ratios that suit.</summary>
    public required RangeResponse DampingRatioRange { get; init; }

    /// <summary>Where that range comes from.</summary>
    [Sample("the request")]
    public required string RangeSource { get; init; }
}

/// <summary>Front and rear against each other.</summary>
public sealed record FlatRideResponse
{
    /// <summary>Rear ride frequency by the front's.</summary>
    [Sample(1.12)]
    public required double FrequencyRatio { get; init; }

    /// <summary>Whether that lets both ends fall into step after a bump.</summary>
    [Sample(true)]
    public required bool IsFlat { get; init; }

    /// <summary>The same as a sentence.</summary>
    [Sample("It rides flat.")]
    public required string Text { get; init; }
}
