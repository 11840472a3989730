using SetupService.Domain.Answers;

namespace SetupService.Domain.Suspension.Steering;

/// <summary>Says what readings on turn plates lack.</summary>
public static class CasterReadingsWords
{
    /// <summary>What is missing, with the figures of the case.</summary>
    public static string Reason(CasterReadingsGap gap, ReadOnlySpan<SteerReading> readings)
    {
        var spread = SteerSpread.Compute(readings);
        return gap switch
        {
            CasterReadingsGap.TooFewSteerAngles => Prose.Write(
                UnitSystem.Metric,
                $"{readings.Length} readings at {spread.DifferentCount} steer {(spread.DifferentCount == 1 ? "angle" : "angles")} (those within {CasterReadings.SameSteerDeg:deg} count as one). Caster, inclination and the camber straight ahead are three unknowns: at least {CasterReadings.LeastSteerAngles} steer angles are needed, best about 20° to either side and straight ahead."),
            CasterReadingsGap.SteerAnglesTooClose => Prose.Write(
                UnitSystem.Metric,
                $"all steer angles lie within {spread.SpreadDeg:deg}; they must reach over {CasterReadings.LeastSpreadDeg:deg} at least, and only about 20° to either side tells the axis well."),
            _ => "no steering axis comes near these readings, or they leave open which. Look at the signs first: steer is positive to the left on either side of the car, camber negative with the top towards the car's centre.",
        };
    }

    /// <summary>What the workshop's rule says all the same, as a further sentence; empty where it says nothing.</summary>
    public static string ShortCut(double? workshopRuleCasterDeg) => workshopRuleCasterDeg is { } casterDeg
        ? Prose.Write(UnitSystem.Metric, $" The workshop's rule of {CasterRules.WorkshopFactor:n} × the difference at ±{CasterRules.WorkshopSteerDeg:n}° gives a caster of {casterDeg:deg}, as an approximation.")
        : "";
}
