using SetupService.Domain.Tyres;
using SetupService.Domain.Vehicles;
using SetupService.Domain.Wear.Diagnosis;

namespace SetupService.Domain.Tests.Wear.SecondSimulation;

/// <summary>
/// Which causes are true of a drawn car. Angles by what would be otherwise: a cause is true where setting it right lets the fastest-wearing place of the
/// axle last a tenth longer (camber: one degree of it, every other fault taken away). Pressures from 15 % off. The rest as drawn.
/// </summary>
internal static class TrueCauses
{
    private const double LongerLife = 1.10;
    private const double LeastToeDeg = 0.12;
    private const double PressureShare = 0.15;
    private const double LeastExcessCamberDeg = -0.7;
    private const double OverdrivenShare = 0.2;
    private const double ElsewhereShare = 0.5;
    private const double WindowMarginC = 5;

    /// <summary>Finds them; with none of them, <see cref="WearCause.Normal"/> of no axle.</summary>
    public static HashSet<(WearCause Cause, CarAxle? Axle)> Find(DrawnCar car)
    {
        var found = new HashSet<(WearCause, CarAxle?)>();
        var life = Lives(car, car.Wheels, car.Driver);
        var sound = Sound(car, car.Wheels);
        var soundLife = Lives(car, sound, car.Driver);
        var moreLife = Lives(car, [.. sound.Select(one => one with { CamberDeg = one.CamberDeg - 1 })], car.Driver);
        var lessLife = Lives(car, [.. sound.Select(one => one with { CamberDeg = one.CamberDeg + 1 })], car.Driver);
        var toeLife = Lives(car, [.. car.Wheels.Select((one, i) => one with { ToeDeg = one.ToeDeg - ToeOff(car, i / 2) })], car.Driver);
        var calm = car.Driver with { OverdrivesFront = false, SpinsWheels = false };
        var calmLife = car.Driver.SpinsWheels || car.Driver.OverdrivesFront ? Lives(car, car.Wheels, calm) : life;
        foreach (var axle in (CarAxle[])[CarAxle.Front, CarAxle.Rear])
        {
            var (i, faults) = ((int)axle, car.Faults[(int)axle]);
            var toeOff = ToeOff(car, i);
            Add(WearCause.LowNegativeCamber, moreLife[i] > soundLife[i] * LongerLife);
            Add(WearCause.HighNegativeCamber, lessLife[i] > soundLife[i] * LongerLife && (sound[2 * i].CamberDeg + sound[(2 * i) + 1].CamberDeg) / 2 < LeastExcessCamberDeg);
            Add(WearCause.ToeIn, toeOff > LeastToeDeg && toeLife[i] > life[i] * LongerLife);
            Add(WearCause.ToeOut, toeOff < -LeastToeDeg && toeLife[i] > life[i] * LongerLife);
            Add(WearCause.UnderInflation, Math.Min(PressureOff(2 * i), PressureOff((2 * i) + 1)) < -PressureShare);
            Add(WearCause.OverInflation, Math.Max(PressureOff(2 * i), PressureOff((2 * i) + 1)) > PressureShare);
            Add(WearCause.WeakDamping, faults.HasWeakDamper);
            Add(WearCause.Imbalance, faults.HasImbalance);
            Add(WearCause.WheelLocking, faults.HasLocked);
            Add(WearCause.Wheelspin, car.Driver.SpinsWheels && car.Kind.DriveShare(axle) > 0 && calmLife[i] > life[i] * LongerLife);
            Add(WearCause.FrontOverdriven, axle == CarAxle.Front && car.Driver.OverdrivesFront && TrackShare(car, i) > OverdrivenShare);
            Add(WearCause.MixedTyres, faults.HasMixedTyres || car.Legs.Where(leg => leg.Positions[2 * i] != 2 * i).Sum(leg => leg.Share) > ElsewhereShare);
            Add(WearCause.SideDifference, faults.IsBent);
            Add(WearCause.AxleMisaligned, faults.IsAskew);
            Add(WearCause.BelowTemperatureWindow, car.Habit > 0 && MeanC(car, axle) < Window(car.Category).FromC - WindowMarginC);
            Add(WearCause.AboveTemperatureWindow, car.Habit > 0 && MeanC(car, axle) > Window(car.Category).ToC + WindowMarginC);
            Add(WearCause.RimWidthMismatch, faults.HasWrongRim);

            double PressureOff(int wheel) => (car.Wheels[wheel].PressureKpa / car.RightKpa(axle)) - 1;
            void Add(WearCause cause, bool isTrue)
            {
                if (isTrue) found.Add((cause, axle));
            }
        }

        if (found.Count == 0) found.Add((WearCause.Normal, null));
        return found;
    }

