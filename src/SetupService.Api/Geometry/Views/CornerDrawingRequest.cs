using System.ComponentModel.DataAnnotations;
using SetupService.Api.Http.Contract;
using SetupService.Domain.Suspension.Points;

namespace SetupService.Api.Geometry.Views;

/// <summary>A corner to be drawn at one position of its wheel. Only a suspension with points can be drawn.</summary>
public sealed record CornerDrawingRequest : CornerRequest
{
    /// <summary>Wheel travel it is drawn at; the stated position where left out.</summary>
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

    /// <summary>Width of the tyre; one is made up where left out, and the picture says so.</summary>
    [Range(100, 400)]
    [Sample(225.0)]
    public double? TyreWidthMm { get; set; }
}
