using SetupService.Domain.Answers;

namespace SetupService.Domain.Handling.CamberTarget;

/// <summary>The cautions that go with setting camber: what can hurt somebody who acts on it.</summary>
public static class CamberTargetCautions
{
    /// <summary>Those of a static camber, degrees.</summary>
    public static IReadOnlyList<Caution> Build(double camberDeg)
    {
        var list = new List<Caution>();
        if (camberDeg < CamberAdvice.MostOnRoadDeg)
        {
            list.Add(new("muchCamber", FormattableString.Invariant(
                $"{Math.Abs(camberDeg):0.0}° of negative camber is more than road cars are set to. On the road it wears out the inner shoulder where nobody sees it, may lengthen braking and lets the car follow ruts. Less roll, more caster in front, or a setting for the track alone may serve better.")));
        }

        list.Add(new("innerShoulder", "With more negative camber, look at the inner shoulders often, with the car safely on a lift or stands. Worn to the cords there, a tyre can burst while its outside looks good. Local law decides what depth is legal."));
        list.Add(new("alignAfterwards", "A change of camber changes toe. Have both measured and set, and the suspension's fasteners tightened at ride height to the vehicle maker's torque. Until then drive carefully."));
        list.Add(new("localLaw", "Local law, and those licensed to approve changes, decide whether a changed suspension or setting may be used on the road. This answer is no approval."));
        return list;
    }
}
