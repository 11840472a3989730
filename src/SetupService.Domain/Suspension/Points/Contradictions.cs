using SetupService.Domain.Answers;
using SetupService.Domain.Numerics;

namespace SetupService.Domain.Suspension.Points;

/// <summary>Finds points that contradict each other, before anything is computed with them.</summary>
public static class Contradictions
{
    /// <summary>Closer than this two points are one, and a point on a line, mm: no joint is so small.</summary>
    internal const double SamePointMm = 1;

    /// <summary>All of a suspension, in the order of its points; empty where nothing contradicts.</summary>
    public static IReadOnlyList<Contradiction> Find(Hardpoints suspension)
    {
        ArgumentNullException.ThrowIfNull(suspension);
        if (suspension.WheelCentre.Y < SamePointMm && HeldAt(suspension).Y < SamePointMm) return [OnTheRight(suspension.WheelCentre)];
        var found = new List<Contradiction>();
        if (suspension.WheelCentre.Y >= SamePointMm)
        {
            SideContradictions.Add(suspension, found);
            if (found.Count > 0) return found; // everything else would be measured against the wrong side
        }

        switch (suspension)
        {
            case MacPhersonStrut strut:
                StrutContradictions.Add(strut, found);
                break;
            case DoubleWishbone wishbone:
                WishboneContradictions.Add(wishbone, found);
                break;
            case FiveLink links:
                FiveLinkContradictions.Add(links, found);
                break;
            case TrailingArm arm:
                ArmContradictions.Add(arm, found);
                break;
            case TwistBeam beam:
                ArmContradictions.Add(beam, found);
                break;
        }

        if (suspension.WheelCentre.Y < SamePointMm)
        {
            found.Add(new("wheelCentre", Prose.Write(
                UnitSystem.Metric,
                $"the wheel centre stands at y = {suspension.WheelCentre.Y:mm}; points are the left corner's, to the left of the car's centre plane, y = 0.")));
        }

        SpringContradictions.Add(suspension, found);
        return found;
    }

    /// <summary>A point near the wheel that holds it, mm.</summary>
    private static Vector3 HeldAt(Hardpoints suspension) => suspension switch
    {
        MacPhersonStrut strut => strut.LowerArm.Joint,
        DoubleWishbone wishbone => wishbone.LowerArm.Joint,
        FiveLink links => links.Links[0].Outer,
        TrailingArm arm => arm.Outer,
        TwistBeam beam => beam.PivotLeft,
        _ => suspension.WheelCentre,
    };

    /// <summary>Everything else would be measured against the wrong side, so it is the only thing told.</summary>
    private static Contradiction OnTheRight(in Vector3 wheelCentre) => new("wheelCentre", Prose.Write(
        UnitSystem.Metric,
        $"the wheel centre stands at y = {wheelCentre.Y:mm}; give the left corner's points, to the left of the car's centre plane, y = 0: of a right corner turn the sign of every y."));

    /// <summary>Adds what is wrong with two ends that need a distance.</summary>
    internal static void AddLength(List<Contradiction> found, string member, in Vector3 point, string otherMember, in Vector3 other)
    {
        var length = (point - other).Length;
        if (length >= SamePointMm) return;
        found.Add(new(member, Prose.Write(UnitSystem.Metric, $"{member} and {otherMember} are {length:mm} apart: what joins them has no length.")));
    }

    /// <summary>Distance of a point from the line through two others, mm.</summary>
    internal static double Distance(in Vector3 point, in Vector3 onLine, in Vector3 alsoOnLine) =>
        (point - onLine).Cross((alsoOnLine - onLine).Unit()).Length;
}

/// <summary>Points that cannot all be meant.</summary>
/// <param name="Member">The point to look at first, as the contract names it below <c>points</c>; parts of a list with their place, as in <c>links[2].upright</c>.</param>
/// <param name="Message">What contradicts what, with the figures of the case.</param>
public sealed record Contradiction(string Member, string Message);
