using SetupService.Domain.Handling.CamberTarget;
using SetupService.Domain.Handling.Cars;
using SetupService.Domain.Handling.Cornering;
using SetupService.Domain.Handling.Ride;
using SetupService.Domain.Numerics;
using SetupService.Domain.Vehicles;
using SetupService.Domain.Wear.TreadWear;

namespace SetupService.Domain.Planning;

/// <summary>A car with the parts of a package, before its camber is set.</summary>
/// <param name="Car">How it stands.</param>
/// <param name="Merged">The car with the values of all changes, before what follows them.</param>
/// <param name="Change">What all changes say beside them; null = there are none.</param>
/// <param name="Set">The car with the values of all changes and these cambers, as a document that states them is read; null where it contradicts itself.</param>
public sealed record FittedCar(StandingCar Car, Vehicle Merged, CarChange? Change, Func<IReadOnlyList<CamberSetting>, Vehicle?> Set);

/// <summary>What a package reaches, or why it has no figures.</summary>
/// <param name="Car">The car with the package and its camber set; null where it cannot stand.</param>
/// <param name="Settings">The cambers that are set.</param>
/// <param name="Figures">What it reaches; null where it has no equilibrium in a bend.</param>
public sealed record EvaluatedPackage(StandingCar? Car, IReadOnlyList<CamberSetting> Settings, PackageFigures? Figures)
{
    /// <summary>What it reaches after the first step of its camber alone; null where that is the whole of it, or has no equilibrium.</summary>
    public PackageFigures? FirstStep { get; init; }

    /// <summary>Why the car cannot stand; null where it can.</summary>
    public StandingFault? Fault { get; init; }

    /// <summary>How the changes of its parts contradict each other, as a sentence; null where they do not.</summary>
    public string? Problem { get; init; }

    /// <summary>Why it has no equilibrium in a bend; null where it has.</summary>
    public CorneringFailure? Failure { get; init; }

    /// <summary>The bend that has none.</summary>
    public CorneringDemand Failed { get; init; }
}

/// <summary>
/// Evaluates packages by the model of the single calls: the car's turns in every bend, what its axles can hold there, how it rides, how its treads wear. Each is solved from the last
/// one's solution. Not safe for several threads.
/// </summary>
public sealed class PackageEvaluator
{
    private const double LeastGuessG = 0.5;
    private const int MostSettings = 4;

    // Judgement.
    private const double LeastTrackShare = 0.25;
    private const double SettingAgreedDeg = 0.01;

    private readonly PlanCase _plan;
    private readonly WorkBudget _budget;
    private readonly BendShare[] _bends;
    private readonly CorneringSolver?[] _stands;
    private readonly double[] _guesses;
    private readonly TreadLife? _life;

    /// <summary>An evaluator of a plan's packages.</summary>
    /// <param name="plan">The car, its bends and its use.</param>
    /// <param name="budget">Work allowed; where it is spent packages fail with <see cref="CorneringFailure.WorkSpent"/>.</param>
    /// <param name="treadsSay">What <see cref="Given"/> of another evaluator of this plan found; null = it is asked of this one first.</param>
    public PackageEvaluator(PlanCase plan, WorkBudget budget, (double Front, double Rear)? treadsSay = null)
    {
        ArgumentNullException.ThrowIfNull(plan);
        (_plan, _budget, TreadsSay) = (plan, budget, treadsSay ?? default);

        // The hardest first.
        _bends = [.. plan.Bends.Where(bend => bend is { Share: > 0, Demand.LateralG: > 0 }).OrderByDescending(bend => bend.Demand.LateralG)];
        _stands = new CorneringSolver?[_bends.Length];
        _guesses = new double[_bends.Length];
        _life = TreadLife.Create(plan, budget);
    }

    /// <summary>By how much the treads' word differs from the model's, degrees of mean inclination, at both axles: what the outer wheel leans less than the model says. Found on the car as given.</summary>
    public (double Front, double Rear) TreadsSay { get; private set; }

    /// <summary>The car as given, nothing set; where its treads were read, what they say against the model is kept for the packages.</summary>
    public EvaluatedPackage Given()
    {
        if (Means(Scaled(_plan.Given)) is { } means) TreadsSay = (Said(CarAxle.Front, means.Front), Said(CarAxle.Rear, means.Rear));
        return Reached(_plan.Given, []);

        // By the treads the camber is short by so much, by the model the wheel leans so much: a degree of camber is about a degree of lean.
        double Said(CarAxle at, double meanDeg) => _plan.Wear?.ShortAt(at) switch
        {
            { IsEven: true } => meanDeg,
            { ByTreads: not null, Together: { } together } => meanDeg - together.Value,
            _ => 0,
        };
    }

