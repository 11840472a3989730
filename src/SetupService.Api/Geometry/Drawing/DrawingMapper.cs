using SetupService.Api.Drawings.Corners;
using SetupService.Domain.Answers;
using SetupService.Domain.Suspension;
using SetupService.Domain.Suspension.Kinematics;

namespace SetupService.Api.Geometry.Drawing;

/// <summary>Puts a solved corner into the views that are drawn of it.</summary>
internal static class DrawingMapper
{
    public static CornerViews Views(Corner corner, CornerMechanism mechanism, in SuspensionPose pose, UnitSystem units)
    {
        var placed = PlacedCorner.From(mechanism.Setting.Suspension, pose);
        var figures = WheelKinematics.Compute(mechanism, pose);
        return new CornerViews
        {
            Heading = "The left corner with its links and axes",
            Lines = [SuspensionLayoutWords.Describe(corner.Suspension.Layout), Position(pose, pose.TravelMm + corner.Setup.RideHeightChangeMm, figures, units)],
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
