using System.ComponentModel.DataAnnotations;
using SetupService.Api.Http.Contract;

namespace SetupService.Api.Vehicles;

/// <summary>The bump stop of one wheel.</summary>
public sealed record BumpStopDocument
{
    /// <summary>Mean rate at the stop.</summary>
    [Range(0.1, 5000)]
    [Sample(90.0)]
    public double? RateNPerMm { get; set; }

    /// <summary>Length without load.</summary>
    [Range(1, 300)]
    [Sample(45.0)]
    public double? LengthMm { get; set; }

    /// <summary>Length when compressed as far as it goes.</summary>
    [Range(1, 300)]
    [Sample(18.0)]
    public double? CompressedLengthMm { get; set; }

    /// <summary>Compression of the stop by wheel travel; the damper's motion ratio where left out.</summary>
    [Range(0.1, 2)]
    [Sample(0.94)]
    public double? MotionRatio { get; set; }
}
