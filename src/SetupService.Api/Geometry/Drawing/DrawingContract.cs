using System.ComponentModel.DataAnnotations;
using SetupService.Api.Http.Contract;
using SetupService.Domain.Suspension.Points;

namespace SetupService.Api.Geometry.Drawing;

/// <summary>A car's corner to be drawn at one position of its wheel. Only a suspension with points can be drawn; without a tyre its width is made up, and the picture says so.</summary>
public sealed record DrawingRequest : CornerRequest
{
    /// <summary>Wheel travel it is drawn at; ride height where left out.</summary>
    [Range(-500, 500)]
    [Sample(0.0)]
    public double? TravelMm { get; set; }

    /// <summary>Rack travel it is drawn at; the middle where left out.</summary>
    [Range(-200, 200)]
    [Sample(0.0)]
    public double? RackMm { get; set; }

    /// <summary>How both wheels move; only a twist beam tells the difference. Parallel where left out.</summary>
    [Sample("parallel")]
    public AxleMotion? Motion { get; set; }
}
