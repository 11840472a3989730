using SetupService.Domain.Answers;

namespace SetupService.Domain.Handling.Ride;

/// <summary>The cautions that go with springs and dampers: what can hurt somebody who acts on them.</summary>
public static class RideCautions
{
    // Closer than this, mm, coils are as good as touching.
    private const double LeastCoilClearanceMm = 5;

    // From this on, mm, somebody will see that the car stands otherwise.
    private const double SeenMm = 10;

    private static readonly Caution LocalLaw = new(
        "localLaw",
        "Whether other springs, dampers or another ride height are allowed on the road is decided by local law and by whoever is licensed to approve changes; this answer is not an approval. Headlamps, driver aids and alignment are to be set again.");

    /// <summary>Those of both axles.</summary>
    /// <param name="front">The front axle.</param>
    /// <param name="rear">The rear axle.</param>
    /// <param name="heightMm">How much higher than before a change each end stands, mm; null where that is not known.</param>
    /// <param name="units">Units of the sentences.</param>
    public static IReadOnlyList<Caution> Build(RideAxle front, RideAxle rear, (double? Front, double? Rear) heightMm, UnitSystem units)
    {
        ArgumentNullException.ThrowIfNull(front);
        ArgumentNullException.ThrowIfNull(rear);
        return [.. Build("front", front, heightMm.Front, units), .. Build("rear", rear, heightMm.Rear, units), CommonCautions.SpringsUnderLoad, LocalLaw];
    }

    private static List<Caution> Build(string name, RideAxle axle, double? heightMm, UnitSystem units)
    {
        var list = new List<Caution>();
        if (heightMm >= SeenMm)
            list.Add(new("standsHigher", Prose.Write(units, $"After the change the {name} stands {Math.Round(heightMm.Value):gap} higher{DroopLeft(axle, units)}. Springs for the height of before are shorter when free: check the free length, or trim the seats.")));
        if (heightMm <= -SeenMm && axle.BumpLeftMm is null)
            list.Add(new("bumpTravelUnknown", Prose.Write(units, $"After the change the {name} stands {Math.Round(-heightMm.Value):gap} lower, and how much bump travel that leaves is not known: on its bump stops a car grips less than is told here. Measure bump travel before buying.")));
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

    private static string DroopLeft(RideAxle axle, UnitSystem units) => axle.DroopLeftMm is > 0 and var leftMm ? Prose.Write(units, $", with {Math.Round(leftMm):gap} of droop left") : "";
}
