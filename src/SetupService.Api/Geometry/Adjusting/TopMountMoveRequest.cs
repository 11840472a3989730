using SetupService.Api.Http.Contract;

namespace SetupService.Api.Geometry.Adjusting;

/// <summary>A strut's top mount: a movement of it, or the angles wanted from it.</summary>
public sealed record TopMountMoveRequest : CornerRequest
{
    /// <summary>The movement; this or <c>target</c>.</summary>
    public TopMountMoveDocument? MoveMm { get; set; }

    /// <summary>The angles wanted; this or <c>moveMm</c>.</summary>
    public AngleTargetDocument? Target { get; set; }

    /// <summary>What the movement that is looked for must keep within; only with <c>target</c>.</summary>
    public TopMountLimitsDocument? LimitsMm { get; set; }

    /// <summary>Whether the tie rod is then set so that toe is what it was; not so where left out.</summary>
    [Sample(true)]
    public bool? ResetToe { get; set; }
}
