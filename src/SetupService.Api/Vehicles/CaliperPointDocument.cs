using System.ComponentModel.DataAnnotations;
using System.Text.Json.Serialization;
using SetupService.Api.Http.Contract;

namespace SetupService.Api.Vehicles;

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
