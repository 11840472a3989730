using SetupService.Domain.Tyres;
using static SetupService.Domain.Wear.TreadWear.TreadWearParameters;

namespace SetupService.Domain.Wear.TreadWear;

/// <summary>
/// Local wear as pressure times sliding, over the road and the track a tyre did: a strip's pressure falls across the patch with the wheel's inclination; it slides by
/// the side force in corners and by toe, lean and free rolling on the straight. Formulas and limits: docs/methods/tread-wear.
/// </summary>
public static class TreadWearModel
{
    /// <summary>Slip of ordinary road driving with its curves and braking, beside toe and lean; judgement, 0.3 to 1 % plausible.</summary>
    public const double RoadSlip = 0.007;

    /// <summary>Wear of a strip, mm.</summary>
    /// <param name="wheel">Load, angles and use of the wheel.</param>
    /// <param name="y">The strip, from −1 at the outer edge to 1 at the inner one.</param>
    /// <param name="roadKm">Kilometres of road.</param>
    /// <param name="trackKm">Kilometres of track.</param>
    /// <param name="parameters">In the order of <see cref="TreadWearParameters"/>.</param>
    public static double WornMm(WheelUse wheel, double y, double roadKm, double trackKm, ReadOnlySpan<double> parameters)
    {
        Span<double> gradient = stackalloc double[Count];
        return WornMm(wheel, y, roadKm, trackKm, parameters, gradient);
    }

    /// <summary>The same with its derivatives by the parameters; that by a new depth not stated is 0, it does not wear.</summary>
    public static double WornMm(WheelUse wheel, double y, double roadKm, double trackKm, ReadOnlySpan<double> parameters, Span<double> gradient)
    {
        ArgumentNullException.ThrowIfNull(wheel);
        var stiffness = Math.Exp(parameters[PressureShift]);
        var road = roadKm > 0 ? OnRoad(wheel, y, stiffness, Math.Exp(parameters[LeanSlip])).Scaled(roadKm / 1000 * Math.Exp(parameters[Road])) : default;
        var track = trackKm > 0 ? OnTrack(wheel, y, stiffness, parameters[UnmodelledInclination]).Scaled(trackKm / 1000 * Math.Exp(parameters[Track])) : default;
        var (bowed, leaning) = (1 + (parameters[CrownPressure] * (1 - (3 * y * y))), 1 - (parameters[OuterEdgeExcess] * y));
        var shape = bowed * leaning;
        gradient.Clear();
        gradient[Road] = road.Worn * shape;
        gradient[Track] = track.Worn * shape;
        gradient[PressureShift] = (road.ByStiffness + track.ByStiffness) * shape;
        gradient[UnmodelledInclination] = track.ByUnseen * shape;
        gradient[LeanSlip] = road.ByLeanSlip * shape;
        gradient[CrownPressure] = (road.Worn + track.Worn) * (1 - (3 * y * y)) * leaning;
        gradient[OuterEdgeExcess] = (road.Worn + track.Worn) * bowed * -y;
        return (road.Worn + track.Worn) * shape;
    }

    /// <summary>Wear of a strip on the straight by that of a tread that neither leans nor toes.</summary>
    private static StripWear OnRoad(WheelUse wheel, double y, double stiffness, double rollingShare)
    {
        var lean = stiffness * TreadStrip.LeanPerDeg(wheel, wheel.LoadN) * wheel.CamberDeg;
        var along = CamberSlip.Along(y * wheel.TreadWidthMm / 2, wheel.CamberDeg, wheel.RadiusMm, rollingShare);
        var toe = double.DegreesToRadians(wheel.ToeDeg);
        var slip = Math.Sqrt((RoadSlip * RoadSlip) + (toe * toe) + (along * along)) / RoadSlip;
        var pressure = TreadStrip.Pressure(y, lean);
        return new(pressure * slip, TreadStrip.PressureByLean(y, lean) * lean * slip, 0, pressure * along * along / (RoadSlip * RoadSlip * slip));
    }

    /// <summary>Wear of a strip in the corners by the mean of both tyres of the axle.</summary>
    private static StripWear OnTrack(WheelUse wheel, double y, double stiffness, double unseenDeg)
    {
        var sum = default(StripWear);
        foreach (var corner in wheel.Corners)
        {
            var side = corner.IsOuter ? 1 : 0;
            var inclinationDeg = corner.InclinationAngleDeg + (side * unseenDeg);
            var perDeg = stiffness * TreadStrip.LeanPerDeg(wheel, corner.LoadN);
            var lean = perDeg * inclinationDeg;
            var byLean = corner.Work * TreadStrip.PressureByLean(y, lean);
            sum = new(sum.Worn + (corner.Work * TreadStrip.Pressure(y, lean)), sum.ByStiffness + (byLean * lean), sum.ByUnseen + (byLean * perDeg * side), 0);
        }

        return sum;
    }

    private readonly record struct StripWear(double Worn, double ByStiffness, double ByUnseen, double ByLeanSlip)
    {
        public StripWear Scaled(double by) => new(by * Worn, by * ByStiffness, by * ByUnseen, by * ByLeanSlip);
    }
}
