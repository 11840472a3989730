using SetupService.Api.Drawings.Corners;
using SetupService.Api.Vehicles;
using SetupService.Api.Vehicles.Suspensions;
using SetupService.Domain.Answers;
using SetupService.Domain.Numerics;
using SetupService.Domain.Suspension.Kinematics;
using SetupService.Domain.Suspension.Points;

namespace SetupService.Api.Geometry.Drawing;

/// <summary>Puts a solved corner into the views that are drawn of it.</summary>
internal static class DrawingMapper
{
    public static CornerViews Views(Corner corner, CornerMechanism mechanism, in SuspensionPose pose, UnitSystem units)
    {
        var placed = PlacedCorner.Of(mechanism.Setting.Suspension, pose);
        var figures = WheelKinematics.Compute(mechanism, pose);
        return new CornerViews
        {
            Heading = "The left corner with its links and axes",
            Lines = [SuspensionWords.Kind(corner.Document!), Position(pose, pose.TravelMm + corner.Setup.RideHeightChangeMm, figures, units)],
            Points = placed.Points,
            Links = placed.Links,
            Wheel = WheelKinematics.Wheel(mechanism, pose),
            LoadedRadiusMm = corner.Setup.LoadedRadiusMm,
            TyreWidthMm = corner.Axle.Tyre?.Marking.NominalSectionWidthMm,
            Axis = WheelKinematics.Axis(mechanism, pose),
            FrontInstantCentre = View(figures.InstantCentreYMm, figures.InstantCentreZMm),
            SideInstantCentre = View(figures.SideInstantCentreXMm, figures.SideInstantCentreZMm),
            RollCentreHeightMm = figures.RollCentreHeightMm,
        };
    }

    private static string Position(in SuspensionPose pose, double travelMm, in WheelFigures figures, UnitSystem units)
    {
        var angles = Prose.Write(units, $"camber {figures.CamberDeg:deg}, toe {figures.ToeDeg:deg}");
        if (pose is { TravelMm: 0, RackMm: 0 } && travelMm == 0) return $"stated position: {angles}";
        if (travelMm == 0 && pose.RackMm == 0) return $"ride height: {angles}";
        return Prose.Write(units, $"at {travelMm:mm} of travel and {pose.RackMm:mm} of rack: {angles}");
    }

    private static ViewPoint? View(double? along, double? height) => along is { } a && height is { } h ? new ViewPoint(a, h) : null;
}

/// <summary>The points of a suspension at one position of its wheel, and what joins them.</summary>
internal sealed class PlacedCorner
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

    public IReadOnlyList<CornerPoint> Points => _points;

    public IReadOnlyList<CornerLink> Links => _links;

    public static PlacedCorner Of(Hardpoints suspension, in SuspensionPose state)
    {
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
        Join(top, lower, CornerPart.Strut);
        Join(joint, lower, CornerPart.Upright);
        AddRod(strut.TieRod, joint);
        Join(joint, OnUpright("wheel centre", _statedCentre), CornerPart.Upright);
    }

    private void Add(DoubleWishbone wishbone)
    {
        var lower = AddArm("lower", wishbone.LowerArm);
        var upper = AddArm("upper", wishbone.UpperArm);
        Join(lower, upper, CornerPart.Upright);
        AddRod(wishbone.TieRod, lower);
        Join(lower, OnUpright("wheel centre", _statedCentre), CornerPart.Upright);
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
            Join(inner, outer, isRod ? CornerPart.TieRod : CornerPart.Arm);
            Join(outer, centre, CornerPart.Upright);
        }
    }

    private void AddArm(string innerName, in Vector3 inner, string outerName, in Vector3 outer)
    {
        var from = OnBody(innerName, inner);
        var to = OnBody(outerName, outer);
        var centre = OnUpright("wheel centre", _statedCentre);
        Join(from, to, CornerPart.PivotAxis);
        Join(from, centre, CornerPart.Arm);
        Join(to, centre, CornerPart.Arm);
    }

    private CornerPoint AddArm(string name, ControlArm arm)
    {
        var front = OnBody($"{name} arm, front pivot", arm.Front);
        var rear = OnBody($"{name} arm, rear pivot", arm.Rear);
        var joint = OnUpright($"{name} ball joint", arm.Joint);
        Join(front, rear, CornerPart.PivotAxis);
        Join(front, joint, CornerPart.Arm);
        Join(rear, joint, CornerPart.Arm);
        return joint;
    }

    private void AddRod(Link rod, CornerPoint joint)
    {
        var outer = OnUpright("tie rod, outer end", rod.Outer);
        Join(OnBody("tie rod, inner end", Racked(rod.Inner)), outer, CornerPart.TieRod);
        Join(outer, joint, CornerPart.Upright);
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

    private void Join(CornerPoint from, CornerPoint to, CornerPart part) => _links.Add(new CornerLink(from, to, part));
}
