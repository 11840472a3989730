using System.Text.Json.Serialization;
using SetupService.Api.Http.Contract;
using SetupService.Api.Vehicles;
using SetupService.Domain.Fitment;
using SetupService.Domain.Vehicles;

namespace SetupService.Api.Fitment.Batch;

/// <summary>A line that sets the car for the lines after it, or the part <c>car</c> of a table.</summary>
public sealed record BatchCarLine
{
    /// <summary>The car, as far as it is known.</summary>
    [JsonRequired]
    public VehicleDocument Vehicle { get; set; } = null!;

    /// <summary>Which axle.</summary>
    [JsonRequired]
    [Sample("front")]
    public CarAxle Axle { get; set; }

    /// <summary>A change of static camber made at the same time.</summary>
    public CamberChangeDocument? CamberChange { get; set; }

    /// <summary>What the caller wants of the margins.</summary>
    public TolerancesDocument? Tolerances { get; set; }

    /// <summary>The checks whose being unknown makes a verdict unknown.</summary>
    [Count(0, 17)]
    [Sample("inboardClearance")]
    public CheckId[]? Required { get; set; }
}
