using System.ComponentModel.DataAnnotations;
using SetupService.Api.Http.Contract;

namespace SetupService.Api.Vehicles;

/// <summary>How far a wheel gives under side force towards the car's middle.</summary>
public sealed record ComplianceDocument
{
    /// <summary>Change of camber; positive = the wheel leans out.</summary>
    [Range(-5, 5)]
    [Sample(0.12)]
    public double? CamberDegPerKn { get; set; }

    /// <summary>Change of toe; positive = the wheel toes out.</summary>
    [Range(-5, 5)]
    [Sample(0.03)]
    public double? ToeDegPerKn { get; set; }
}
