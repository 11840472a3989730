using SetupService.Domain.Answers;
using SetupService.Domain.Numerics;

namespace SetupService.Domain.Suspension.Points;

/// <summary>Finds points on the right of the car's centre plane in a corner whose wheel is on the left: a y typed with the wrong sign.</summary>
internal static class SideContradictions
{
    /// <summary>
    /// A pivot on the body may lie across the centre plane by this much, mm (a judgement: pivots near the middle of the car are built,
    /// links that cross it belong to layouts not covered here).
    /// </summary>
    internal const double BodyAcrossMm = 100;

    public static void Add(Hardpoints suspension, List<Contradiction> found)
    {
        switch (suspension)
        {
            case MacPhersonStrut strut:
                AddArm("lower", strut.LowerArm);
                AddUpright("strutTop", strut.StrutTop);
                AddUpright("strutLower", strut.StrutLower);
                AddLink("tieRodInner", "tieRodOuter", strut.TieRod);
                break;
            case DoubleWishbone wishbone:
                AddArm("lower", wishbone.LowerArm);
                AddArm("upper", wishbone.UpperArm);
                AddLink("tieRodInner", "tieRodOuter", wishbone.TieRod);
                break;
            case FiveLink links:
                for (var i = 0; i < links.Links.Length; i++) AddLink($"links[{i}].chassis", $"links[{i}].upright", links.Links[i]);
                break;
            case TrailingArm arm:
                AddUpright("pivotOuter", arm.Outer);
                break;
        }

        AddLine("spring", suspension.Spring);
        AddLine("damper", suspension.Damper);

        void AddArm(string name, ControlArm arm)
        {
            AddBody(name + "ArmFront", arm.Front);
            AddBody(name + "ArmRear", arm.Rear);
            AddUpright(name + "BallJoint", arm.Joint);
        }

        void AddLink(string inner, string outer, Link link)
        {
            AddBody(inner, link.Inner);
            AddUpright(outer, link.Outer);
        }

        void AddLine(string name, SpringLine? line)
        {
            if (line is null) return;
            AddBody(name + "Chassis", line.Chassis);
            AddBody(name + "Moving", line.Moving);
        }

        void AddUpright(string member, in Vector3 point) => AddRightOf(member, point, 0);

        void AddBody(string member, in Vector3 point) => AddRightOf(member, point, -BodyAcrossMm);

        void AddRightOf(string member, in Vector3 point, double leastMm)
        {
            if (point.Y >= leastMm) return;
            found.Add(new(member, Prose.Write(
                UnitSystem.Metric,
                $"{member} is at y = {point.Y:mm}, to the right of the car's centre plane, and the wheel centre at y = {suspension.WheelCentre.Y:mm}, to the left: turn the sign of its y.")));
        }
    }
}
