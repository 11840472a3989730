using System.Text.Json.Serialization;
using SetupService.Api.Tyres;
using SetupService.Api.Wheels;

namespace SetupService.Api.Fitment;

/// <summary>A wheel with a tyre on it.</summary>
public sealed record FittingDocument
{
    /// <summary>The wheel.</summary>
    [JsonRequired]
    public WheelDocument Wheel { get; set; } = null!;

    /// <summary>The tyre on it.</summary>
    [JsonRequired]
    public TyreDocument Tyre { get; set; } = null!;
}
