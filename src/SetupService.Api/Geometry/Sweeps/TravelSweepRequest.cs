using System.Text.Json.Serialization;
using System.ComponentModel.DataAnnotations;
using SetupService.Api.Http.Contract;
using SetupService.Domain.Suspension.Points;
using SetupService.Domain.Vehicles;

namespace SetupService.Api.Geometry.Sweeps;

/// <summary>A corner, and the wheel travel and rack it is to be moved over.</summary>
public sealed record TravelSweepRequest : CornerRequest
{
    /// <summary>Wheel travel.</summary>
    [JsonRequired]
    public TravelRangeDocument TravelMm { get; set; } = null!;

    /// <summary>Rack travel, walked through at every wheel travel; in the middle where left out.</summary>
    public RackRangeDocument? RackMm { get; set; }

    /// <summary>How both wheels move; only a twist beam tells the difference. Parallel where left out.</summary>
    [Sample("parallel")]
    public AxleMotion? Motion { get; set; }

    /// <summary>Which axle; needed for what braking and driving do.</summary>
    [Sample("front")]
    public CarAxle? Axle { get; set; }

    /// <summary>Distance between the axles.</summary>
    [Range(1500, 4500)]
    [Sample(2570.0)]
    public double? WheelbaseMm { get; set; }

    /// <summary>Height of the whole car's centre of gravity above the ground.</summary>
    [Range(100, 2000)]
    [Sample(505.0)]
    public double? CentreOfGravityHeightMm { get; set; }

    /// <summary>Share of the braking force at the front axle.</summary>
    [Range(0, 100)]
    [Sample(66.0)]
    public double? BrakeShareFrontPct { get; set; }

    /// <summary>The axle that drives the car.</summary>
    [Sample("rear")]
    public DrivenAxle? DrivenAxle { get; set; }

    /// <summary>Diameter at which toe is told in mm; 400 where left out.</summary>
    [Range(200, 1000)]
    [Sample(406.4)]
    public double? MeasuringDiameterMm { get; set; }

    /// <summary>Distance between the contact centres of left and right; only a measured suspension needs it, for camber per degree of roll.</summary>
    [Range(900, 2200)]
    [Sample(1510.0)]
    public double? TrackMm { get; set; }
}
