using SetupService.Domain.Answers;

namespace SetupService.Domain.Suspension.Points;

/// <summary>What can contradict in a strut's points.</summary>
internal static class StrutContradictions
{
    public static void Add(MacPhersonStrut strut, List<Contradiction> found)
    {
        JointContradictions.AddArm(found, "lower", strut.LowerArm);
        var joint = strut.LowerArm.Joint;
        var before = found.Count;
        Contradictions.AddLength(found, "strutLower", strut.StrutLower, "strutTop", strut.StrutTop);
        if (found.Count == before && strut.StrutTop.Z <= strut.StrutLower.Z)
        {
            found.Add(new("strutLower", Prose.Write(
                UnitSystem.Metric, $"strutLower stands {strut.StrutLower.Z - strut.StrutTop.Z:mm} above strutTop; it is the lower point of the strut's axis.")));
        }

        JointContradictions.AddAxis(found, joint, "strutTop", strut.StrutTop, strut.TieRod);
        JointContradictions.AddWheel(found, strut.WheelCentre, joint);
    }
}
