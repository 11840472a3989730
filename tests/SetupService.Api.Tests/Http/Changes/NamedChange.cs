using System.ComponentModel.DataAnnotations;
using System.Text.Json.Serialization;
using SetupService.Api.Http.Contract;
using SetupService.Api.Vehicles;

namespace SetupService.Api.Tests.Http.Changes;

/// <summary>A change with its name.</summary>
public sealed record NamedChange
{
    /// <summary>What it is called.</summary>
    [JsonRequired]
    [StringLength(40)]
    [Sample("softer front springs")]
    public string Label { get; set; } = "";

    /// <summary>The change.</summary>
    [JsonRequired]
    public VehicleChange Vehicle { get; set; } = null!;
}
