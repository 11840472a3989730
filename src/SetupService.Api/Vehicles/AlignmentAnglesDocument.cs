using System.ComponentModel.DataAnnotations;
using SetupService.Api.Http.Contract;

namespace SetupService.Api.Vehicles;

/// <summary>Wheel and steering-axis angles of one wheel at ride height; those of a right wheel only where they differ from the left's.</summary>
public record AlignmentAnglesDocument
{
    /// <summary>Camber as a gauge on the wheel reads it; negative = top leaning to the car's centre.</summary>
    [Range(-15, 15)]
    [Sample(-0.7)]
    public double? CamberDeg { get; set; }

    /// <summary>Caster; positive = steering axis' top rearward.</summary>
    [Range(-5, 20)]
    [Sample(6.4)]
    public double? CasterDeg { get; set; }

    /// <summary>Toe of this wheel; positive = toe-in.</summary>
    [Range(-5, 5)]
    [Sample(0.08)]
    public double? ToeDeg { get; set; }

    /// <summary>Steering-axis inclination; positive = top inboard.</summary>
    [Range(-10, 40)]
    [Sample(13.1)]
    public double? SteeringAxisInclinationDeg { get; set; }
}
