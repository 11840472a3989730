using SetupService.Domain.Handling.Cars;
using SetupService.Domain.Handling.Cornering;
using SetupService.Domain.Numerics;
using SetupService.Domain.Vehicles;

namespace SetupService.Domain.Handling.Ride;

/// <summary>
/// How hard the car may turn before an axle's outer wheel meets its bump stop, g: the root of the travel left there, by secants, each turn solved from the last. Null where no
/// stop is known, the car has no wheelbase or rolls over first, no car turns so hard, or the work allowed is spent.
/// </summary>
/// <param name="FrontG">The front's.</param>
/// <param name="RearG">The rear's.</param>
public readonly record struct StopMetInTurn(double? FrontG, double? RearG)
{
    private const double HardestG = 3;

    // How closely the place is found where the stop is met, as travel left, mm, from where on turns are solved to the end, and how closely where the equilibrium itself ends is, g.
    private const double AgreedMm = 1e-6;
    private const double NearMm = 0.2;
    private const double EndAgreedG = 0.002;
    private const int MostTries = 60;

    // A turn most cars take without meeting a stop.
    private const double FirstG = 0.5;

    // Share of the way to where the inner wheels would carry nothing that is gone at once: they lose load faster and faster, so that the end lies nearer than it looks.
    private const double ShareOfWay = 0.8;

    // With less than this share of their load left on the inner wheels, a stop further off than this many times the travel that load still stands for is not met any more.
    private const double NearlyUnloaded = 0.25;
    private const double WellClear = 3;
    private const double ClearMm = 1;

    // A radius at which steer is small; the stop does not depend on it.
    private const double RadiusM = 60;

    /// <summary>Finds both.</summary>
    public static StopMetInTurn Compute(HandlingCar car, WorkBudget? budget = null)
    {
        ArgumentNullException.ThrowIfNull(car);
        var isKnown = car.WheelbaseMm is not null && (car.Front.BumpLeftMm is not null || car.Rear.BumpLeftMm is not null);
        if (!isKnown || CorneringSolver.Create(Without(car, CarAxle.Front), TurnDirection.Left, budget) is not { } solver) return default;
        var search = new Search(solver, car);
        var front = search.Find(CarAxle.Front);
        return search.TryGoOn(Without(car, CarAxle.Rear)) ? new(front, search.Find(CarAxle.Rear)) : new(front, null);
    }

    // Up to where it is met the stop does nothing: without it nothing kinks there.
    private static HandlingCar Without(HandlingCar car, CarAxle axle) => car.With(axle, car.At(axle) with { BumpTravelMm = null });

    /// <summary>A turn: its lateral acceleration, the travel left to both stops and the load left on the inner wheels.</summary>
    private readonly record struct Turn(double G, double FrontMm, double RearMm, double InnerN)
    {
        public double LeftMm(CarAxle axle) => axle == CarAxle.Front ? FrontMm : RearMm;

        /// <summary>How far a stop may still be from being met where the inner wheels carry nothing, by the line through this turn and another, mm; negative = met.</summary>
        public double LeftAtEndMm(CarAxle axle, in Turn other) => LeftMm(axle) - (WellClear * Math.Max(0, (other.LeftMm(axle) - LeftMm(axle)) * InnerN / (other.InnerN - InnerN)));

        /// <summary>Where by the line through this turn and another the inner wheels carry nothing, g.</summary>
        public double EndG(in Turn other) => (InnerN - other.InnerN) * (G - other.G) < 0 ? G + (InnerN * (G - other.G) / (other.InnerN - InnerN)) : double.PositiveInfinity;

        /// <summary>Where by the line through this turn and another the stop is met, g.</summary>
        public double MetG(CarAxle axle, in Turn other) => G - (LeftMm(axle) * (G - other.G) / (LeftMm(axle) - other.LeftMm(axle)));
    }

    /// <summary>What turns looked at tell: the hardest that stands and the easiest that does not are the same for both axles.</summary>
    private sealed class Search(CorneringSolver solver, HandlingCar car)
    {
        private CorneringSolver _solver = solver;
        private Turn _first;
        private Turn _last = new(0, car.Front.BumpLeftMm ?? double.NaN, car.Rear.BumpLeftMm ?? double.NaN, car.Front.LeftLoadN + car.Rear.LeftLoadN);
        private Turn _before;
        private double _failsG = double.PositiveInfinity;

        private double InnerAtRestN => car.Front.LeftLoadN + car.Rear.LeftLoadN;

        /// <summary>Goes on with a car like it from where this one stands; false where its points do not close.</summary>
        public bool TryGoOn(HandlingCar other)
        {
            if (_solver.With(other) is not { } next) return false;
            _solver = next;

            // Two turns close together tell no slope.
            if (_first.G > 0) _before = _first;
            return true;
        }

        public double? Find(CarAxle axle)
        {
            if (car.At(axle).BumpLeftMm is not { } left) return null;
            if (left <= 0) return 0;
            var (clear, met) = (new Turn(0, car.Front.BumpLeftMm ?? double.NaN, car.Rear.BumpLeftMm ?? double.NaN, InnerAtRestN), (Turn?)null);
            if (_last.G > 0) Sort(axle, _last, ref clear, ref met);
            var g = _last.G > 0 ? NextG(axle, clear, met) : FirstG;
            for (var tries = 0; tries < MostTries; tries++)
            {
                if (_failsG - clear.G <= EndAgreedG && met is null) return null;
                var failure = _solver.Solve(new CorneringDemand(g, RadiusM, TurnDirection.Left), Math.Abs(_last.LeftMm(axle)) <= NearMm ? CorneringSolver.Tolerance : CorneringSolver.RoughTolerance);
                if (failure is CorneringFailure.WorkSpent) return null;
                if (failure is not null)
                {
                    _failsG = Math.Min(_failsG, g);
                    g = (clear.G + Math.Min(met?.G ?? _failsG, _failsG)) / 2;
                    continue;
                }

                Turn turn = new(g, (car.Front.BumpLeftMm ?? double.NaN) - _solver.OuterTravelMm(CarAxle.Front), (car.Rear.BumpLeftMm ?? double.NaN) - _solver.OuterTravelMm(CarAxle.Rear), _solver.InnerLoadN);
                if (_first.G == 0) _first = turn;
                (_before, _last) = (_last, turn);
                Sort(axle, turn, ref clear, ref met);
                if (Math.Abs(turn.LeftMm(axle)) <= AgreedMm) return g;
                if (met is null && (g >= HardestG || (turn.InnerN <= NearlyUnloaded * InnerAtRestN && _before.InnerN > turn.InnerN && turn.LeftAtEndMm(axle, _before) > ClearMm))) return null;
                g = NextG(axle, clear, met);
            }

            return null;
        }

        private static void Sort(CarAxle axle, in Turn turn, ref Turn clear, ref Turn? met)
        {
            if (turn.LeftMm(axle) <= 0) met = met is { } one && one.G < turn.G ? met : turn;
            else if (turn.G > clear.G) clear = turn;
        }

        // By the secant through the last two turns, within what is known; where it leads to where the inner wheels carry nothing, most of the way there.
        private double NextG(CarAxle axle, in Turn clear, in Turn? met)
        {
            var nextG = _last.MetG(axle, _before);
            if (met is { } one) return nextG > clear.G && nextG < one.G ? nextG : (clear.G + one.G) / 2;
            var endG = Math.Min(_failsG, _last.EndG(_before));
            var furthestG = Math.Min(HardestG, clear.G + (ShareOfWay * (Math.Max(endG, clear.G) - clear.G)));
            if (double.IsFinite(_failsG)) furthestG = Math.Min(furthestG, (clear.G + _failsG) / 2);
            return nextG > clear.G && nextG < furthestG ? nextG : Math.Max(furthestG, clear.G + (EndAgreedG / 2));
        }
    }
}
