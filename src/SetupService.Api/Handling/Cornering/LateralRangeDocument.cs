using System.ComponentModel.DataAnnotations;
using System.Text.Json.Serialization;
using SetupService.Api.Http.Contract;
using SetupService.Domain.Suspension.Sweep;

namespace SetupService.Api.Handling.Cornering;

/// <summary>Lateral acceleration from one end to the other, g.</summary>
public sealed record LateralRangeDocument
{
    /// <summary>First value.</summary>
    [JsonRequired]
    [Range(0, 3)]
    [Sample(0.0)]
    public double From { get; set; }

    /// <summary>The end, itself a value where the step meets it.</summary>
    [JsonRequired]
    [Range(0, 3)]
    [Sample(1.2)]
    public double To { get; set; }

    /// <summary>From one value to the next; its sign leads from the one end to the other.</summary>
    [JsonRequired]
    [Range(-3, 3)]
    [Sample(0.1)]
    public double Step { get; set; }

    /// <summary>The values.</summary>
    internal SweepRange ToRange() => new(From, To, Step);
}
