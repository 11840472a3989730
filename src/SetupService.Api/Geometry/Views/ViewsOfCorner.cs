using SetupService.Api.Drawings.Corners;
using SetupService.Api.Vehicles;
using SetupService.Domain.Answers;
using SetupService.Domain.Suspension.Kinematics;

namespace SetupService.Api.Geometry.Views;

/// <summary>Puts a solved corner into the views that are drawn of it.</summary>
internal static class ViewsOfCorner
{
    public static CornerViews Of(CornerDrawingRequest request, CornerMechanism corner, in SuspensionPose state, UnitSystem units)
    {
        var placed = PlacedCorner.Of(corner.Setting.Suspension, state);
        var figures = WheelKinematics.Compute(corner, state);
        return new CornerViews
        {
            Heading = "The left corner with its links and axes",
            Lines = [SuspensionWords.Kind(request.Suspension), Position(state, figures, units)],
            Points = placed.Points,
            Links = placed.Links,
            Wheel = WheelKinematics.Wheel(corner, state),
            LoadedRadiusMm = request.LoadedRadiusMm,
            TyreWidthMm = request.TyreWidthMm,
            Axis = WheelKinematics.Axis(corner, state),
            FrontInstantCentre = View(figures.InstantCentreYMm, figures.InstantCentreZMm),
            SideInstantCentre = View(figures.SideInstantCentreXMm, figures.SideInstantCentreZMm),
            RollCentreHeightMm = figures.RollCentreHeightMm,
        };
    }

    private static string Position(in SuspensionPose state, in WheelFigures figures, UnitSystem units)
    {
        var angles = Prose.Write(units, $"camber {figures.CamberDeg:deg}, toe {figures.ToeDeg:deg}");
        if (state is { TravelMm: 0, RackMm: 0 }) return $"stated position: {angles}";
        return Prose.Write(units, $"at {state.TravelMm:mm} of travel and {state.RackMm:mm} of rack: {angles}");
    }

    private static ViewPoint? View(double? along, double? height) => along is { } a && height is { } h ? new ViewPoint(a, h) : null;
}
