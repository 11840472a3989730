using System.ComponentModel.DataAnnotations;
using System.Text.Json.Serialization;
using SetupService.Api.Http.Contract;
using SetupService.Api.Tyres;
using SetupService.Api.Wheels;
using SetupService.Domain.Fitment;

namespace SetupService.Api.Fitment;

/// <summary>A wheel with a tyre on it.</summary>
public sealed record FittingDocument
{
    /// <summary>The wheel.</summary>
    [JsonRequired]
    public WheelDocument Wheel { get; set; } = null!;

    /// <summary>The tyre on it.</summary>
    [JsonRequired]
    public TyreDocument Tyre { get; set; } = null!;
}

/// <summary>A change of static camber made together with the change of wheel and tyre.</summary>
public sealed record CamberChangeDocument
{
    /// <summary>Change of camber; negative = top further inboard.</summary>
    [JsonRequired]
    [Range(-15, 15)]
    [Sample(-1.5)]
    public double ChangeDeg { get; set; }

    /// <summary>Where it is made.</summary>
    [JsonRequired]
    [Sample("strutToKnuckle")]
    public CamberChangePlace At { get; set; }

    /// <summary>Height above the ground of the point the wheel turns about.</summary>
    [Range(0, 1500)]
    [Sample(240.0)]
    public double? PivotHeightMm { get; set; }

    /// <summary>Height above the ground of the narrowest place inboard.</summary>
    [Range(0, 1500)]
    [Sample(430.0)]
    public double? NarrowestHeightMm { get; set; }
}

/// <summary>What the caller wants of the margins.</summary>
public sealed record TolerancesDocument
{
    /// <summary>Worst-case room below which a check of room is a caution; 3 mm where left out.</summary>
    [Range(0, 50)]
    [Sample(3.0)]
    public double? MinimumMarginMm { get; set; }
}
