using System.ComponentModel.DataAnnotations;
using System.Text.Json.Serialization;
using SetupService.Api.Http.Contract;
using SetupService.Api.Tyres;
using SetupService.Api.Vehicles;
using SetupService.Domain.Vehicles;

namespace SetupService.Api.Fitment;

/// <summary>A tyre, and the rim widths for which the feasible offsets are wanted.</summary>
public sealed record WindowRequest
{
    /// <summary>Which axle.</summary>
    [JsonRequired]
    [Sample("front")]
    public CarAxle Axle { get; set; }

    /// <summary>The car; its gaps and present wheel and tyre decide.</summary>
    [JsonRequired]
    public VehicleDocument Vehicle { get; set; } = null!;

    /// <summary>The tyre to be fitted.</summary>
    [JsonRequired]
    public TyreDocument Tyre { get; set; } = null!;

    /// <summary>The rim widths asked about.</summary>
    [JsonRequired]
    [Range(3, 16)]
    [Count(1, 50)]
    [Sample(8.0)]
    public double[] RimWidthsIn { get; set; } = [];

    /// <summary>A change of static camber made at the same time.</summary>
    public CamberChangeDocument? CamberChange { get; set; }

    /// <summary>What the caller wants of the margins.</summary>
    public TolerancesDocument? Tolerances { get; set; }
}
