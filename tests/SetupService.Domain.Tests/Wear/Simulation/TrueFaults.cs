using SetupService.Domain.Tyres;
using SetupService.Domain.Vehicles;
using SetupService.Domain.Wear.Diagnosis;

namespace SetupService.Domain.Tests.Wear.Simulation;

/// <summary>Which causes hold of a car by their definitions, whatever was drawn.</summary>
internal static class TrueFaults
{
    public const double ShortCamberDeg = 0.5;
    public const double ExcessCamberDeg = 1;
    public const double ToeDeg = 0.15;
    public const double PressureShare = 0.1;
    public const double HollowMm = 0.15;
    public const double RunOutMm = 0.1;
    public const double FlatMm = 0.25;
    public const double SideCamberDeg = 0.6;
    public const double ThrustDeg = 0.15;
    public const double RateShare = 0.2;

    public static HashSet<(WearCause Cause, CarAxle Axle)> Of(TrueCar car, WornTyre[] tyres)
    {
        var faults = new HashSet<(WearCause, CarAxle)>();
        foreach (var place in new[] { CarAxle.Front, CarAxle.Rear })
        {
            var axle = car.At(place);
            var left = tyres[place == CarAxle.Front ? 0 : 2];
            var right = tyres[place == CarAxle.Front ? 1 : 3];
            foreach (var cause in Geometry(car, axle, left, right).Concat(Rubber(car, axle, tyres)))
            {
                faults.Add((cause, place));
            }
        }

        return faults;
    }

    /// <summary>Negative camber over what the cornering needs, mean of the axle, degrees.</summary>
    public static double CamberOverDeg(TrueCar car, TrueAxle axle) =>
        (-(axle.Left.CamberDeg + axle.Right.CamberDeg) / 2) - axle.NeededNegativeCamberDeg(car.Use.CorneringG);

    /// <summary>Toe with which each wheel runs: those of a steered axle share theirs, those of the other keep their own.</summary>
    public static (double LeftDeg, double RightDeg) RunningToe(TrueAxle axle) => axle.Place == CarAxle.Front
        ? (axle.MeanToeDeg, axle.MeanToeDeg)
        : (axle.Left.ToeDeg, axle.Right.ToeDeg);

    private static List<WearCause> Geometry(TrueCar car, TrueAxle axle, WornTyre left, WornTyre right)
    {
        var causes = new List<WearCause>();
        var overDeg = CamberOverDeg(car, axle);
        if (overDeg <= -ShortCamberDeg) causes.Add(WearCause.LowNegativeCamber);
        if (overDeg >= ExcessCamberDeg && RoadWearsInner(left, right)) causes.Add(WearCause.HighNegativeCamber);
        var (leftDeg, rightDeg) = RunningToe(axle);
        if (Math.Min(leftDeg, rightDeg) > ToeDeg) causes.Add(WearCause.ToeIn);
        if (Math.Max(leftDeg, rightDeg) < -ToeDeg) causes.Add(WearCause.ToeOut);
        if (Math.Abs(axle.Left.CamberDeg - axle.Right.CamberDeg) >= SideCamberDeg) causes.Add(WearCause.SideDifference);
        if (axle.DragShare > 0 && Math.Abs(axle.ThrustDeg) >= ThrustDeg) causes.Add(WearCause.AxleMisaligned);
        return causes;
    }

    private static List<WearCause> Rubber(TrueCar car, TrueAxle axle, WornTyre[] tyres)
    {
        var causes = new List<WearCause>();
        if (Math.Min(axle.Left.PressureOffShare, axle.Right.PressureOffShare) <= -PressureShare) causes.Add(WearCause.UnderInflation);
        if (Math.Max(axle.Left.PressureOffShare, axle.Right.PressureOffShare) >= PressureShare) causes.Add(WearCause.OverInflation);
        if (Any(axle, wheel => wheel.HollowMm >= HollowMm)) causes.Add(WearCause.WeakDamping);
        if (Any(axle, wheel => wheel.RunOutMm >= RunOutMm)) causes.Add(WearCause.Imbalance);
        if (Any(axle, wheel => wheel.FlatMm >= FlatMm)) causes.Add(WearCause.WheelLocking);
        if (axle.SpunRoadShare > 0 || (axle.SpunTrackShare > 0 && car.Use.HasTrack)) causes.Add(WearCause.Wheelspin);
        if (Any(axle, wheel => wheel.Earlier is not null || Math.Abs(wheel.RateFactor - 1) >= RateShare)) causes.Add(WearCause.MixedTyres);
        if (IsRimWrong(axle.Tyre)) causes.Add(WearCause.RimWidthMismatch);
        if (!car.Use.HasTrack) return causes;

        var first = axle.Place == CarAxle.Front ? 0 : 2;
        if (axle.Place == CarAxle.Front && Math.Max(tyres[first].TrackSlipShare, tyres[first + 1].TrackSlipShare) >= 1) causes.Add(WearCause.FrontOverdriven);
        var treadC = TreadHeat.AxleC(car, axle, tyres);
        if (treadC < axle.Tyre.WindowC.FromC) causes.Add(WearCause.BelowTemperatureWindow);
        if (treadC > axle.Tyre.WindowC.ToC) causes.Add(WearCause.AboveTemperatureWindow);
        return causes;
    }

    /// <summary>The road takes more of the inner shoulder than of the outer, and no small part of all that is gone there.</summary>
    private static bool RoadWearsInner(WornTyre left, WornTyre right)
    {
        double innerMm = 0, outerMm = 0, allMm = 0;
        foreach (var tyre in new[] { left, right })
        {
            innerMm += Strips.At(tyre.RoadLostMm, 85);
            outerMm += Strips.At(tyre.RoadLostMm, 15);
            allMm += Strips.At(tyre.LostMm, 85);
        }

        return innerMm > outerMm && innerMm > 0.2 * allMm;
    }

    private static bool IsRimWrong(TrueTyre tyre) =>
        TyreMarkingReader.Read(tyre.Marking).TryGet(out var marking, out _) && !marking.PermittedRimWidth.Includes(tyre.RimWidthIn);

    private static bool Any(TrueAxle axle, Func<TrueWheel, bool> holds) => holds(axle.Left) || holds(axle.Right);
}
