using SetupService.Domain.Numerics;

namespace SetupService.Domain.Suspension.Points;

/// <summary>The coordinates of a suspension's points, and the suspension with one of them moved; lengths follow the points as drawn.</summary>
internal static class MovedPoints
{
    private static readonly Vector3[] Axes = [new(1, 0, 0), new(0, 1, 0), new(0, 0, 1)];

    /// <summary>One function a coordinate: the suspension with that coordinate greater by so many mm.</summary>
    public static IReadOnlyList<Func<double, Hardpoints>> List(Hardpoints points)
    {
        var list = new List<Func<double, Hardpoints>>();
        Add(list, by => points with { WheelCentre = points.WheelCentre + by });
        switch (points)
        {
            case MacPhersonStrut strut:
                AddArm(list, strut.LowerArm, arm => strut with { LowerArm = arm });
                AddRod(list, strut.TieRod, rod => strut with { TieRod = rod });
                Add(list, by => Along(strut with { StrutTop = strut.StrutTop + by }));
                Add(list, by => Along(strut with { StrutLower = strut.StrutLower + by }));
                break;
            case DoubleWishbone wishbone:
                AddArm(list, wishbone.LowerArm, arm => wishbone with { LowerArm = arm });
                AddArm(list, wishbone.UpperArm, arm => wishbone with { UpperArm = arm });
                AddRod(list, wishbone.TieRod, rod => wishbone with { TieRod = rod });
                break;
            case FiveLink links:
                for (var i = 0; i < links.Links.Length; i++)
                {
                    var index = i;
                    AddRod(list, links.Links[i], link => links.WithLink(index, link));
                }

                break;
            case TrailingArm arm:
                Add(list, by => arm with { Inner = arm.Inner + by, ArmInner = arm.ArmInner + by });
                Add(list, by => arm with { Outer = arm.Outer + by, ArmOuter = arm.ArmOuter + by });
                break;
            case TwistBeam beam:
                Add(list, by => beam with { PivotLeft = beam.PivotLeft + by });

                // In the car's centre plane by definition, so its y is without error.
                Add(list, by => beam with { BeamShearCentre = beam.BeamShearCentre + by }, isInCentrePlane: true);
                break;
        }

        if (points.Spring is { } spring)
        {
            Add(list, by => points with { Spring = spring with { Chassis = spring.Chassis + by } });
            Add(list, by => points with { Spring = spring with { Moving = spring.Moving + by } });
        }

        if (points.Damper is { } damper)
        {
            Add(list, by => points with { Damper = damper with { Chassis = damper.Chassis + by } });
            Add(list, by => points with { Damper = damper with { Moving = damper.Moving + by } });
        }

        return list;
    }

    private static void Add(List<Func<double, Hardpoints>> list, Func<Vector3, Hardpoints> moved, bool isInCentrePlane = false)
    {
        foreach (var axis in Axes)
        {
            if (isInCentrePlane && axis.Y != 0) continue;
            list.Add(mm => moved(mm * axis));
        }
    }

    private static void AddArm(List<Func<double, Hardpoints>> list, ControlArm arm, Func<ControlArm, Hardpoints> with)
    {
        Add(list, by => with(arm with { Front = arm.Front + by }));
        Add(list, by => with(arm with { Rear = arm.Rear + by }));
        Add(list, by => with(arm with { Joint = arm.Joint + by, Seat = arm.Seat + by }));
    }

    // What an adjuster added to the drawn length stays added.
    private static void AddRod(List<Func<double, Hardpoints>> list, Link rod, Func<Link, Hardpoints> with)
    {
        var addedMm = rod.LengthMm - (rod.Outer - rod.Inner).Length;
        Add(list, by => with(Drawn(rod.Inner + by, rod.Outer)));
        Add(list, by => with(Drawn(rod.Inner, rod.Outer + by)));

        Link Drawn(Vector3 inner, Vector3 outer) => new(inner, outer, (outer - inner).Length + addedMm);
    }

    private static MacPhersonStrut Along(MacPhersonStrut strut) => strut with { StrutAxis = (strut.StrutTop - strut.StrutLower).Unit() };
}
