using System.ComponentModel.DataAnnotations;
using SetupService.Api.Http.Contract;

namespace SetupService.Api.Vehicles;

/// <summary>The anti-roll bar of one axle.</summary>
public sealed record AntiRollBarDocument
{
    /// <summary>The bar's moment on the body per degree of body roll; 0 = no bar.</summary>
    [Range(0, 20000)]
    [Sample(310.0)]
    public double? RollRateNmPerDeg { get; set; }
}
