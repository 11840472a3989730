using System.ComponentModel.DataAnnotations;
using SetupService.Api.Http.Contract;

namespace SetupService.Api.Vehicles;

/// <summary>Load on each wheel's scale, in kg, of the whole car as driven, level.</summary>
public sealed record CornerWeightsDocument
{
    /// <summary>Load on the front left wheel, in kg.</summary>
    [Range(10, 3000)]
    [Sample(345.0)]
    public double? FrontLeft { get; set; }

    /// <summary>Load on the front right wheel, in kg.</summary>
    [Range(10, 3000)]
    [Sample(345.0)]
    public double? FrontRight { get; set; }

    /// <summary>Load on the rear left wheel, in kg.</summary>
    [Range(10, 3000)]
    [Sample(320.0)]
    public double? RearLeft { get; set; }

    /// <summary>Load on the rear right wheel, in kg.</summary>
    [Range(10, 3000)]
    [Sample(320.0)]
    public double? RearRight { get; set; }
}
