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
                $"{Math.Abs(camberDeg):0.0}° of negative camber is more than road cars are set to. On the road it wears out the inner shoulder unseen, lengthens braking and makes the car follow ruts; more roll stiffness, more caster or a track-only setting may serve better.")));
        }

        list.Add(new("innerShoulder", "Inspect the inner shoulder often, on a lift, with more negative camber: worn to the cords there a tyre can burst while its outside looks good. Local law decides what depth is legal."));
        list.Add(new("alignAfterwards", "Have the alignment measured and set after a change of camber, which changes toe, and the suspension's fasteners tightened to the vehicle maker's torque at ride height. Drive carefully until that is done."));
        list.Add(new("localLaw", "Local law, and whoever is licensed to approve changes, decide whether a changed suspension or setting is allowed on the road; this answer is not an approval."));
        return list;
    }
}
