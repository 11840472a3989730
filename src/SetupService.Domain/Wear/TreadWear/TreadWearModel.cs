using SetupService.Domain.Handling.CamberTarget;
using static SetupService.Domain.Wear.TreadWear.TreadWearParameters;

namespace SetupService.Domain.Wear.TreadWear;

/// <summary>
/// Local wear as pressure times sliding, over the road and the track a tyre did: a strip's pressure falls across the patch with the wheel's inclination; it slides by
/// the side force in corners and by toe, lean and free rolling on the straight. Formulas and limits: docs/methods/tread-wear.
/// </summary>
public static class TreadWearModel
{
    /// <summary>Wear of a strip, mm.</summary>
    /// <param name="wheel">How the wheel stands.</param>
    /// <param name="y">The strip, from −1 at the outer edge to 1 at the inner one.</param>
    /// <param name="roadKm">Kilometres of road.</param>
    /// <param name="trackKm">Kilometres of track.</param>
    /// <param name="parameters">In the order of <see cref="TreadWearParameters"/>.</param>
    /// <param name="camberChangeDeg">Change of the static camber, degrees.</param>
    public static double WornMm(WheelUse wheel, double y, double roadKm, double trackKm, ReadOnlySpan<double> parameters, double camberChangeDeg = 0)
    {
        ArgumentNullException.ThrowIfNull(wheel);
        var stiffness = Math.Exp(parameters[Stiffness]);
        var road = roadKm > 0 ? roadKm / 1000 * Math.Exp(parameters[Road]) * OnRoad(wheel, y, stiffness, camberChangeDeg) : 0;
        var track = trackKm > 0 ? trackKm / 1000 * Math.Exp(parameters[Track]) * OnTrack(wheel, y, stiffness, parameters[Unseen], camberChangeDeg) : 0;
        return (road + track) * TreadStrip.Shape(y, parameters[Bow], parameters[Outward]);
    }

    /// <summary>Wear of a strip on the straight by that of a tread that neither leans nor toes.</summary>
    private static double OnRoad(WheelUse wheel, double y, double stiffness, double camberChangeDeg)
    {
        var camberDeg = wheel.CamberDeg + camberChangeDeg;
        var pressure = TreadStrip.Pressure(y, stiffness * TreadStrip.LeanPerDeg(wheel, wheel.LoadN) * camberDeg);
        var along = y * wheel.TreadWidthMm / 2 * Math.Sin(double.DegreesToRadians(camberDeg)) / wheel.RadiusMm;
        var toe = double.DegreesToRadians(wheel.ToeDeg);
        const double background = StraightRunning.BackgroundSlip;
        return pressure * Math.Sqrt((background * background) + (toe * toe) + (along * along)) / background;
    }

    /// <summary>Wear of a strip in the corners by the mean of both tyres of the axle.</summary>
    private static double OnTrack(WheelUse wheel, double y, double stiffness, double unseenDeg, double camberChangeDeg)
    {
        var sum = 0.0;
        foreach (var corner in wheel.Corners)
        {
            var unseen = corner.IsOuter ? unseenDeg : -unseenDeg;
            var inclinationDeg = corner.InclinationDeg + (corner.PerCamber * camberChangeDeg) + unseen;
            sum += corner.Work * TreadStrip.Pressure(y, stiffness * TreadStrip.LeanPerDeg(wheel, corner.LoadN) * inclinationDeg);
        }

        return sum;
    }
}
