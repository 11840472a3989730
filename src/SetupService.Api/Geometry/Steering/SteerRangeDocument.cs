using System.ComponentModel.DataAnnotations;
using System.Text.Json.Serialization;
using SetupService.Api.Http.Contract;
using SetupService.Domain.Suspension.Sweep;

namespace SetupService.Api.Geometry.Steering;

/// <summary>Steer of one wheel from one end to the other, degrees, positive = left.</summary>
public sealed record SteerRangeDocument
{
    /// <summary>First value.</summary>
    [JsonRequired]
    [Range(-60, 60)]
    [Sample(-30.0)]
    public double From { get; set; }

    /// <summary>The end, itself a value where the step meets it.</summary>
    [JsonRequired]
    [Range(-60, 60)]
    [Sample(30.0)]
    public double To { get; set; }

    /// <summary>From one value to the next; its sign leads from the one end to the other.</summary>
    [JsonRequired]
    [Range(-120, 120)]
    [Sample(5.0)]
    public double Step { get; set; }

    /// <summary>The values.</summary>
    internal SweepRange ToRange() => new(From, To, Step);
}
