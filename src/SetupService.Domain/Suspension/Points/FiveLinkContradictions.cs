using SetupService.Domain.Answers;
using SetupService.Domain.Numerics;

namespace SetupService.Domain.Suspension.Points;

/// <summary>What can contradict in the points of five links.</summary>
internal static class FiveLinkContradictions
{
    public static void Add(FiveLink suspension, List<Contradiction> found)
    {
        for (var i = 0; i < suspension.Links.Length; i++)
        {
            var link = suspension.Links[i];
            Contradictions.AddLength(found, $"links[{i}].upright", link.Outer, $"links[{i}].chassis", link.Inner);
            if (link.Outer.Y >= suspension.WheelCentre.Y)
            {
                found.Add(new("wheelCentre", Prose.Write(
                    UnitSystem.Metric, $"the wheel centre stands {link.Outer.Y - suspension.WheelCentre.Y:mm} inboard of links[{i}].upright; it must be outboard of it.")));
            }

            for (var k = 0; k < i; k++)
            {
                if (!AreSame(suspension.Links[k].Inner, link.Inner) || !AreSame(suspension.Links[k].Outer, link.Outer)) continue;
                found.Add(new($"links[{i}]", $"links[{i}] joins the same points as links[{k}]; five different links are needed to hold the wheel."));
            }
        }
    }

    private static bool AreSame(in Vector3 a, in Vector3 b) => (a - b).Length < Contradictions.SamePointMm;
}
