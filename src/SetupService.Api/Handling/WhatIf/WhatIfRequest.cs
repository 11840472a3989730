using System.ComponentModel.DataAnnotations;
using System.Text.Json.Serialization;
using SetupService.Api.Handling.Cornering;
using SetupService.Api.Http.Contract;

namespace SetupService.Api.Handling.WhatIf;

/// <summary>A car in a steady turn, and changes of it to be compared.</summary>
public sealed record WhatIfRequest : TurnRequest
{
    /// <summary>The most changes of one request.</summary>
    public const int MostChanges = 24;

    /// <summary>Lateral acceleration, taken as what the car does.</summary>
    [JsonRequired]
    [Range(0, 3)]
    [Sample(0.9)]
    public double LateralG { get; set; }

    /// <summary>The changes, each worked alone and all together in this order.</summary>
    [JsonRequired]
    [Count(1, MostChanges)]
    public NamedChangeDocument[] Changes { get; set; } = [];
}
