using System.ComponentModel.DataAnnotations;
using SetupService.Api.Http.Contract;

namespace SetupService.Api.Geometry.Adjusting;

/// <summary>What a top mount's movement must keep within, mm; a way that is left out has ±100 mm where its angle is wanted (inboard: camber, rearward: caster) and is not used where it is not.</summary>
public sealed record TopMountLimitsDocument
{
    /// <summary>Movement inboard.</summary>
    public SlotDocument? Inboard { get; set; }

    /// <summary>Movement rearward.</summary>
    public SlotDocument? Rearward { get; set; }

    /// <summary>How far outboard the tyre's top may move before it meets the arch.</summary>
    [Range(0, 200)]
    [Sample(10.0)]
    public double? ArchGap { get; set; }
}
