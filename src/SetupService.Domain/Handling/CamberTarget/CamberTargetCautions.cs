using SetupService.Domain.Answers;

namespace SetupService.Domain.Handling.CamberTarget;

/// <summary>The cautions that go with setting camber: what can hurt somebody who acts on it.</summary>
public static class CamberTargetCautions
{
    // More than this, degrees, is beyond what road cars are set to; common practice, no source.
    private const double MuchDeg = 3.5;

    /// <summary>Those of a static camber, degrees.</summary>
    public static IReadOnlyList<Caution> Build(double camberDeg)
    {
        var list = new List<Caution>();
        if (camberDeg < -MuchDeg)
        {
            list.Add(new("muchCamber", FormattableString.Invariant(
                $"{Math.Abs(camberDeg):0.0}° is more than road cars are set to. On the road it wears the inner shoulder through before the rest of the tread shows it, lengthens braking and makes the car follow ruts; a stiffer body in roll, more caster or a track-only setting may serve better.")));
        }

        list.Add(new("innerShoulder", "With more negative camber look at the inner shoulder of the tread often, on a lift: worn to the cords there a tyre can burst while its outside looks good. What depth is legal is for local law."));
        list.Add(new("alignAfterwards", "Changing camber changes toe. Have the alignment measured and set after it, and the suspension's fasteners tightened to the vehicle maker's torque at ride height; drive carefully until that is done."));
        list.Add(new("localLaw", "Whether a changed suspension or setting is allowed on the road is decided by local law and by whoever is licensed to approve changes; this answer is not an approval."));
        return list;
    }
}
