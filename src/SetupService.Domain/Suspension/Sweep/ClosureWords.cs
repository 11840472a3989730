using SetupService.Domain.Answers;
using SetupService.Domain.Suspension.Kinematics;
using SetupService.Domain.Suspension.Readings;

namespace SetupService.Domain.Suspension.Sweep;

/// <summary>Says why a position cannot be reached.</summary>
public static class ClosureWords
{
    /// <summary>The reason, with the figures of the case.</summary>
    public static string Reason(in UnreachablePosition missed, UnitSystem units = UnitSystem.Metric) => missed.Reason switch
    {
        UnreachableReason.DeadPoint => $"the parts meet there only past a dead point, where they no longer hold the wheel; the last position before it is at {Last(missed, units)}.",
        UnreachableReason.BeyondReadings => MeasuredWords.BeyondReadings(missed.TravelMm, missed.ReadFromMm, missed.ReadToMm, units),
        UnreachableReason.RackNotRead => "how far the rack steers is not told by readings; the call steer-sweep takes steer angles.",
        UnreachableReason.WorkSpent => $"the work allowed for one request was spent before this position was found; the last one found on the way is at {Last(missed, units)}.",
        _ => $"the parts do not meet there: at best {Part(missed.Gap, units)}; the last position they close at on the way is at {Last(missed, units)}.",
    };

    /// <summary>What keeps adjusted parts from being assembled, as a clause.</summary>
    public static string Adjusted(in ClosureGap gap) => gap.IsNone
        ? "the parts would meet only past a dead point, or too near to one, where they no longer hold the wheel or set its toe"
        : $"the parts do not meet: at best {Part(gap)}";

    /// <summary>What lacks, as a clause.</summary>
    public static string Part(in ClosureGap gap, UnitSystem units = UnitSystem.Metric) => gap.Role switch
    {
        ConstraintRole.Strut => Prose.Write(units, $"the top mount stands {gap.ResidualMm:mm} off the strut's axis"),
        ConstraintRole.ArmPivot => Prose.Write(units, $"the arm stands {gap.ResidualMm:mm} off its pivot's axis"),
        _ => Prose.Write(units, $"{Name(gap.Role)} is {Math.Abs(gap.GapMm):mm} too {(gap.GapMm > 0 ? "short" : "long")}"),
    };

    /// <summary>Where nothing was asked of the rack, nothing is said of it: the corner may have none.</summary>
    private static string Last(in UnreachablePosition missed, UnitSystem units) => missed is { RackMm: 0, LastRackMm: 0 }
        ? Prose.Write(units, $"{missed.LastTravelMm:mm} of travel")
        : Prose.Write(units, $"{missed.LastTravelMm:mm} of travel and {missed.LastRackMm:mm} of rack");

    private static string Name(ConstraintRole role) => role switch
    {
        ConstraintRole.LowerArmFront => "the lower arm, from its front pivot to its ball joint,",
        ConstraintRole.LowerArmRear => "the lower arm, from its rear pivot to its ball joint,",
        ConstraintRole.UpperArmFront => "the upper arm, from its front pivot to its ball joint,",
        ConstraintRole.UpperArmRear => "the upper arm, from its rear pivot to its ball joint,",
        ConstraintRole.TieRod => "the tie rod",
        ConstraintRole.Link1 => "link 1",
        ConstraintRole.Link2 => "link 2",
        ConstraintRole.Link3 => "link 3",
        ConstraintRole.Link4 => "link 4",
        _ => "link 5",
    };
}
