using System.ComponentModel.DataAnnotations;
using System.Text.Json.Serialization;
using SetupService.Api.Http.Contract;
using SetupService.Api.Http.Documents;
using SetupService.Domain.Vehicles;

namespace SetupService.Api.Vehicles;

/// <summary>A car. Every member may be left out; a call says what it cannot do without.</summary>
public sealed record VehicleDocument
{
    /// <summary>What the caller calls this car.</summary>
    [StringLength(200)]
    [Sample("Aldermoor Tarn, road trim")]
    public string? Label { get; set; }

    /// <summary>The shape of the body: where centreOfGravityHeightMm is not given, the height typical of it is taken.</summary>
    [Sample("coupe")]
    public CarBody? Body { get; set; }

    /// <summary>Which wheels are driven.</summary>
    [Sample("rear")]
    public DrivenAxle? DrivenAxle { get; set; }

    /// <summary>Distance between front and rear contact centres.</summary>
    [Range(1500, 4500)]
    [Sample(2570.0)]
    public double? WheelbaseMm { get; set; }

    /// <summary>Height of the whole car's centre of gravity above the ground at the axle loads given.</summary>
    [Range(100, 2000)]
    [Sample(505.0)]
    public double? CentreOfGravityHeightMm { get; set; }

    /// <summary>Load on the front axle, the whole car as driven, level.</summary>
    [Range(50, 5000)]
    [Sample(690.0)]
    public double? FrontAxleLoadKg { get; set; }

    /// <summary>Load on the rear axle, the whole car as driven, level.</summary>
    [Range(50, 5000)]
    [Sample(640.0)]
    public double? RearAxleLoadKg { get; set; }

    /// <summary>Load on each wheel's scale.</summary>
    public CornerWeightsDocument? CornerWeightsKg { get; set; }

    /// <summary>Top speed of the car.</summary>
    [Range(20, 500)]
    [Sample(228.0)]
    public double? TopSpeedKmh { get; set; }

    /// <summary>Front axle's share of the braking force.</summary>
    [Range(0, 100)]
    [Sample(66.0)]
    public double? BrakeShareFrontPct { get; set; }

    /// <summary>Front axle's share of the driving force, where both axles are driven.</summary>
    [Range(0, 100)]
    [Sample(40.0)]
    public double? DriveShareFrontPct { get; set; }

    /// <summary>The differential of each driven axle; needs drivenAxle.</summary>
    public DifferentialDocument? Differential { get; set; }

    /// <summary>What the air does to the car.</summary>
    public AeroDocument? Aero { get; set; }

    /// <summary>Steering-wheel angle divided by mean road-wheel angle.</summary>
    [Range(1, 50)]
    [Sample(14.2)]
    public double? SteeringRatio { get; set; }

    /// <summary>The front axle.</summary>
    public AxleDocument? Front { get; set; }

    /// <summary>The rear axle.</summary>
    public AxleDocument? Rear { get; set; }
}

/// <summary>
/// A change to a car: the members named here replace the car's, objects member by member, arrays whole (RFC 7396), and null
/// changes nothing. No member is required. A suspension named with another kind is replaced whole; without a kind it keeps the car's.
/// </summary>
[JsonConverter(typeof(DocumentChangeConverter<VehicleChange, VehicleDocument>))]
public sealed class VehicleChange : DocumentChange<VehicleDocument>;

/// <summary>How a driven axle shares torque between its wheels.</summary>
public sealed record DifferentialDocument
{
    /// <summary>Its kind.</summary>
    [JsonRequired]
    [Sample("limitedSlip")]
    public DifferentialKind Kind { get; set; }

    /// <summary>The most torque of one wheel by that of the other; of a limited-slip differential, which needs it.</summary>
    [Range(1, 20)]
    [Sample(2.0)]
    public double? BiasRatio { get; set; }
}

/// <summary>Forces of the air at a reference speed, as measured at the wheels; they grow with the square of speed.</summary>
public sealed record AeroDocument
{
    /// <summary>Speed at which the forces are stated.</summary>
    [JsonRequired]
    [Range(20, 500)]
    [Sample(160.0)]
    public double ReferenceSpeedKmh { get; set; }

    /// <summary>Load added to the front axle; negative = lift. With rearDownforceN.</summary>
    [Range(-10000, 50000)]
    [Sample(120.0)]
    public double? FrontDownforceN { get; set; }

    /// <summary>Load added to the rear axle; negative = lift. With frontDownforceN.</summary>
    [Range(-10000, 50000)]
    [Sample(180.0)]
    public double? RearDownforceN { get; set; }

    /// <summary>Drag; left out, none is counted.</summary>
    [Range(0, 20000)]
    [Sample(600.0)]
    public double? DragN { get; set; }
}

/// <summary>Load on each wheel's scale, in kg, of the whole car as driven, level.</summary>
public sealed record CornerWeightsDocument
{
    /// <summary>Load on the front left wheel, in kg.</summary>
    [Range(10, 3000)]
    [Sample(345.0)]
    public double? FrontLeft { get; set; }

    /// <summary>Load on the front right wheel, in kg.</summary>
    [Range(10, 3000)]
    [Sample(345.0)]
    public double? FrontRight { get; set; }

    /// <summary>Load on the rear left wheel, in kg.</summary>
    [Range(10, 3000)]
    [Sample(320.0)]
    public double? RearLeft { get; set; }

    /// <summary>Load on the rear right wheel, in kg.</summary>
    [Range(10, 3000)]
    [Sample(320.0)]
    public double? RearRight { get; set; }
}
