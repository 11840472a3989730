using System.ComponentModel.DataAnnotations;
using System.Text.Json.Serialization;
using SetupService.Api.Http.Contract;
using SetupService.Api.Vehicles;

namespace SetupService.Api.Wear.Diagnosis;

/// <summary>What was read of a car's tyres.</summary>
public sealed record DiagnosisRequest
{
    /// <summary>The car, as far as it is known; no part of it is needed. With loads, tracks, wheelbase and springs a cornering model tells how many degrees the camber is short.</summary>
    public VehicleDocument? Vehicle { get; set; }

    /// <summary>What the tyres did.</summary>
    public UseDocument? Use { get; set; }

    /// <summary>The tyres, each wheel once; empty where nothing was read.</summary>
    [JsonRequired]
    [Count(0, 4)]
    public TyreReadingDocument[] Tyres { get; set; } = [];

    /// <summary>The day of the readings, year-month-day; the service's day where left out. Tells the tyres' age.</summary>
    [StringLength(10)]
    [Sample("2026-11-20")]
    public string? ReadOn { get; set; }
}
