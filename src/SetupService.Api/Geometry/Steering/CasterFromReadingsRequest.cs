using System.ComponentModel.DataAnnotations;
using System.Text.Json.Serialization;
using SetupService.Api.Http.Contract;
using SetupService.Api.Vehicles;
using SetupService.Domain.Suspension.Steering;

namespace SetupService.Api.Geometry.Steering;

/// <summary>Camber readings of one wheel on a turn plate.</summary>
public sealed record CasterFromReadingsRequest
{
    /// <summary>The side the wheel is on; left where left out.</summary>
    [Sample("left")]
    public WheelSide? Side { get; set; }

    /// <summary>The readings, in any order, at three different steer angles or more; best about 20° to either side and straight ahead.</summary>
    [JsonRequired]
    [Count(3, 200)]
    public SteerReadingDocument[] Readings { get; set; } = [];

    /// <summary>Standard error of one camber reading; 0.1 where left out.</summary>
    [Range(0.001, 2)]
    [Sample(0.1)]
    public double? GaugeErrorDeg { get; set; }
}
