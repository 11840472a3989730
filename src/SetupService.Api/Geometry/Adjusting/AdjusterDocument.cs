using System.Text.Json.Serialization;
using System.ComponentModel.DataAnnotations;
using SetupService.Api.Http.Contract;
using SetupService.Api.Vehicles;
using SetupService.Domain.Suspension.Search;

namespace SetupService.Api.Geometry.Adjusting;

/// <summary>What is adjusted, with what only some adjusters need.</summary>
public abstract record AdjusterDocument
{
    /// <summary>What is adjusted.</summary>
    [JsonRequired]
    [Sample("strutTopInboard")]
    [JsonPropertyOrder(-1)]
    public Adjuster Adjuster { get; set; }

    /// <summary>Which of five links, from 1; only with <c>linkLength</c>.</summary>
    [Range(1, 5)]
    [Sample(2)]
    public int? Link { get; set; }

    /// <summary>Distance between the knuckle's two bolts; only with <c>knuckleEccentric</c>.</summary>
    [Range(10, 200)]
    [Sample(58.0)]
    public double? BoltSpacingMm { get; set; }

    /// <summary>Centre of the bolt that stays; only with <c>knuckleEccentric</c>. <c>strutLower</c> where left out.</summary>
    public PointDocument? Pivot { get; set; }
}
