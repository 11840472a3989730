using System.ComponentModel.DataAnnotations;
using SetupService.Api.Http.Contract;
using SetupService.Domain.Vehicles;

namespace SetupService.Api.Vehicles;

/// <summary>The smallest gaps between the car and the wheel and tyre named beside it.</summary>
public sealed record ClearanceDocument
{
    /// <summary>Gap straight ahead to strut, spring seat, arm, hose or liner; negative = it touches by that much.</summary>
    [Range(-100, 500)]
    [Sample(14.0)]
    public double? InboardMm { get; set; }

    /// <summary>Gap level to the arch lip; negative = the wheel stands out beyond it.</summary>
    [Range(-200, 500)]
    [Sample(18.0)]
    public double? OutboardMm { get; set; }

    /// <summary>Gap from the tread to what is above or around it.</summary>
    [Range(-100, 500)]
    [Sample(12.0)]
    public double? RadialMm { get; set; }

    /// <summary>Gap inboard at the worse steering lock.</summary>
    [Range(-100, 500)]
    [Sample(11.0)]
    public double? InboardAtFullLockMm { get; set; }

    /// <summary>Gap from the tyre up to the spring seat or coil above it.</summary>
    [Range(-100, 500)]
    [Sample(9.0)]
    public double? SpringSeatMm { get; set; }

    /// <summary>Whether the gaps were taken with travel allowed for or at ride height; worst travel where left out.</summary>
    [Sample("worstTravel")]
    public ClearanceMeasuredAt? MeasuredAt { get; set; }

    /// <summary>Error of the measurement, to either side.</summary>
    [Range(0, 50)]
    [Sample(1.0)]
    public double? UncertaintyMm { get; set; }

    /// <summary>What was nearest inboard; where left out, the part that leaves least room.</summary>
    [Sample("body")]
    public InboardPart? InboardTo { get; set; }

    /// <summary>Height of the narrowest place inboard above the ground; where left out, the height that leaves least room.</summary>
    [Range(0, 1500)]
    [Sample(380.0)]
    public double? InboardHeightMm { get; set; }
}
