using System.Text.Json.Serialization;
using SetupService.Api.Http.Contract;
using SetupService.Api.Vehicles;

namespace SetupService.Api.Geometry.Adjusting;

/// <summary>A strut's top mount: a movement of it, or the angles wanted from it.</summary>
public sealed record TopMountMoveRequest
{
    /// <summary>The suspension: its points at the stated position, or what was measured of it.</summary>
    [JsonRequired]
    public SuspensionDocument Suspension { get; set; } = null!;

    /// <summary>Camber and toe at the stated position; with a measured suspension also caster and inclination where they are known.</summary>
    [JsonRequired]
    public AlignmentAnglesDocument Alignment { get; set; } = null!;

    /// <summary>Height of the wheel centre above the ground at no camber.</summary>
    [JsonRequired]
    [Limits(150, 600)]
    [Sample(302.0)]
    public double LoadedRadiusMm { get; set; }

    /// <summary>The movement; this or <c>target</c>.</summary>
    public TopMountMoveDocument? MoveMm { get; set; }

    /// <summary>The angles wanted; this or <c>moveMm</c>.</summary>
    public AngleTargetDocument? Target { get; set; }

    /// <summary>What the movement that is looked for must keep within; only with <c>target</c>.</summary>
    public TopMountLimitsDocument? LimitsMm { get; set; }

    /// <summary>Whether the tie rod is then set so that toe is what it was; not so where left out.</summary>
    [Sample(true)]
    public bool? ResetToe { get; set; }

    /// <summary>Standard error of one camber reading of a measured suspension; 0.1 where left out.</summary>
    [Limits(0.001, 2)]
    [Sample(0.1)]
    public double? GaugeErrorDeg { get; set; }
}
