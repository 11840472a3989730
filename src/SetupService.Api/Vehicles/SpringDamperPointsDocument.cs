using System.ComponentModel.DataAnnotations;
using System.Text.Json.Serialization;
using SetupService.Api.Http.Contract;
using SetupService.Domain.Suspension.Points;

namespace SetupService.Api.Vehicles;

/// <summary>Where spring and damper stand: what the points of every kind of suspension may add. Written after the kind's own.</summary>
public abstract record SpringDamperPointsDocument
{
    /// <summary>Spring's end on the body.</summary>
    [JsonPropertyOrder(1)]
    public PointDocument? SpringChassis { get; set; }

    /// <summary>Spring's end on the moving part.</summary>
    [JsonPropertyOrder(1)]
    public PointDocument? SpringMoving { get; set; }

    /// <summary>Damper's end on the body.</summary>
    [JsonPropertyOrder(1)]
    public PointDocument? DamperChassis { get; set; }

    /// <summary>Damper's end on the moving part.</summary>
    [JsonPropertyOrder(1)]
    public PointDocument? DamperMoving { get; set; }

    /// <summary>The part that carries the spring's moving end.</summary>
    [JsonPropertyOrder(1)]
    [Sample("lowerArm")]
    public SuspensionPart? SpringOn { get; set; }

    /// <summary>The part that carries the damper's moving end.</summary>
    [JsonPropertyOrder(1)]
    [Sample("lowerArm")]
    public SuspensionPart? DamperOn { get; set; }

    /// <summary>Standard deviation of each coordinate of the points; the figures of a travel sweep then come with ranges. Points count as exact where left out.</summary>
    [JsonPropertyOrder(1)]
    [Range(0, 20)]
    [Sample(1.0)]
    public double? PointErrorMm { get; set; }
}
