using SetupService.Domain.Answers;

namespace SetupService.Domain.Suspension.Steering;

/// <summary>Says why a wheel cannot head where it should.</summary>
public static class SteerWords
{
    /// <summary>The reason, with the figures of the case; <paramref name="limits"/> are those of the wheel's side, where it has any.</summary>
    public static string Unreachable(SteerLimits? limits, double steerDeg) => limits is { } ends
        ? Prose.Write(UnitSystem.Metric, $"no turn about this axis heads the wheel to {steerDeg:deg}: the axis leans so far that the heading turns back at {ends.RightDeg:deg} and {ends.LeftDeg:deg}.")
        : Prose.Write(UnitSystem.Metric, $"no turn about this axis heads the wheel to {steerDeg:deg}: the axis leans so far that the heading turns back before.");
}
