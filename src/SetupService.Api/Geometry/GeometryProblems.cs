using SetupService.Api.Http.Faults;
using SetupService.Api.Http.Problems;
using SetupService.Domain.Geometry.Mechanism;
using SetupService.Domain.Geometry.Motion;
using SetupService.Domain.Geometry.Sweeps;

namespace SetupService.Api.Geometry;

/// <summary>The 422s of the calls on a suspension: well-formed, but nothing to be computed.</summary>
internal static class GeometryProblems
{
    /// <summary>The corner does not hold its wheel where it is stated.</summary>
    public static Problem NothingHolds() => Problem.NotComputable(
        "The points do not hold the wheel: at the stated position it could move although every part keeps its length.",
        [Fault.At("/suspension/points", FaultCodes.Unreachable, "the points leave the wheel a free movement at the stated position; one part's line runs through the axis the others leave it.")]);

    /// <summary>Adjusted as asked the parts do not meet.</summary>
    public static Problem DoesNotClose(in ClosureGap gap)
    {
        var reason = ClosureWords.Part(gap);
        return Problem.NotComputable(
            $"Adjusted so, the suspension's parts do not meet: at best {reason}.",
            [Fault.At("", FaultCodes.Unreachable, $"the parts do not meet: at best {reason}.") with { ResidualMm = gap.ResidualMm }]);
    }

    /// <summary>Even the least that the limits ask for cannot be assembled.</summary>
    public static Problem LimitsDoNotClose() => Problem.NotComputable(
        "Within these limits the suspension's parts do not meet at all.",
        [Fault.At("", FaultCodes.Unreachable, "the limits leave out the corner as it stands, and where they begin its parts do not meet.")]);

    /// <summary>Nothing that may be adjusted moves the angle wanted.</summary>
    public static Problem NoEffect(bool hasNoCaster)
    {
        var reason = hasNoCaster ? "this kind of suspension does not steer, so it has no caster." : "none of the adjusters moves the angle wanted.";
        return Problem.NotComputable($"No setting reaches the target: {reason}", [Fault.At("/target", FaultCodes.Unreachable, reason)]);
    }

    /// <summary>None of the positions asked for can be taken.</summary>
    public static Problem NothingReached(CornerMechanism corner, in UnreachablePosition first)
    {
        var (fromMm, toMm) = ReachableTravel.Of(corner);
        var reason = ClosureWords.Reason(first);
        return Problem.NotComputable(
            $"None of the positions asked for can be reached. At the first, {reason}",
            [Fault.At("/travelMm", FaultCodes.Unreachable, reason, new FaultLimits { Minimum = fromMm, Maximum = toMm, Unit = "mm" }) with { ResidualMm = first.Gap.ResidualMm }]);
    }
}
