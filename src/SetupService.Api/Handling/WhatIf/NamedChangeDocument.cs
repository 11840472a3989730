using System.ComponentModel.DataAnnotations;
using System.Text.Json.Serialization;
using SetupService.Api.Http.Contract;
using SetupService.Api.Vehicles;

namespace SetupService.Api.Handling.WhatIf;

/// <summary>One change of the car.</summary>
public sealed record NamedChangeDocument
{
    /// <summary>What the caller calls it.</summary>
    [JsonRequired]
    [StringLength(80)]
    [Sample("front springs 40 N/mm")]
    public string Label { get; set; } = "";

    /// <summary>What is changed.</summary>
    [JsonRequired]
    public VehicleChange Vehicle { get; set; } = null!;
}
