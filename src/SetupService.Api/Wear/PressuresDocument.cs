using System.ComponentModel.DataAnnotations;
using SetupService.Api.Http.Contract;
using SetupService.Domain.Wear.Readings;

namespace SetupService.Api.Wear;

/// <summary>Gauge pressures of one tyre; each may be left out.</summary>
public sealed record PressuresDocument
{
    /// <summary>As set before driving, cold.</summary>
    [Range(80, 500)]
    [Sample(210.0)]
    public double? Cold { get; set; }

    /// <summary>Right after driving.</summary>
    [Range(80, 500)]
    [Sample(262.0)]
    public double? Hot { get; set; }

    /// <summary>What it should be cold.</summary>
    [Range(80, 500)]
    [Sample(200.0)]
    public double? AimCold { get; set; }

    /// <summary>What it should be hot.</summary>
    [Range(80, 500)]
    [Sample(245.0)]
    public double? AimHot { get; set; }

    internal TyrePressures ToDomain() => new(Cold, Hot, AimCold, AimHot);
}