    /// <summary>A package, with its camber set as far as the car can be.</summary>
    /// <param name="fitted">The car with its parts.</param>
    /// <param name="setsCamber">False where an alignment is not to be had: then its camber is left.</param>
    public EvaluatedPackage Evaluate(FittedCar fitted, bool setsCamber = true)
    {
        ArgumentNullException.ThrowIfNull(fitted);
        if (!setsCamber) return Reached(fitted.Car, []);
        if (Settings(fitted) is not { } settings) return Failure(fitted.Car, []);
        if (settings.Count == 0) return Reached(fitted.Car, []);
        var whole = Set(fitted, settings);
        return whole.Figures is not null && settings.Exists(one => one.FirstDeg != one.ToDeg)
            ? whole with { FirstStep = Set(fitted, [.. settings.Select(one => one with { ToDeg = one.FirstDeg })]).Figures }
            : whole;
    }

    private EvaluatedPackage Set(FittedCar fitted, List<CamberSetting> settings)
    {
        if (fitted.Set(settings) is not { } merged) return new(null, settings, null) { Problem = "the camber it is to be set to contradicts what was read of the suspension." };
        var last = CamberSetting.Change(settings);
        return _plan.Given.Changed(merged, fitted.Change?.And(last) ?? last, last, fitted.Car, out var fault) is { } set
            ? Reached(set, settings)
            : new(null, settings, null) { Fault = fault };
    }

    /// <summary>What a car with another value of one input reaches, its camber as it is; null where a bend has no equilibrium.</summary>
    /// <param name="car">The car.</param>
    /// <param name="input">The input.</param>
    /// <param name="byValue">How much more of it.</param>
    /// <param name="given">What wears the tyres of the car as given with the same input moved; null = this is that car.</param>
    /// <param name="use">What wears this car's; null where it is not known.</param>
    internal PackageFigures? Varied(StandingCar car, HandlingInput input, double byValue, TrackUse? given, out TrackUse? use)
    {
        ArgumentNullException.ThrowIfNull(car);
        ArgumentNullException.ThrowIfNull(input);
        var scaled = Scaled(car);
        use = _life?.Use(car, input.Put(car.Stands, input.Read(car.Stands) + byValue));
        return Figures(car, input.Put(scaled, input.Read(scaled) + byValue)) is { } figures ? figures with { TreadLifeFactor = _life?.Factor(use, given ?? use) } : null;
    }

    private EvaluatedPackage Reached(StandingCar car, IReadOnlyList<CamberSetting> settings)
    {
        if (Figures(car, Scaled(car)) is not { } figures) return Failure(car, settings);
        if (_life is null) return new(car, settings, figures);
        var use = _life.Use(car, car.Stands);
        return new(car, settings, figures with { TreadLifeFactor = _life.Factor(use), TreadLifeEffects = _life.Effects(use) });
    }

    private EvaluatedPackage Failure(StandingCar car, IReadOnlyList<CamberSetting> settings) => new(car, settings, null) { Failure = _failure ?? CorneringFailure.TravelNotReached, Failed = _failed };

    private CorneringFailure? _failure;
    private CorneringDemand _failed;

    private HandlingCar Scaled(StandingCar car) => car.Stands with { GripFactor = _plan.Scale.Factor };

    /// <summary>The cambers to set; null where a bend has no equilibrium.</summary>
    private List<CamberSetting>? Settings(FittedCar fitted)
    {
        var car = Scaled(fitted.Car);
        var (front, rear) = (MayBeSet(CarAxle.Front), MayBeSet(CarAxle.Rear));
        if (!front && !rear) return [];

        // Both axles at once: each degree of camber leans its own wheel about a degree, and the other axle's hardly.
        var (frontDeg, rearDeg) = (Mean(car.Front), Mean(car.Rear));
        var (frontSlope, rearSlope) = (1.0, 1.0);
        (double Front, double Rear)? before = null;
        var (frontBefore, rearBefore) = (frontDeg, rearDeg);
        for (var tries = 0; tries < MostSettings; tries++)
        {
            if (Means(Set(car, front ? frontDeg : null, rear ? rearDeg : null)) is not { } means) return null;
            var off = (Front: means.Front - TreadsSay.Front, Rear: means.Rear - TreadsSay.Rear);
            if (before is { } last)
            {
                if (Math.Abs(frontDeg - frontBefore) > SettingAgreedDeg) frontSlope = Math.Clamp((off.Front - last.Front) / (frontDeg - frontBefore), 0.3, 3);
                if (Math.Abs(rearDeg - rearBefore) > SettingAgreedDeg) rearSlope = Math.Clamp((off.Rear - last.Rear) / (rearDeg - rearBefore), 0.3, 3);
            }

            before = off;
            (frontBefore, rearBefore) = (frontDeg, rearDeg);
            if (front) frontDeg -= off.Front / frontSlope;
            if (rear) rearDeg -= off.Rear / rearSlope;
            if (Math.Abs(frontDeg - frontBefore) <= SettingAgreedDeg && Math.Abs(rearDeg - rearBefore) <= SettingAgreedDeg) break;
        }

        var settings = new List<CamberSetting>(2);
        if (front) Add(CarAxle.Front, frontDeg);
        if (rear) Add(CarAxle.Rear, rearDeg);
        return settings;

        // On a car that hardly sees a track the road wears the treads, and flat in hard bends is not flat there: only the treads themselves can ask for another camber.
        bool MayBeSet(CarAxle at) => fitted.Merged.At(at).Adjustable.Camber is { CanBeSet: true } && (_plan.Use.TrackShare >= LeastTrackShare || _plan.Wear?.ShortAt(at).ByTreads is not null);

        void Add(CarAxle at, double flatDeg)
        {
            var gainDeg = AxleFigures.StandingCamberDeg(car.At(at), at) - Mean(car.At(at));
            if (CamberSetting.Choose(at, fitted.Merged.At(at), gainDeg, flatDeg + gainDeg, _plan.MostCamberDeg, AxleFigures.StandingCamberDeg(_plan.Given.Stands.At(at), at)) is { } setting) settings.Add(setting with { GivenOffDeg = OffMeanDeg(_plan.Given.Stands.At(at)) });
        }

        static (double Left, double Right) OffMeanDeg(HandlingAxle axle) => (axle.LeftCamberDeg - Mean(axle), axle.RightCamberDeg - Mean(axle));

        static double Mean(HandlingAxle axle) => (axle.LeftCamberDeg + axle.RightCamberDeg) / 2;
    }

