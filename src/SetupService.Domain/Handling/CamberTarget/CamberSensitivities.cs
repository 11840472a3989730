using SetupService.Domain.Handling.Cars;
using SetupService.Domain.Numerics;
using SetupService.Domain.Suspension;
using SetupService.Domain.Vehicles;

namespace SetupService.Domain.Handling.CamberTarget;

/// <summary>How the static camber wanted moves with every input, and with what is asked, by differences about the solution.</summary>
internal sealed class CamberSensitivities(ResolvedHandlingCar reading, CamberDemand demand, BendSeries series, WorkBudget? budget)
{
    private const double RelativeStep = 1e-3;

    // What leaves less open, degrees, is rounding of the solver.
    private const double Unmoved = 1e-8;

    // An assumed input whose range moves the camber by less, degrees, by its slope is not solved at its ends.
    private const double LeastSolvedDeg = 0.02;

    /// <summary>Degrees of static camber that one more degree of caster saves in the tightest corner alone; null where it has no equilibrium then.</summary>
    public double? SavedInTightest(HandlingCar car)
    {
        var tightest = demand.Tightest.Demand;
        var caster = HandlingInputs.For(demand.Axle).Caster;
        var camber = HandlingInputs.For(demand.Axle).Camber;
        return series.VariedMeanDeg(car, tightest) is { } now
            && series.VariedMeanDeg(caster.Put(car, caster.Read(car) + 1), tightest) is { } more
            && series.VariedMeanDeg(camber.Put(car, camber.Read(car) + 0.1), tightest) is { } leaned
            ? -(more - now) / ((leaned - now) / 0.1)
            : null;
    }

    /// <summary>Every input that moves the answer, the largest effect first; empty where the search has no work left.</summary>
    /// <param name="car">The car with the camber wanted.</param>
    public List<CamberSensitivity> At(HandlingCar car)
    {
        var list = new List<CamberSensitivity>();
        var camberDeg = HandlingInputs.For(demand.Axle).Camber.Read(car);
        if (series.VariedMeanDeg(car) is not { } mean) return list;
        if (series.VariedMeanDeg(demand.Set(car, camberDeg - CamberTargetSearch.SlopeStepDeg)) is not { } below || series.VariedMeanDeg(demand.Set(car, camberDeg + CamberTargetSearch.SlopeStepDeg)) is not { } above) return list;
        var slopes = new CamberSlopes((mean - below) / CamberTargetSearch.SlopeStepDeg, (above - mean) / CamberTargetSearch.SlopeStepDeg);
        foreach (var input in HandlingInputs.All)
        {
            if (budget is { IsSpent: true }) break;
            if (!Matters(input, car)) continue;
            var value = input.Read(car);
            var error = reading.ErrorOf(input);
            var step = Math.Max(RelativeStep * Math.Abs(value), 0.02 * error);
            if (step == 0 || series.VariedMeanDeg(input.Put(car, value + step)) is not { } moved) continue;
            list.Add(WithEnds(new("/vehicle" + input.Place, input.Unit, value, slopes.TakingBack(moved - mean) / step, error), input, car, mean, slopes));
        }

        AddPoints(list, car, CarAxle.Front, slopes);
        AddPoints(list, car, CarAxle.Rear, slopes);
        list.AddRange(DemandSensitivities(car, mean, slopes));
        list.RemoveAll(one => one.LeavesOpenDeg < Unmoved);
        list.Sort((one, other) => other.LeavesOpenDeg.CompareTo(one.LeavesOpenDeg));
        return list;
    }

