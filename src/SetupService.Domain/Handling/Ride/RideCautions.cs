using SetupService.Domain.Answers;

namespace SetupService.Domain.Handling.Ride;

/// <summary>The cautions that go with springs and dampers: what can hurt somebody who acts on them.</summary>
public static class RideCautions
{
    // Closer than this, mm, coils are as good as touching.
    private const double LeastCoilClearanceMm = 5;

    private static readonly Caution LocalLaw = new(
        "localLaw",
        "Whether other springs, dampers or another ride height are allowed on the road is decided by local law and by whoever is licensed to approve changes; this answer is not an approval. Headlamps, driver aids and alignment are to be set again.");

    /// <summary>Those of both axles.</summary>
    public static IReadOnlyList<Caution> Build(RideAxle front, RideAxle rear, UnitSystem units)
    {
        ArgumentNullException.ThrowIfNull(front);
        ArgumentNullException.ThrowIfNull(rear);
        return [.. Build("front", front, units), .. Build("rear", rear, units), CommonCautions.SpringsUnderLoad, LocalLaw];
    }

    private static List<Caution> Build(string name, RideAxle axle, UnitSystem units)
    {
        var list = new List<Caution>();
        if (axle.BumpLeftMm <= 0)
            list.Add(new("standsOnBumpStop", $"The {name} rests on its bump stops: it has no bump travel left, the stops set its rate, and its wheels may leave the road over a bump."));
        if (axle.DroopLeftMm <= 0)
            list.Add(new("standsAtFullDroop", $"The {name} rests at full droop: its wheels leave the road over every dip."));
        if (axle.CoilClearanceMm is { } clearance && clearance < LeastCoilClearanceMm)
            list.Add(new("coilBind", Prose.Write(units, $"{(clearance < 0 ? Prose.Write(units, $"The coils of the {name} spring touch {-clearance:gap} before its bump stop is fully compressed") : Prose.Write(units, $"With its bump stop fully compressed, the {name} spring has only {clearance:gap} left before its coils touch"))}. Coil bind breaks springs and mounts; fit a spring with a shorter solid length, or a longer stop.")));
        if (axle.SeatedAtDroopMm is { } looseMm and < 0)
            list.Add(new("springLooseAtDroop", Prose.Write(units, $"At full droop the {name} spring is {-looseMm:gap} too short for its seats: it can come off them and sit wrongly as the wheel comes up. Fit a helper spring, or reduce rebound travel.")));
        return list;
    }
}
