using System.Text.Json.Serialization;
using SetupService.Api.Http.Contract;
using SetupService.Api.Vehicles;
using SetupService.Domain.Fitment;
using SetupService.Domain.Vehicles;

namespace SetupService.Api.Fitment;

/// <summary>A candidate wheel and tyre to be checked against one axle of a car.</summary>
public sealed record CheckRequest
{
    /// <summary>Which axle.</summary>
    [JsonRequired]
    [Sample("front")]
    public CarAxle Axle { get; set; }

    /// <summary>The car, as far as it is known. What is missing makes checks unknown, never an error.</summary>
    [JsonRequired]
    public VehicleDocument Vehicle { get; set; } = null!;

    /// <summary>The wheel and tyre to be checked.</summary>
    [JsonRequired]
    public FittingDocument Candidate { get; set; } = null!;

    /// <summary>A change of static camber made at the same time.</summary>
    public CamberChangeDocument? CamberChange { get; set; }

    /// <summary>What the caller wants of the margins.</summary>
    public TolerancesDocument? Tolerances { get; set; }

    /// <summary>The checks whose being unknown makes the verdict unknown; where left out, the eight that decide fit and load, and the brake under a smaller rim.</summary>
    [Count(0, 17)]
    [Sample("inboardClearance")]
    public CheckId[]? Required { get; set; }
}
