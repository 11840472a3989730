using SetupService.Api.Http.Faults;
using SetupService.Api.Http.Problems;
using SetupService.Domain.Geometry.Mechanism;
using SetupService.Domain.Geometry.Sweeps;

namespace SetupService.Api.Geometry;

/// <summary>The 422s of the calls on a suspension: well-formed, but nothing to be computed.</summary>
internal static class GeometryProblems
{
    /// <summary>The corner does not hold its wheel where it is stated.</summary>
    public static Problem NothingHolds() => Problem.NotComputable(
        "The points do not hold the wheel: at the stated position it could move although every part keeps its length.",
        [Fault.At("/suspension/points", FaultCodes.Unreachable, "the points leave the wheel a free movement at the stated position; one part's line runs through the axis the others leave it.")]);

    /// <summary>None of the positions asked for can be taken.</summary>
    public static Problem NothingReached(CornerMechanism corner, in UnreachablePosition first)
    {
        var (fromMm, toMm) = ReachableTravel.Of(corner);
        var reason = ClosureWords.Reason(first);
        return Problem.NotComputable(
            $"No position of the sweep can be reached. At the first, {reason}",
            [Fault.At("/travelMm", FaultCodes.Unreachable, reason, new FaultLimits { Minimum = fromMm, Maximum = toMm, Unit = "mm" })]);
    }
}