    private static HandlingCar Set(HandlingCar car, double? frontDeg, double? rearDeg)
    {
        if (frontDeg is { } front) car = car with { Front = car.Front with { LeftCamberDeg = front, RightCamberDeg = front } };
        return rearDeg is { } rear ? car with { Rear = car.Rear with { LeftCamberDeg = rear, RightCamberDeg = rear } } : car;
    }

    /// <summary>The mean inclinations of both outer wheels, degrees; null where a bend has no equilibrium.</summary>
    private (double Front, double Rear)? Means(HandlingCar car)
    {
        var (front, rear) = (default(WeightedMean), default(WeightedMean));
        for (var i = 0; i < _bends.Length; i++)
        {
            if (Solved(car, i) is not { } solver) return null;
            front.Add(solver.OuterWheel(CarAxle.Front), _bends[i].Share);
            rear.Add(solver.OuterWheel(CarAxle.Rear), _bends[i].Share);
        }

        return (front.Value, rear.Value);
    }

    private CorneringSolver? Solved(HandlingCar car, int bend)
    {
        var demand = _bends[bend].Demand;
        var solver = Nearest(bend) is { } stand ? stand.With(car) : CorneringSolver.Create(car, demand.Turn, _budget);
        (_failed, _failure) = (demand, solver is null ? CorneringFailure.TravelNotReached : solver.Solve(demand));
        if (_failure is null) return _stands[bend] = solver;
        if (_budget.IsSpent) _failure = CorneringFailure.WorkSpent;
        return null;
    }

    // The same bend of the car solved before, else the last bend solved in the same direction.
    private CorneringSolver? Nearest(int bend)
    {
        if (_stands[bend] is { } same) return same;
        for (var i = bend - 1; i >= 0; i--)
        {
            if (_bends[i].Demand.Turn == _bends[bend].Demand.Turn) return _stands[i];
        }

        return null;
    }

    private PackageFigures? Figures(StandingCar car, HandlingCar scaled)
    {
        var (front, rear) = (default(WeightedMean), default(WeightedMean));
        var (limit, frontLimit, rearLimit, hardest, shares) = ((double?)0.0, (double?)0.0, (double?)0.0, (double?)null, 0.0);
        for (var i = 0; i < _bends.Length; i++)
        {
            if (Solved(scaled, i) is not { } solver) return null;
            var share = _bends[i].Share;
            front.Add(solver.OuterWheel(CarAxle.Front), share);
            rear.Add(solver.OuterWheel(CarAxle.Rear), share);
            var demand = _bends[i].Demand;
            var limits = GripLimits.Solve(solver, TurnPath.AtRadius(demand.Turn, demand.RadiusM), _guesses[i] > 0 ? _guesses[i] : Math.Max(demand.LateralG, LeastGuessG));
            if (_budget.IsSpent)
            {
                (_failure, _failed) = (CorneringFailure.WorkSpent, demand);
                return null;
            }

            if (limits.LowerG is { } lower) _guesses[i] = lower;
            if (i == 0) hardest = limits.LowerG;
            limit += share * limits.LowerG;
            frontLimit += share * limits.Front.LimitG;
            rearLimit += share * limits.Rear.LimitG;
            shares += share;
        }

        return new()
        {
            LimitG = limit / shares,
            HardestLimitG = hardest,
            MarginG = (rearLimit - frontLimit) / shares,
            Front = AxleFigures.From(car, scaled, CarAxle.Front, frontLimit / shares, front.Value, TreadsSay.Front),
            Rear = AxleFigures.From(car, scaled, CarAxle.Rear, rearLimit / shares, rear.Value, TreadsSay.Rear),
            TreadLifeFactor = null,
        };
    }

    private struct WeightedMean
    {
        private double _sum;
        private double _work;

        public readonly double Value => _work > 0 ? _sum / _work : 0;

        public void Add((double InclinationAngleDeg, double SlipDeg, double LoadN) wheel, double share)
        {
            var work = share * wheel.LoadN * Math.Abs(wheel.SlipDeg);
            _sum += work * wheel.InclinationAngleDeg;
            _work += work;
        }
    }
}