    /// <summary>Between which tread temperatures a tyre works, °C; judgement, no source.</summary>
    public static (double FromC, double ToC) Window(TyreCategory category) => category switch
    {
        TyreCategory.SemiSlick => (70, 100),
        TyreCategory.TrackDay => (60, 100),
        _ => (45, 95),
    };

    /// <summary>Mean temperature of an axle's treads at the end of a lap, °C: by air, pace, length of run and load; judgement, no source.</summary>
    public static double MeanC(DrawnCar car, CarAxle axle)
    {
        var share = axle == CarAxle.Front ? car.Kind.FrontShare : 1 - car.Kind.FrontShare;
        var run = car.Habit == 3 ? 0.55 : 1;
        return car.AirC + (run * 70 * Math.Pow(car.Driver.TrackG / 0.95, 1.6) * (0.6 + (0.8 * share))) + (axle == CarAxle.Front && car.Driver.OverdrivesFront ? 9 : 0);
    }

    /// <summary>How much more toe-in an axle has than it should, a wheel's mean, degrees.</summary>
    public static double ToeOff(DrawnCar car, int axle) => ((car.Wheels[2 * axle].ToeDeg + car.Wheels[(2 * axle) + 1].ToeDeg) / 2) - CarKind.At((CarAxle)axle, car.Kind.ToeDeg);

    /// <summary>The wheels with everything right but their axles' mean camber.</summary>
    private static WheelState[] Sound(DrawnCar car, WheelState[] wheels) => [.. wheels.Select((one, i) =>
    {
        var axle = (CarAxle)(i / 2);
        var (l, r) = (wheels[i / 2 * 2], wheels[(i / 2 * 2) + 1]);
        var camber = car.Faults[i / 2].IsBent ? Math.Abs(l.CamberDeg - CarKind.At(axle, car.Kind.CamberDeg)) < Math.Abs(r.CamberDeg - CarKind.At(axle, car.Kind.CamberDeg)) ? l.CamberDeg : r.CamberDeg : (l.CamberDeg + r.CamberDeg) / 2;
        return new WheelState(camber, CarKind.At(axle, car.Kind.ToeDeg), car.RightKpa(axle), wheels[i / 2 * 2].Tyre);
    })];

    /// <summary>How long the fastest-wearing place of each axle lasts, in parts of the use it had.</summary>
    private static double[] Lives(DrawnCar car, IReadOnlyList<WheelState> wheels, Driver driver)
    {
        var (road, track) = car.Rates(wheels, driver, DrawnCar.Fresh());
        return [.. Enumerable.Range(0, 2).Select(axle => 1 / Enumerable.Range(2 * axle, 2).Max(wheel => Zones(disc => (car.RoadKm * road[wheel][disc]) + (car.Laps * car.LapKm * track[wheel][disc])).Max()))];
    }

    /// <summary>Means near the two shoulder grooves and in the middle.</summary>
    private static double[] Zones(Func<int, double> of) => [(of(1) + of(2)) / 2, (of(4) + of(5) + of(6)) / 3, (of(8) + of(9)) / 2];

    private static double TrackShare(DrawnCar car, int axle)
    {
        var (road, track) = car.Rates(car.Wheels, car.Driver, DrawnCar.Fresh());
        var (byRoad, byTrack) = (road[2 * axle].Sum() * car.RoadKm, track[2 * axle].Sum() * car.Laps * car.LapKm);
        return byTrack / (byRoad + byTrack);
    }
}
