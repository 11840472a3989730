using System.Text.Json.Serialization;
using SetupService.Api.Geometry.Sweeps;
using SetupService.Api.Http.Contract;
using SetupService.Api.Vehicles;

namespace SetupService.Api.Geometry.Adjusting;

/// <summary>A corner and what is adjusted on it, or the angles wanted and what may be adjusted for them.</summary>
public sealed record AdjustmentRequest
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

    /// <summary>How both wheels move; only a twist beam tells the difference. Parallel where left out.</summary>
    [Sample("parallel")]
    public AxleMotionWord? Motion { get; set; }

    /// <summary>What is adjusted, all of it together; this or <c>target</c>.</summary>
    [Count(1, 10)]
    public AdjustmentDocument[]? Adjustments { get; set; }

    /// <summary>The angles wanted; this or <c>adjustments</c>.</summary>
    public AngleTargetDocument? Target { get; set; }

    /// <summary>What may be adjusted for the target, and how far.</summary>
    [Count(1, 4)]
    public AdjusterRoomDocument[]? Adjusters { get; set; }

    /// <summary>How far outboard the tyre's top may move before it meets the arch; only with <c>target</c>.</summary>
    [Limits(0, 200)]
    [Sample(10.0)]
    public double? ArchGapMm { get; set; }

    /// <summary>Whether the tie rod is then set so that toe is what it was; not so where left out.</summary>
    [Sample(true)]
    public bool? ResetToe { get; set; }

    /// <summary>Standard error of one camber reading of a measured suspension; 0.1 where left out.</summary>
    [Limits(0.001, 2)]
    [Sample(0.1)]
    public double? GaugeErrorDeg { get; set; }
}
