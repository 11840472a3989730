using SetupService.Api.Http.Faults;
using SetupService.Api.Http.Problems;
using SetupService.Domain.Suspension;
using SetupService.Domain.Suspension.Sweep;

namespace SetupService.Api.Geometry;

/// <summary>The 422s of the calls on a suspension: well-formed, but nothing to be computed.</summary>
internal static class GeometryProblems
{
    /// <summary>Nothing is known of the corner where it stands, or it does not hold its wheel there.</summary>
    public static Problem NotKnownHere(Corner corner)
    {
        var gap = corner.Suspension.WhyNotAtRide(corner.Setup);
        return gap.Kind != SuspensionGapKind.DoesNotHold ? NotTold(corner.Pointer + gap.Input, gap.Reason) : Problem.NotComputable(
            "The points do not hold the wheel: at the stated position it could move although every part keeps its length.",
            [Fault.At(corner.Pointer + gap.Input, FaultCodes.Unreachable, gap.Reason)]);
    }

    /// <summary>What is known of the corner does not tell what is asked.</summary>
    public static Problem NotTold(string pointer, string reason) =>
        Problem.NotComputable($"Not enough is known of this corner: {reason}", [Fault.At(pointer, FaultCodes.Unreachable, reason)]);

    /// <summary>Adjusted as asked the parts do not meet, or nothing is known of the corner.</summary>
    public static Problem CannotBeAdjusted((string Reason, double ResidualMm) why) => Problem.NotComputable(
        $"{char.ToUpperInvariant(why.Reason[0])}{why.Reason[1..]}",
        [Fault.At("", FaultCodes.Unreachable, why.Reason) with { ResidualMm = why.ResidualMm }]);

    /// <summary>Even the least that the limits ask for cannot be assembled.</summary>
    public static Problem LimitsDoNotClose() => Problem.NotComputable(
        "The limits leave out the corner as it stands, and with the least they ask for the suspension cannot be assembled.",
        [Fault.At("", FaultCodes.Unreachable, "the limits leave out the corner as it stands, and with the least they ask for its parts do not meet; let them begin nearer to 0.")]);

    /// <summary>Nothing that may be adjusted moves the angle wanted.</summary>
    public static Problem NoEffect(string wanted, bool hasNoCaster) => hasNoCaster
        ? NoSetting($"/{wanted}/casterDeg", "this suspension has no upright steering axis, so it has no caster; leave casterDeg out.")
        : NoSetting("/" + wanted, "none of the adjusters moves the angle wanted.");

    /// <summary>None of the positions asked for can be taken.</summary>
    public static Problem NothingReached((double FromMm, double ToMm) reach, in UnreachablePosition first)
    {
        var reason = ClosureWords.Reason(first);
        return Problem.NotComputable(
            $"None of the positions asked for can be reached. At the first, {reason}",
            [Fault.At("/travelMm", FaultCodes.Unreachable, reason, new FaultLimits { Minimum = reach.FromMm, Maximum = reach.ToMm, Unit = "mm" }) with { ResidualMm = first.ResidualMm }]);
    }

    private static Problem NoSetting(string pointer, string reason) =>
        Problem.NotComputable($"No setting reaches the target: {reason}", [Fault.At(pointer, FaultCodes.Unreachable, reason)]);
}
