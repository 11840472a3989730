using SetupService.Domain.Answers;
using SetupService.Domain.Handling.CamberTarget;
using SetupService.Domain.Handling.Cars;
using SetupService.Domain.Numerics.Statistics;
using SetupService.Domain.Tyres;
using SetupService.Domain.Vehicles;
using SetupService.Domain.Wear.TreadWear;

namespace SetupService.Domain.Wear.Diagnosis.Advice;

/// <summary>What a static camber does to an axle's grip in the bends of the track and to its braking, by the models of the camber target.</summary>
internal sealed class CamberHandling
{
    private readonly CamberGrip _grip;
    private readonly HandlingAxle _axle;
    private readonly Tyre? _tyre;
    private readonly double _nowDeg;
    private readonly Uncertainty _flatDeg;

    private CamberHandling(CamberGrip grip, HandlingAxle axle, Tyre? tyre, double nowDeg, Uncertainty flatDeg) =>
        (_grip, _axle, _tyre, _nowDeg, _flatDeg) = (grip, axle, tyre, nowDeg, flatDeg);

    /// <summary>Of an axle; null where the cornering model does not tell of it.</summary>
    public static CamberHandling? Create(WearStudy study, CarAxle at)
    {
        if (study.Car is not { } car || study.ShortAt(at).ByModel is not { } byModel) return null;
        if (new BendSeries(TrackBends.Demand(at, study.Case.Use), budget: null).Works(car.Car) is not { } works) return null;
        var nowDeg = HandlingInputs.For(at).Camber.Read(car.Car);
        return new(new CamberGrip(car, at, works), car.Car.At(at), study.Case.Vehicle.At(at).Tyre, nowDeg, new Estimate(nowDeg - byModel.Value, byModel.StandardError).Ninety);
    }

    /// <summary>Change of grip by a change of camber, degrees; percent.</summary>
    public Uncertainty GripChangePct(double changeDeg) => _grip.ChangePct(_nowDeg + changeDeg, _flatDeg, stackalloc double[JointDraws.Count]);

    /// <summary>Change of braking by a change of camber, degrees; percent; null where no tyre is given.</summary>
    public Uncertainty? BrakingChangePct(double changeDeg) => _tyre is not { } tyre ? null : BrakingLoss.ChangePct(Spread(_nowDeg, tyre), Spread(_nowDeg + changeDeg, tyre));

    private double Spread(double deg, Tyre tyre) =>
        StraightRunning.Compute(deg, 0, _axle.LoadN / 2, _axle.TyreRateNPerMm, TreadWidth.Mm(tyre).Value, _axle.LoadedRadiusMm).PressureSpread;
}
