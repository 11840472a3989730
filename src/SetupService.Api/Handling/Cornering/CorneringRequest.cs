using System.ComponentModel.DataAnnotations;
using System.Text.Json.Serialization;
using SetupService.Api.Http.Contract;

namespace SetupService.Api.Handling.Cornering;

/// <summary>A car in a steady turn on a level road.</summary>
public sealed record CorneringRequest : TurnRequest
{
    /// <summary>Lateral acceleration, taken as what the car does.</summary>
    [JsonRequired]
    [Range(0, 3)]
    [Sample(0.9)]
    public double LateralG { get; set; }
}
