using System.ComponentModel.DataAnnotations;
using SetupService.Api.Http.Contract;

namespace SetupService.Api.Geometry.Adjusting;

/// <summary>The angles wanted; one of them or both.</summary>
public sealed record AngleTargetDocument
{
    /// <summary>Camber wanted; negative = top towards the car's centre.</summary>
    [Range(-15, 15)]
    [Sample(-2.0)]
    public double? CamberDeg { get; set; }

    /// <summary>Caster wanted; positive = steering axis' top rearward.</summary>
    [Range(-5, 20)]
    [Sample(7.0)]
    public double? CasterDeg { get; set; }
}
