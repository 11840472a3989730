using System.ComponentModel.DataAnnotations;
using SetupService.Api.Http.Contract;

namespace SetupService.Api.Vehicles;

/// <summary>The damper of one wheel, linear, with figures at the damper.</summary>
public sealed record DamperDocument
{
    /// <summary>Force per speed in bump.</summary>
    [Range(0, 100000)]
    [Sample(1500.0)]
    public double? BumpNsPerM { get; set; }

    /// <summary>Force per speed in rebound.</summary>
    [Range(0, 100000)]
    [Sample(3200.0)]
    public double? ReboundNsPerM { get; set; }

    /// <summary>Damper travel divided by wheel travel.</summary>
    [Range(0.05, 2)]
    [Sample(0.94)]
    public double? MotionRatio { get; set; }
}
