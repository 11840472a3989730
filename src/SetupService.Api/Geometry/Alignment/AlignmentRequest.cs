using System.ComponentModel.DataAnnotations;
using SetupService.Api.Http.Contract;

namespace SetupService.Api.Geometry.Alignment;

/// <summary>What was measured of a car's alignment; every part may be left out.</summary>
public sealed record AlignmentRequest
{
    /// <summary>Front axle.</summary>
    public AxleAlignmentDocument? Front { get; set; }

    /// <summary>Rear axle.</summary>
    public AxleAlignmentDocument? Rear { get; set; }

    /// <summary>How much further back the right front wheel stands than the left one; negative = further ahead.</summary>
    [Range(-200, 200)]
    [Sample(3.0)]
    public double? SetbackMm { get; set; }

    /// <summary>Distance between the front wheels' contact centres; turns the setback into an angle.</summary>
    [Range(900, 2200)]
    [Sample(1510.0)]
    public double? FrontTrackMm { get; set; }

    /// <summary>Diameter at which toe is told in mm, as a rule the rim's edge; 400 where left out.</summary>
    [Range(200, 1000)]
    [Sample(450.0)]
    public double? MeasuringDiameterMm { get; set; }
}