    /// <summary>
    /// An assumed input's effect at both ends of its range: solved there where it matters, as neither the range nor what it does need be alike to both sides. A value given is known
    /// so closely that its slope tells; so does that of an input that hardly acts.
    /// </summary>
    private CamberSensitivity WithEnds(CamberSensitivity one, HandlingInput input, HandlingCar car, double mean, in CamberSlopes slopes)
    {
        if (reading.AssumedFor(input) is not { } assumed) return one;
        var (lower, upper) = (one.DegPerUnit * (assumed.Lower - one.Value), one.DegPerUnit * (assumed.Upper - one.Value));
        if (Math.Max(Math.Abs(lower), Math.Abs(upper)) >= LeastSolvedDeg)
        {
            if (series.VariedMeanDeg(input.Put(car, assumed.Lower)) is { } below) lower = slopes.TakingBack(below - mean);
            if (series.VariedMeanDeg(input.Put(car, assumed.Upper)) is { } above) upper = slopes.TakingBack(above - mean);
        }

        return one with { AtLowerDeg = lower, AtUpperDeg = upper };
    }

    /// <summary>
    /// What errors of an axle's points leave open: root sum of squares over their coordinates, which err independently. Left out where a car with
    /// one coordinate moved has no equilibrium.
    /// </summary>
    private void AddPoints(List<CamberSensitivity> list, HandlingCar car, CarAxle at, in CamberSlopes slopes)
    {
        var points = car.At(at).Suspension;
        if (points.PointErrorMm == 0) return;
        var deg = 0.0;
        foreach (var (more, less) in points.Moved())
        {
            if (budget is { IsSpent: true }) return;
            if (series.VariedMeanDeg(With(more)) is not { } withMore || series.VariedMeanDeg(With(less)) is not { } withLess) return;
            deg = double.Hypot(deg, slopes.TakingBack(points.Deviation(withMore, withLess)));
        }

        list.Add(new(at == CarAxle.Front ? "/vehicle/front/suspension/points/pointErrorMm" : "/vehicle/rear/suspension/points/pointErrorMm", "Mm", points.PointErrorMm, deg / points.PointErrorMm, points.PointErrorMm));

        HandlingCar With(SuspensionModel suspension) => car.With(at, car.At(at) with { Suspension = suspension });
    }

    private List<CamberSensitivity> DemandSensitivities(HandlingCar car, double mean, in CamberSlopes slopes)
    {
        var list = new List<CamberSensitivity>();
        const double step = 0.01;
        const double errorG = 0.03;
        const double errorOfRadius = 0.1;
        var hardest = demand.Hardest.Demand;
        var harder = new BendSeries(demand with { Corners = [.. demand.Corners.Select(one => one.Harder(1 + step))] }, series);
        if (harder.VariedMeanDeg(car) is { } moved)
            list.Add(new("/lateralG", "G", hardest.LateralG, slopes.TakingBack(moved - mean) / (step * hardest.LateralG), errorG));
        var tightest = demand.Tightest.Demand;
        var wider = new BendSeries(demand with { Corners = [.. demand.Corners.Select(one => one with { Demand = one.Demand with { RadiusM = one.Demand.RadiusM * (1 + step) } })] }, series);
        if (wider.VariedMeanDeg(car) is { } widened)
            list.Add(new("/cornerRadiusM", "M", tightest.RadiusM, slopes.TakingBack(widened - mean) / (step * tightest.RadiusM), errorOfRadius * tightest.RadiusM));
        return list;
    }

    private bool Matters(HandlingInput input, HandlingCar car) => !ReferenceEquals(input, HandlingInputs.For(demand.Axle).Camber) && HandlingInputs.CanMatter(input, car);
}

/// <summary>
/// Slope of the mean inclination by static camber, to either side of the solution: with a stop met or a wheel lifted the two
/// need not be alike.
/// </summary>
/// <param name="Below">Degrees of mean inclination per degree of camber towards more negative.</param>
/// <param name="Above">The same towards less negative.</param>
internal readonly record struct CamberSlopes(double Below, double Above)
{
    /// <summary>The change of camber, degrees, that cancels a change of the mean, degrees; the slope is that of the side the mean moved to.</summary>
    public double TakingBack(double meanDeg) => -meanDeg / (meanDeg > 0 ? Above : Below);
}
