using SetupService.Domain.Handling.Cars;
using SetupService.Domain.Handling.Cornering;
using SetupService.Domain.Numerics;
using SetupService.Domain.Suspension;
using SetupService.Domain.Vehicles;

namespace SetupService.Domain.Handling.CamberTarget;

/// <summary>
/// Finds the static camber with which the outer wheel's inclination to the road, weighted by load times slip times time over a mix of corners,
/// averages a target. Method page: docs/methods/camber-target.
/// </summary>
public sealed class CamberTargetSearch
{
    /// <summary>Largest static camber searched, degrees, either sign.</summary>
    public const double LargestDeg = 15;

    private const double AgreedDeg = 1e-9;
    private const int MostTries = 20;
    private const double RelativeStep = 1e-3;
    private const double SlopeStepDeg = 0.02;

    // Differences of camber below this, degrees, are rounding and give no slope.
    private const double LeastLearntDeg = 1e-4;

    private readonly ResolvedHandlingCar _reading;
    private readonly CamberDemand _demand;
    private readonly BendSeries _series;
    private readonly WorkBudget? _budget;

    private CamberTargetSearch(ResolvedHandlingCar reading, CamberDemand demand, WorkBudget? budget)
    {
        (_reading, _demand, _budget) = (reading, demand, budget);
        _series = new BendSeries(demand, budget);
    }

    /// <summary>Solves only the camber of both wheels, degrees; null with the failure where there is none.</summary>
    public static double? CamberDeg(HandlingCar car, CamberDemand demand, out CamberTargetFailure? failure, WorkBudget? budget = null)
    {
        var search = new CamberTargetSearch(new(car, [], []), demand, budget);
        return search.Find(car, null, out failure)?.CamberDeg;
    }

    /// <summary>Solves the camber with everything it depends on; null with the failure where there is none.</summary>
    /// <param name="reading">The car.</param>
    /// <param name="demand">What is asked.</param>
    /// <param name="castersDeg">Other casters to answer for; the present one is answered too.</param>
    /// <param name="budget">Work allowed; null = any.</param>
    /// <param name="failure">Why there is none.</param>
    public static CamberTargetResult? Solve(ResolvedHandlingCar reading, CamberDemand demand, IReadOnlyList<double> castersDeg, WorkBudget? budget, out CamberTargetFailure? failure)
    {
        ArgumentNullException.ThrowIfNull(reading);
        ArgumentNullException.ThrowIfNull(demand);
        ArgumentNullException.ThrowIfNull(castersDeg);
        return new CamberTargetSearch(reading, demand, budget).Whole(castersDeg, out failure);
    }

    private CamberTargetResult? Whole(IReadOnlyList<double> castersDeg, out CamberTargetFailure? failure)
    {
        var car = _reading.Car;
        if (_series.Works(car) is not { } worksNow)
        {
            failure = new(_series.Failure, _series.Failed);
            return null;
        }

        var now = BendSeries.MeanDeg(worksNow, null)!.Value;
        if (Find(car, null, out failure) is not { } found) return null;
        var set = With(car, found.CamberDeg);
        if (_series.Works(set) is not { } works) return Spent(out failure);
        var peakScale = _series.PeakScale;
        if (_budget is { IsSpent: true }) return Spent(out failure);
        var nearest = _demand.Adjustable is { } reach ? Math.Clamp(found.CamberDeg, reach.MinimumDeg, reach.MaximumDeg) : found.CamberDeg;
        var meanAtNearest = nearest == found.CamberDeg ? _demand.TargetInclinationDeg : MeanDeg(car, nearest);
        var perCamber = MeanDeg(car, found.CamberDeg - SlopeStepDeg) is { } below ? (_demand.TargetInclinationDeg - below) / SlopeStepDeg : found.PerCamber;
        var sensitivities = Sensitivities(set, found.CamberDeg);
        if (_budget is { IsSpent: true }) return Spent(out failure);
        var steers = _demand.Axle == CarAxle.Front;
        var caster = HandlingInputs.For(_demand.Axle).Caster;
        return new CamberTargetResult
        {
            StaticCamberDeg = new(found.CamberDeg, Math.Sqrt(sensitivities.Sum(one => one.LeavesOpenDeg * one.LeavesOpenDeg))),
            LeftDeg = OneSide(works, found.CamberDeg, perCamber, TurnDirection.Right),
            RightDeg = OneSide(works, found.CamberDeg, perCamber, TurnDirection.Left),
            MeanInclinationNowDeg = now,
            NearestCamberDeg = nearest,
            MeanInclinationAtNearestDeg = meanAtNearest,
            Corners = works,
            Sensitivities = sensitivities,
            SavedPerCasterDeg = steers ? sensitivities.FirstOrDefault(one => one.Place == "/vehicle" + caster.Place)?.DegPerUnit : null,
            SavedPerCasterInTightestDeg = steers ? SavedInTightest(set) : null,
            WithCaster = steers ? [.. castersDeg.Select(deg => new CamberForCaster(deg, CamberFor(car, deg, found, caster)))] : [],
            PeakScale = peakScale,
        };
    }

