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
    public static IReadOnlyList<Caution> Build(RideAxle front, RideAxle rear)
    {
        ArgumentNullException.ThrowIfNull(front);
        ArgumentNullException.ThrowIfNull(rear);
        return [.. Build("front", front), .. Build("rear", rear), CommonCautions.SpringsUnderLoad, LocalLaw];
    }

    private static List<Caution> Build(string name, RideAxle axle)
    {
        var list = new List<Caution>();
        if (axle.BumpLeftMm <= 0)
            list.Add(new("standsOnBumpStop", $"The {name} stands on its bump stops at rest: no travel is left, the springs do not decide its rate, and it may leave the road over a bump."));
        if (axle.DroopLeftMm <= 0)
            list.Add(new("standsAtFullDroop", $"The {name} stands at full droop at rest: its wheels leave the road over every dip."));
        if (axle.CoilClearanceMm is { } clearance && clearance < LeastCoilClearanceMm)
            list.Add(new("coilBind", FormattableString.Invariant($"With its bump stop pressed flat the {name} spring has {clearance:0} mm left to its coils touching. Coil on coil breaks springs and mounts; it needs a shorter solid length or a stop that ends the travel before.")));
        if (axle.SeatedAtDroopMm < 0)
            list.Add(new("springLooseAtDroop", FormattableString.Invariant($"At full droop the {name} spring is {-axle.SeatedAtDroopMm:0} mm too short for its seats: it can come off them and be out of place as the wheel comes down. It needs a helper spring or less rebound travel.")));
        return list;
    }
}
