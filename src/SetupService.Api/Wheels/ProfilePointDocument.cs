using System.ComponentModel.DataAnnotations;
using System.Text.Json.Serialization;
using SetupService.Api.Http.Contract;

namespace SetupService.Api.Wheels;

/// <summary>One point of a wheel's inner profile: the free radius inside the barrel at a distance from the mounting face.</summary>
public sealed record ProfilePointDocument
{
    /// <summary>Distance along the wheel's axis from the mounting face; positive outboard, away from the car.</summary>
    [JsonRequired]
    [Range(-300, 300)]
    [Sample(20.0)]
    public double FromMountingFaceMm { get; set; }

    /// <summary>Smallest radius of the wheel's inside at that station.</summary>
    [JsonRequired]
    [Range(20, 400)]
    [Sample(178.0)]
    public double RadiusMm { get; set; }
}
