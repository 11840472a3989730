using SetupService.Api.Http.Faults;
using SetupService.Api.Http.Problems;
using SetupService.Domain.Answers;
using SetupService.Domain.Suspension;
using SetupService.Domain.Suspension.Steering;

namespace SetupService.Api.Geometry.Steering;

/// <summary>The 422s of the calls on steering: well-formed, but nothing to be computed.</summary>
internal static class SteeringProblems
{
    /// <summary>None of the headings asked for can be taken.</summary>
    public static Problem NothingReached(SteerSweepRequest request, string firstReason)
    {
        var limits = SteerLimits.Find(SteerSweepMapper.Wheel(request))?.For(SteerSweepMapper.Side(request.Side));
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

/// <summary>What the calls on steering take although nobody gave it.</summary>
internal static class SteeringAssumptions
{
    private static readonly Assumption LeftWheel = new(
        "/side", null, "left", "the contract's default", "Steer is positive to the left on both sides, so a right wheel leans the other way with it.");

    private static readonly Assumption GaugeError = new(
        "/gaugeErrorDeg", CasterReadings.DefaultGaugeErrorDeg, null, "common practice, no source",
        "Standard error of one camber reading; every standard error and range grows with it in proportion, the angles themselves do not change.");

    /// <summary>Of a steer sweep.</summary>
    public static List<Assumption> List(SteerSweepRequest request)
    {
        var list = new List<Assumption>();
        if (request.Side is null) list.Add(LeftWheel);
        if (SteerSweepMapper.Missing(request).Length == 0) list.Add(SuspensionAssumptions.ThinTyre);
        return list;
    }

    /// <summary>Of readings on turn plates.</summary>
    public static List<Assumption> List(CasterFromReadingsRequest request)
    {
        var list = new List<Assumption>();
        if (request.Side is null) list.Add(LeftWheel);
        if (request.GaugeErrorDeg is null) list.Add(GaugeError);
        return list;
    }
}
