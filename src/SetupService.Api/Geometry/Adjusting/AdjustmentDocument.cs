using System.ComponentModel.DataAnnotations;
using SetupService.Api.Http.Contract;

namespace SetupService.Api.Geometry.Adjusting;

/// <summary>One thing adjusted, by how much.</summary>
public sealed record AdjustmentDocument : AdjusterDocument
{
    /// <summary>How far; for every adjuster but the hub shims.</summary>
    [Range(-100, 100)]
    [Sample(5.0)]
    public double? AmountMm { get; set; }

    /// <summary>How far; for the hub shims.</summary>
    [Range(-5, 5)]
    [Sample(-0.5)]
    public double? AmountDeg { get; set; }
}
