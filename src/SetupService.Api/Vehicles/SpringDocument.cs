using System.ComponentModel.DataAnnotations;
using SetupService.Api.Http.Contract;

namespace SetupService.Api.Vehicles;

/// <summary>The main spring of one wheel.</summary>
public sealed record SpringDocument
{
    /// <summary>Rate at the spring.</summary>
    [Range(1, 2000)]
    [Sample(27.0)]
    public double? RateNPerMm { get; set; }

    /// <summary>Spring travel divided by wheel travel.</summary>
    [Range(0.05, 2)]
    [Sample(0.94)]
    public double? MotionRatio { get; set; }

    /// <summary>Length without load.</summary>
    [Range(30, 1000)]
    [Sample(340.0)]
    public double? FreeLengthMm { get; set; }

    /// <summary>Length with the coils touching.</summary>
    [Range(10, 1000)]
    [Sample(120.0)]
    public double? SolidLengthMm { get; set; }

    /// <summary>Length at ride height.</summary>
    [Range(10, 1000)]
    [Sample(215.0)]
    public double? InstalledLengthMm { get; set; }

    /// <summary>How far the seats compress the spring at full droop; negative = the spring is loose there.</summary>
    [Range(-200, 500)]
    [Sample(20.0)]
    public double? PreloadMm { get; set; }
}
