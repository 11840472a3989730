using System.ComponentModel.DataAnnotations;
using System.Text.Json.Serialization;
using SetupService.Api.Http.Contract;
using SetupService.Api.Vehicles;

namespace SetupService.Api.Geometry;

/// <summary>What every call on a suspension takes. Written before the call's own members.</summary>
public abstract record CornerRequest
{
    /// <summary>The suspension: its points at the stated position or, for every call but the drawing, what was measured of it.</summary>
    [JsonRequired]
    [JsonPropertyOrder(-1)]
    public SuspensionDocument Suspension { get; set; } = null!;

    /// <summary>Camber and toe at the stated position; with a measured suspension also caster and inclination where they are known.</summary>
    [JsonRequired]
    [JsonPropertyOrder(-1)]
    public AlignmentAnglesDocument Alignment { get; set; } = null!;

    /// <summary>Height of the wheel centre above the ground at no camber.</summary>
    [JsonRequired]
    [JsonPropertyOrder(-1)]
    [Range(150, 600)]
    [Sample(302.0)]
    public double LoadedRadiusMm { get; set; }
}
