using System.ComponentModel.DataAnnotations;
using System.Text.Json.Serialization;
using SetupService.Api.Http.Contract;
using SetupService.Domain.Tyres;

namespace SetupService.Api.Tyres;

/// <summary>A tyre, with what is known of it beyond its marking.</summary>
public sealed record TyreDocument
{
    /// <summary>The size and service description on the sidewall.</summary>
    [JsonRequired]
    [StringLength(TyreMarkingReader.MaximumLength)]
    [Sample("225/45R17 91W")]
    public string Marking { get; set; } = "";

    /// <summary>Mass of the tyre.</summary>
    [Range(1, 150)]
    [Sample(9.9)]
    public double? MassKg { get; set; }

    /// <summary>Inflation pressure, gauge, cold.</summary>
    [Range(80, 500)]
    [Sample(230.0)]
    public double? PressureKpa { get; set; }

    /// <summary>How far the tyre's rim protector stands out beyond its section width, at each side; none where left out.</summary>
    [Range(0, 30)]
    [Sample(0.0)]
    public double? RimProtectorMm { get; set; }

    /// <summary>Vertical stiffness at that pressure near the working load.</summary>
    [Range(20, 2000)]
    [Sample(210.0)]
    public double? VerticalRateNPerMm { get; set; }

    /// <summary>Cornering stiffness of one tyre at its static load.</summary>
    [Range(50, 20000)]
    [Sample(1050.0)]
    public double? CorneringStiffnessNPerDeg { get; set; }
}
