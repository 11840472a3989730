using System.Text.Json.Serialization;
using SetupService.Api.Http.Contract;

namespace SetupService.Api.Http.Faults;

/// <summary>The limits a value broke, as data, so that no caller has to read them out of a sentence.</summary>
public sealed record FaultLimits
{
    /// <summary>The smallest value (or count) accepted; left out where there is none.</summary>
    [Sample(3.0)]
    [JsonIgnore(Condition = JsonIgnoreCondition.WhenWritingNull)]
    public double? Minimum { get; init; }

    /// <summary>The largest value (or count, or length) accepted; left out where there is none.</summary>
    [Sample(16.0)]
    [JsonIgnore(Condition = JsonIgnoreCondition.WhenWritingNull)]
    public double? Maximum { get; init; }

    /// <summary>The unit of both; left out for a pure number.</summary>
    [Sample("in")]
    [JsonIgnore(Condition = JsonIgnoreCondition.WhenWritingNull)]
    public string? Unit { get; init; }
}
