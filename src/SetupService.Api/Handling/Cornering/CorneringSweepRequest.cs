using System.Text.Json.Serialization;

namespace SetupService.Api.Handling.Cornering;

/// <summary>A car in steady turns of more and more lateral acceleration, each by itself.</summary>
public sealed record CorneringSweepRequest : TurnRequest
{
    /// <summary>Lateral acceleration, each taken as what the car does.</summary>
    [JsonRequired]
    public LateralRangeDocument LateralG { get; set; } = null!;
}
