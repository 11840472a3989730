using System.ComponentModel.DataAnnotations;
using System.Text.Json.Serialization;
using SetupService.Api.Http.Contract;
using SetupService.Api.Vehicles;

namespace SetupService.Api.Geometry.Steering;

/// <summary>The two joints a left wheel steers about, and how the wheel stands.</summary>
public sealed record SteeringAxisRequest
{
    /// <summary>The lower point of the axis: the lower ball joint.</summary>
    [JsonRequired]
    public PointDocument Lower { get; set; } = null!;

    /// <summary>The upper point of the axis: the upper ball joint, or the centre of a strut's top mount.</summary>
    [JsonRequired]
    public PointDocument Upper { get; set; } = null!;

    /// <summary>Where the spin axis meets the wheel's centre plane.</summary>
    [JsonRequired]
    public PointDocument WheelCentre { get; set; } = null!;

    /// <summary>Height of the wheel centre above the ground at no camber.</summary>
    [JsonRequired]
    [Range(150, 600)]
    [Sample(302.0)]
    public double LoadedRadiusMm { get; set; }

    /// <summary>Camber; negative = top leaning to the car's centre.</summary>
    [JsonRequired]
    [Range(-15, 15)]
    [Sample(-0.7)]
    public double CamberDeg { get; set; }

    /// <summary>Toe of this wheel; positive = toe-in.</summary>
    [JsonRequired]
    [Range(-5, 5)]
    [Sample(0.08)]
    public double ToeDeg { get; set; }
}
