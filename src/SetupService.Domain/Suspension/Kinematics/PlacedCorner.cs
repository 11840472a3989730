using SetupService.Domain.Numerics;
using SetupService.Domain.Suspension.Points;

namespace SetupService.Domain.Suspension.Kinematics;

/// <summary>The points of a suspension at one position of its wheel, and what joins them.</summary>
public sealed class PlacedCorner
{
    private readonly List<CornerPoint> _points = [];
    private readonly List<CornerLink> _links = [];
    private readonly UprightPose _pose;
    private readonly Vector3 _statedCentre;
    private readonly double _rackMm;

    private PlacedCorner(Hardpoints suspension, in SuspensionPose state)
    {
        _pose = state.Pose;
        _statedCentre = suspension.WheelCentre;
        _rackMm = state.RackMm;
    }

    /// <summary>The points, in the order in which they are numbered.</summary>
    public IReadOnlyList<CornerPoint> Points => _points;

    /// <summary>What joins them.</summary>
    public IReadOnlyList<CornerLink> Links => _links;

    /// <summary>Places a suspension.</summary>
    /// <param name="suspension">Its points at the stated position.</param>
    /// <param name="state">The position.</param>
    public static PlacedCorner From(Hardpoints suspension, in SuspensionPose state)
    {
        ArgumentNullException.ThrowIfNull(suspension);
        var placed = new PlacedCorner(suspension, state);
        switch (suspension)
        {
            case MacPhersonStrut strut: placed.Add(strut); break;
            case DoubleWishbone wishbone: placed.Add(wishbone); break;
            case FiveLink links: placed.Add(links); break;
            case TrailingArm arm: placed.AddArm("inner pivot", arm.Inner, "outer pivot", arm.Outer); break;
            case TwistBeam beam: placed.AddArm("beam's shear centre", beam.BeamShearCentre, "pivot", beam.PivotLeft); break;
        }

        return placed;
    }

    private void Add(MacPhersonStrut strut)
    {
        var joint = AddArm("lower", strut.LowerArm);
        var top = OnBody("top mount", strut.StrutTop);
        var lower = OnUpright("strut, lower point", strut.StrutLower);
        Join(top, lower, CornerLinkKind.Strut);
        Join(joint, lower, CornerLinkKind.Upright);
        AddRod(strut.TieRod, joint);
        Join(joint, OnUpright("wheel centre", _statedCentre), CornerLinkKind.Upright);
    }

    private void Add(DoubleWishbone wishbone)
    {
        var lower = AddArm("lower", wishbone.LowerArm);
        var upper = AddArm("upper", wishbone.UpperArm);
        Join(lower, upper, CornerLinkKind.Upright);
        AddRod(wishbone.TieRod, lower);
        Join(lower, OnUpright("wheel centre", _statedCentre), CornerLinkKind.Upright);
    }

    private void Add(FiveLink suspension)
    {
        var centre = OnUpright("wheel centre", _statedCentre);
        for (var i = 0; i < suspension.Links.Length; i++)
        {
            var link = suspension.Links[i];
            var isRod = i == suspension.Links.Length - 1;
            var inner = OnBody($"link {i + 1}, body", isRod ? Racked(link.Inner) : link.Inner);
            var outer = OnUpright($"link {i + 1}, upright", link.Outer);
            Join(inner, outer, isRod ? CornerLinkKind.TieRod : CornerLinkKind.Arm);
            Join(outer, centre, CornerLinkKind.Upright);
        }
    }

    private void AddArm(string innerName, in Vector3 inner, string outerName, in Vector3 outer)
    {
        var from = OnBody(innerName, inner);
        var to = OnBody(outerName, outer);
        var centre = OnUpright("wheel centre", _statedCentre);
        Join(from, to, CornerLinkKind.PivotAxis);
        Join(from, centre, CornerLinkKind.Arm);
        Join(to, centre, CornerLinkKind.Arm);
    }

    private CornerPoint AddArm(string name, ControlArm arm)
    {
        var front = OnBody($"{name} arm, front pivot", arm.Front);
        var rear = OnBody($"{name} arm, rear pivot", arm.Rear);
        var joint = OnUpright($"{name} ball joint", arm.Joint);
        Join(front, rear, CornerLinkKind.PivotAxis);
        Join(front, joint, CornerLinkKind.Arm);
        Join(rear, joint, CornerLinkKind.Arm);
        return joint;
    }

    private void AddRod(Link rod, CornerPoint joint)
    {
        var outer = OnUpright("tie rod, outer end", rod.Outer);
        Join(OnBody("tie rod, inner end", Racked(rod.Inner)), outer, CornerLinkKind.TieRod);
        Join(outer, joint, CornerLinkKind.Upright);
    }

    private Vector3 Racked(in Vector3 inner) => inner with { Y = inner.Y + _rackMm };

    private CornerPoint OnBody(string name, in Vector3 place) => Keep(new CornerPoint(name, place, IsOnBody: true));

    private CornerPoint OnUpright(string name, in Vector3 stated) =>
        Keep(new CornerPoint(name, _pose.Centre + _pose.Turn.Apply(stated - _statedCentre), IsOnBody: false));

    private CornerPoint Keep(CornerPoint point)
    {
        _points.Add(point);
        return point;
    }

    private void Join(CornerPoint from, CornerPoint to, CornerLinkKind kind) => _links.Add(new CornerLink(from, to, kind));
}

/// <summary>A point of a corner, numbered and named in pictures.</summary>
/// <param name="Name">What it is, "lower ball joint".</param>
/// <param name="Position">Where it is, mm, in the axes of the geometry: x forward, y left with the centre plane at 0, z up.</param>
/// <param name="IsOnBody">Whether it stands still when the wheel moves.</param>
public sealed record CornerPoint(string Name, Vector3 Position, bool IsOnBody);

/// <summary>A line between two points of a corner.</summary>
/// <param name="From">One end.</param>
/// <param name="To">The other end.</param>
/// <param name="Kind">What the line is part of.</param>
public sealed record CornerLink(CornerPoint From, CornerPoint To, CornerLinkKind Kind);

/// <summary>What a line of a corner is part of.</summary>
public enum CornerLinkKind
{
    /// <summary>An arm or link.</summary>
    Arm,

    /// <summary>Tie rod or toe link.</summary>
    TieRod,

    /// <summary>A strut.</summary>
    Strut,

    /// <summary>A spring or damper.</summary>
    Spring,

    /// <summary>The upright, or the part of an arm that carries the wheel.</summary>
    Upright,

    /// <summary>The line an arm turns about.</summary>
    PivotAxis,
}