    private CamberTargetResult? Spent(out CamberTargetFailure? failure)
    {
        failure = new(_series.Failure ?? CorneringFailure.WorkSpent, _demand.Hardest.Demand);
        return null;
    }

    /// <summary>The camber and the slope of the mean inclination there.</summary>
    private (double CamberDeg, double PerCamber)? Find(HandlingCar car, double? startDeg, out CamberTargetFailure? failure)
    {
        failure = null;
        var input = HandlingInputs.For(_demand.Axle).Camber;
        var (camber, perCamber) = (startDeg ?? input.Read(car), 1.0);
        (double CamberDeg, double OffDeg)? before = null;
        for (var tries = 0; tries < MostTries; tries++)
        {
            if (_series.Works(With(car, camber)) is not { } works)
            {
                failure = new(_series.Failure, _series.Failed);
                return null;
            }

            var off = BendSeries.MeanDeg(works, null)!.Value - _demand.TargetInclinationDeg;
            if (before is { } last && Math.Abs(camber - last.CamberDeg) > LeastLearntDeg) perCamber = (off - last.OffDeg) / (camber - last.CamberDeg);
            if (Math.Abs(off) <= AgreedDeg) return (camber, perCamber);
            before = (camber, off);

            // A wheel leans nearly as much as its camber is set; another slope is a stop or a lifted wheel on the way.
            camber = Math.Clamp(camber - (off / Math.Clamp(perCamber, 0.3, 3)), -2 * LargestDeg, 2 * LargestDeg);
        }

        failure = new(null, _demand.Hardest.Demand);
        return null;
    }

    private List<CamberSensitivity> Sensitivities(HandlingCar car, double camberDeg)
    {
        var list = new List<CamberSensitivity>();
        if (_series.VariedMeanDeg(car) is not { } mean) return list;
        if (_series.VariedMeanDeg(With(car, camberDeg - SlopeStepDeg)) is not { } below || _series.VariedMeanDeg(With(car, camberDeg + SlopeStepDeg)) is not { } above) return list;
        var slopes = new CamberSlopes((mean - below) / SlopeStepDeg, (above - mean) / SlopeStepDeg);
        foreach (var input in HandlingInputs.All)
        {
            if (_budget is { IsSpent: true }) break;
            if (!Matters(input, car)) continue;
            var value = input.Read(car);
            var error = _reading.ErrorOf(input);
            var step = Math.Max(RelativeStep * Math.Abs(value), 0.02 * error);
            if (step == 0 || _series.VariedMeanDeg(input.Put(car, value + step)) is not { } moved) continue;
            list.Add(CamberSensitivity.Create(input, value, slopes.TakingBack(moved - mean) / step, error));
        }

        list.AddRange(OfDemand(car, mean, slopes));
        list.RemoveAll(one => one.DegPerUnit == 0);
        list.Sort((one, other) => other.LeavesOpenDeg.CompareTo(one.LeavesOpenDeg));
        return list;
    }

