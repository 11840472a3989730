using SetupService.Api.Http.Faults;
using SetupService.Api.Http.Problems;
using SetupService.Domain.Suspension.Steering;

namespace SetupService.Api.Geometry.Steering;

/// <summary>The 422s of the calls on steering: well-formed, but nothing to be computed.</summary>
internal static class SteeringProblems
{
    /// <summary>None of the headings asked for can be taken.</summary>
    public static Problem NothingReached(SteerSweepRequest request, string firstReason)
    {
        var limits = SteerLimits.Of(SteerSweepReading.Wheel(request))?.For(SteerSweepReading.Side(request.Side));
        return Problem.NotComputable(
            $"No heading of the sweep can be reached. At the first, {firstReason}",
            [Fault.At("/steerDeg", FaultCodes.Unreachable, firstReason, new FaultLimits { Minimum = limits?.RightDeg, Maximum = limits?.LeftDeg, Unit = "deg" })]);
    }

    /// <summary>The readings do not tell the axis.</summary>
    public static Problem NotTold(CasterReadingsGap gap, ReadOnlySpan<SteerReading> readings, double? workshopRuleCasterDeg)
    {
        var reason = CasterReadingsWords.Reason(gap, readings);
        var shortCut = CasterReadingsWords.ShortCut(workshopRuleCasterDeg);
        return Problem.NotComputable(
            $"The readings do not tell the steering axis: {reason}{shortCut}",
            [Fault.At("/readings", FaultCodes.Undetermined, reason)]);
    }
}
