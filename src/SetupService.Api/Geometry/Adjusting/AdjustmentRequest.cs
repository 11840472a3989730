using System.ComponentModel.DataAnnotations;
using SetupService.Api.Http.Contract;
using SetupService.Domain.Suspension.Points;

namespace SetupService.Api.Geometry.Adjusting;

/// <summary>A corner and what is adjusted on it, or the angles wanted and what may be adjusted for them.</summary>
public sealed record AdjustmentRequest : CornerRequest
{
    /// <summary>How both wheels move; only a twist beam tells the difference. Parallel where left out.</summary>
    [Sample("parallel")]
    public AxleMotion? Motion { get; set; }

    /// <summary>What is adjusted, all of it together; this or <c>target</c>.</summary>
    [Count(1, 10)]
    public AdjustmentDocument[]? Adjustments { get; set; }

    /// <summary>The angles wanted; this or <c>adjustments</c>.</summary>
    public AngleTargetDocument? Target { get; set; }

    /// <summary>What may be adjusted for the target, and how far.</summary>
    [Count(1, 4)]
    public AdjusterRoomDocument[]? Adjusters { get; set; }

    /// <summary>How far outboard the tyre's top may move before it meets the arch; only with <c>target</c>.</summary>
    [Range(0, 200)]
    [Sample(10.0)]
    public double? ArchGapMm { get; set; }

    /// <summary>Whether the tie rod is then set so that toe is what it was; not so where left out.</summary>
    [Sample(true)]
    public bool? ResetToe { get; set; }
}