    private List<CamberSensitivity> OfDemand(HandlingCar car, double mean, in CamberSlopes slopes)
    {
        var list = new List<CamberSensitivity>();
        const double step = 0.01;
        const double errorG = 0.03;
        const double errorOfRadius = 0.1;
        var hardest = _demand.Hardest.Demand;
        var harder = new BendSeries(_demand with { Corners = [.. _demand.Corners.Select(one => one.Harder(1 + step))] }, _budget);
        if (harder.VariedMeanDeg(car) is { } moved)
            list.Add(new("/lateralG", "G", hardest.LateralG, slopes.TakingBack(moved - mean) / (step * hardest.LateralG), errorG));
        var tightest = _demand.Tightest.Demand;
        var wider = new BendSeries(_demand with { Corners = [.. _demand.Corners.Select(one => one with { Demand = one.Demand with { RadiusM = one.Demand.RadiusM * (1 + step) } })] }, _budget);
        if (wider.VariedMeanDeg(car) is { } widened)
            list.Add(new("/cornerRadiusM", "M", tightest.RadiusM, slopes.TakingBack(widened - mean) / (step * tightest.RadiusM), errorOfRadius * tightest.RadiusM));
        return list;
    }

    /// <summary>True when an input can move the answer at all, so that nothing is solved for one that cannot.</summary>
    private bool Matters(HandlingInput input, HandlingCar car)
    {
        var own = HandlingInputs.For(_demand.Axle);
        if (ReferenceEquals(input, own.Camber)) return false;
        foreach (var at in (ReadOnlySpan<CarAxle>)[CarAxle.Front, CarAxle.Rear])
        {
            var (list, axle) = (HandlingInputs.For(at), car.At(at));
            var tells = axle.Suspension.Tells;
            if (ReferenceEquals(input, list.SwingArm) && tells.HasFlag(SuspensionFigures.CamberOverTravel)) return false;
            if (ReferenceEquals(input, list.RollCentreHeight) && tells.HasFlag(SuspensionFigures.RollCentre)) return false;
            if (ReferenceEquals(input, list.MotionRatio) && tells.HasFlag(SuspensionFigures.SpringMotionRatio)) return false;
            if (ReferenceEquals(input, list.Inclination) && tells.HasFlag(SuspensionFigures.SteeringAxis)) return false;
            if (at == CarAxle.Rear && (ReferenceEquals(input, list.Caster) || ReferenceEquals(input, list.Inclination))) return false;
            if (axle.BumpTravelMm is null && (ReferenceEquals(input, list.StopRate) || ReferenceEquals(input, list.StopLength) || ReferenceEquals(input, list.DamperMotionRatio))) return false;
        }

        return true;
    }

    private double? MeanDeg(HandlingCar car, double camberDeg) =>
        _series.Works(With(car, camberDeg)) is { } works ? BendSeries.MeanDeg(works, null) : null;

    private double? OneSide(BendWork[] works, double camberDeg, double perCamber, TurnDirection turn) =>
        BendSeries.MeanDeg(works, turn) is { } mean ? camberDeg - ((mean - _demand.TargetInclinationDeg) / perCamber) : null;

    private double? CamberFor(HandlingCar car, double casterDeg, (double CamberDeg, double PerCamber) found, HandlingInput caster) =>
        Find(caster.Put(car, casterDeg), found.CamberDeg, out _)?.CamberDeg;

    private double? SavedInTightest(HandlingCar car)
    {
        var tightest = new BendSeries(_demand with { Corners = [_demand.Tightest] }, _budget);
        var caster = HandlingInputs.For(_demand.Axle).Caster;
        var camber = HandlingInputs.For(_demand.Axle).Camber;
        return tightest.VariedMeanDeg(car) is { } now
            && tightest.VariedMeanDeg(caster.Put(car, caster.Read(car) + 1)) is { } more
            && tightest.VariedMeanDeg(camber.Put(car, camber.Read(car) + 0.1)) is { } leaned
            ? -(more - now) / ((leaned - now) / 0.1)
            : null;
    }

    /// <summary>Both wheels set alike.</summary>
    private HandlingCar With(HandlingCar car, double camberDeg) =>
        car.With(_demand.Axle, car.At(_demand.Axle) with { LeftCamberDeg = camberDeg, RightCamberDeg = camberDeg });
}
