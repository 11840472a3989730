using System.Text.Json.Serialization;
using SetupService.Api.Http.Contract;
using SetupService.Api.Vehicles;

namespace SetupService.Api.Tests.Http.Changes;

/// <summary>A request as the calls take it that answer for a changed car.</summary>
public sealed record ChangeRequest
{
    /// <summary>The car.</summary>
    [JsonRequired]
    public VehicleDocument Vehicle { get; set; } = null!;

    /// <summary>One change.</summary>
    public VehicleChange? Change { get; set; }

    /// <summary>Several.</summary>
    [Count(1, 12)]
    public NamedChange[]? Changes { get; set; }
}
