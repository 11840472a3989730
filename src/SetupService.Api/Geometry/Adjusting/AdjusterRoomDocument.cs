using System.ComponentModel.DataAnnotations;
using SetupService.Api.Http.Contract;

namespace SetupService.Api.Geometry.Adjusting;

/// <summary>Something that may be adjusted, and how far.</summary>
public sealed record AdjusterRoomDocument : AdjusterDocument
{
    /// <summary>The least amount; for every adjuster but the hub shims. −100 where left out.</summary>
    [Range(-100, 100)]
    [Sample(-6.0)]
    public double? MinimumMm { get; set; }

    /// <summary>The greatest amount; for every adjuster but the hub shims. 100 where left out.</summary>
    [Range(-100, 100)]
    [Sample(6.0)]
    public double? MaximumMm { get; set; }

    /// <summary>The least amount of a hub shim. −5 where left out.</summary>
    [Range(-5, 5)]
    [Sample(-1.0)]
    public double? MinimumDeg { get; set; }

    /// <summary>The greatest amount of a hub shim. 5 where left out.</summary>
    [Range(-5, 5)]
    [Sample(1.0)]
    public double? MaximumDeg { get; set; }
}
