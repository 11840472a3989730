using System.ComponentModel.DataAnnotations;
using System.Text.Json.Serialization;
using SetupService.Api.Http.Contract;
using SetupService.Domain.Suspension.Sweep;

namespace SetupService.Api.Geometry.Sweeps;

/// <summary>Wheel travel from one end to the other, mm, positive = bump.</summary>
public sealed record TravelRangeDocument
{
    /// <summary>First value.</summary>
    [JsonRequired]
    [Range(-500, 500)]
    [Sample(-60.0)]
    public double From { get; set; }

    /// <summary>The end, itself a value where the step meets it.</summary>
    [JsonRequired]
    [Range(-500, 500)]
    [Sample(60.0)]
    public double To { get; set; }

    /// <summary>From one value to the next; its sign leads from the one end to the other.</summary>
    [JsonRequired]
    [Range(-500, 500)]
    [Sample(5.0)]
    public double Step { get; set; }

    /// <summary>The values.</summary>
    internal SweepRange ToRange() => new(From, To, Step);
}
