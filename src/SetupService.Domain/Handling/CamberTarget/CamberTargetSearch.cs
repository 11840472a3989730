using SetupService.Domain.Answers;
using SetupService.Domain.Handling.Cars;
using SetupService.Domain.Handling.Cornering;
using SetupService.Domain.Numerics;
using SetupService.Domain.Numerics.Statistics;
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
    internal const double SlopeStepDeg = 0.02;

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
        if (_series.Works(car) is not { } worksNow) return Failed(out failure);
        var setDeg = HandlingInputs.For(_demand.Axle).Camber.Read(car);
        var now = BendSeries.MeanDeg(worksNow, null)!.Value;
        if (Find(car, new(setDeg, now - _demand.TargetInclinationDeg), 1, out failure) is not { } found) return null;
        var set = With(car, found.CamberDeg);
        if (_series.Works(set) is not { } works || _budget is { IsSpent: true }) return Failed(out failure);
        var nearest = _demand.Reach?.Nearest(found.CamberDeg, setDeg) ?? found.CamberDeg;
        var meanAtNearest = nearest == found.CamberDeg ? _demand.TargetInclinationDeg : _series.VariedMeanDeg(With(car, nearest));
        var perCamber = _series.VariedMeanDeg(With(car, found.CamberDeg - SlopeStepDeg)) is { } below ? (_demand.TargetInclinationDeg - below) / SlopeStepDeg : found.PerCamber;
        var study = new CamberSensitivities(_reading, _demand, _series, _budget);
        var sensitivities = study.At(set);
        var casters = HandlingInputs.For(_demand.Axle).Caster;
        var steers = _demand.Axle == CarAxle.Front;
        var savedPerDeg = steers ? sensitivities.FirstOrDefault(one => one.Place == "/vehicle" + casters.Place)?.DegPerUnit : null;
        CamberForCaster[] withCaster = steers ? [.. castersDeg.Select(CamberForCaster)] : [];
        var saved = steers ? study.SavedInTightest(set) : null;
        if (_budget is { IsSpent: true }) return Failed(out failure);

        var flat = Range(found.CamberDeg, sensitivities);
        var grip = new CamberGrip(_reading, _demand.Axle, worksNow);
        var best = grip.Best(sensitivities);
        var advice = CamberAdvice.Create(new()
        {
            Axle = _demand.Axle,
            SetDeg = setDeg,
            Flat = flat,
            TargetDeg = _demand.TargetInclinationDeg,
            Best = best,
            Reach = _demand.Reach,
            Layout = car.At(_demand.Axle).Suspension.Layout,
            IsSetMeasured = _reading.AssumedFor(HandlingInputs.For(_demand.Axle).Camber) is null,
        });
        return new CamberTargetResult
        {
            StaticCamberDeg = flat,
            BestGripCamberDeg = best,
            SetCamberDeg = setDeg,
            Advice = advice,
            Grip = grip,
            LeftDeg = OneSide(works, found.CamberDeg, perCamber, TurnDirection.Right),
            RightDeg = OneSide(works, found.CamberDeg, perCamber, TurnDirection.Left),
            MeanInclinationNowDeg = now,
            NearestCamberDeg = nearest,
            MeanInclinationAtNearestDeg = meanAtNearest,
            Corners = works,
            Sensitivities = sensitivities,
            SavedPerCasterDeg = savedPerDeg,
            SavedPerCasterInTightestDeg = saved,
            WithCaster = withCaster,
        };

        CamberForCaster CamberForCaster(double deg)
        {
            var more = deg - casters.Read(car);
            if (more == 0) return new(deg, found.CamberDeg);
            var (other, guessDeg) = (casters.Put(car, deg), found.CamberDeg + ((savedPerDeg ?? 0) * more));
            return new(deg, _series.VariedMeanDeg(With(other, guessDeg)) is { } mean ? Find(other, new(guessDeg, mean - _demand.TargetInclinationDeg), perCamber, out _)?.CamberDeg : null);
        }
    }

    /// <summary>The 90 % range by joint draws of all inputs, skewed where theirs are.</summary>
    private static Uncertainty Range(double camberDeg, List<CamberSensitivity> sensitivities)
    {
        var draws = new double[JointDraws.Count];
        for (var i = 0; i < sensitivities.Count; i++) JointDraws.Add(i, sensitivities[i].AtLowerDeg, sensitivities[i].AtUpperDeg, draws);
        var (lower, upper) = JointDraws.Ends(draws);
        return new(camberDeg, camberDeg + Math.Min(0, lower), camberDeg + Math.Max(0, upper), Uncertainty.NinetyPct);
    }

    private CamberTargetResult? Failed(out CamberTargetFailure? failure)
    {
        failure = _budget is { IsSpent: true } ? new(CorneringFailure.WorkSpent, _demand.Hardest.Demand) : new(_series.Failure, _series.Failed);
        return null;
    }

    /// <summary>The camber and the slope of the mean inclination there.</summary>
    /// <param name="car">The car.</param>
    /// <param name="start">A camber, and by how much the mean inclination is off with it.</param>
    /// <param name="perCamber">The slope expected.</param>
    /// <param name="failure">Why there is none.</param>
    private (double CamberDeg, double PerCamber)? Find(HandlingCar car, (double CamberDeg, double OffDeg) start, double perCamber, out CamberTargetFailure? failure)
    {
        failure = null;
        var last = start;
        for (var tries = 0; tries < MostTries; tries++)
        {
            if (Math.Abs(last.OffDeg) <= AgreedDeg) return (last.CamberDeg, perCamber);

            // A wheel leans nearly as much as its camber is set; another slope is a stop or a lifted wheel on the way.
            var camber = Math.Clamp(last.CamberDeg - (last.OffDeg / Math.Clamp(perCamber, 0.3, 3)), -2 * LargestDeg, 2 * LargestDeg);
            if (_series.VariedMeanDeg(With(car, camber)) is not { } mean)
            {
                failure = new(_series.Failure, _series.Failed);
                return null;
            }

            var off = mean - _demand.TargetInclinationDeg;
            if (Math.Abs(camber - last.CamberDeg) > LeastLearntDeg) perCamber = (off - last.OffDeg) / (camber - last.CamberDeg);
            last = (camber, off);
        }

        failure = new(null, _demand.Hardest.Demand);
        return null;
    }

    private double? OneSide(BendWork[] works, double camberDeg, double perCamber, TurnDirection turn) =>
        BendSeries.MeanDeg(works, turn) is { } mean ? camberDeg - ((mean - _demand.TargetInclinationDeg) / perCamber) : null;

    private HandlingCar With(HandlingCar car, double camberDeg) => _demand.Set(car, camberDeg);
}
