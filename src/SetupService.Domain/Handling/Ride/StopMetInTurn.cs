using SetupService.Domain.Handling.Cars;
using SetupService.Domain.Handling.Cornering;
using SetupService.Domain.Numerics;
using SetupService.Domain.Vehicles;

namespace SetupService.Domain.Handling.Ride;

/// <summary>
/// How hard the car may turn before an axle's outer wheel first meets its bump stop, g. The turn is sought straight where nothing else that carries the wheels changes up to there. Else turns are
/// followed from rest, in shorter steps where travel bends, as a wheel may meet its stop and leave it again where an inner wheel of the other axle lifts; between two of them the place is found by secants. Null where no stop is known, the car has no wheelbase or rolls over first, no
/// car turns so hard, or the work allowed is spent.
/// </summary>
/// <param name="FrontG">The front's.</param>
/// <param name="RearG">The rear's.</param>
public readonly record struct StopMetInTurn(double? FrontG, double? RearG)
{
    private const double HardestG = 3;

    // How long a step is at first, about at least, and at most, g, and by how much travel may miss where the line through the last two turns leads, mm: a step that misses by more is halved,
    // and after one that misses by less than a quarter of it the next is twice as long.
    private const double FirstStepG = 0.2;
    private const double ShortestStepG = 0.05;
    private const double LongestStepG = 0.4;
    private const double MissedMm = 0.5;

    // How closely the place is found where the stop is met, as travel left, mm, and how closely where the equilibrium itself ends is, g.
    private const double AgreedMm = 1e-6;
    private const double NearlyMm = 1e-4;
    private const double EndAgreedG = 0.01;

    // Share of the way to where, by the last two turns, the inner wheels carry nothing that is gone at once: they lose load faster and faster, and a turn that does not stand is dear to try.
    private const double ShareOfWay = 0.5;

    // With less than this share of their load left on the inner wheels, a stop further off than this many times the travel that load still stands for is not met any more.
    private const double NearlyUnloaded = 0.1;
    private const double WellClear = 3;
    private const double ClearMm = 1;

    private const int MostTries = 60;

    // The first turn looked at, g, from which a stop is made for straight; and how much further than by the line from rest through that turn, as a factor on what is still to come, an outer wheel
    // may travel until the inner one carries nothing: springs, links and bars are no lines.
    private const double TryG = 0.5;
    private const double LineErrs = 1.3;

    // A slope of travel over lateral acceleration is believed within this factor of the line from rest, and between turns at least so far apart, g.
    private const double MostBent = 4;
    private const double LeastSecantG = 1e-5;

    // A radius at which steer is small; the stop does not depend on it.
    private const double RadiusM = 60;

    /// <summary>Finds both.</summary>
    public static StopMetInTurn Compute(HandlingCar car, WorkBudget? budget = null)
    {
        ArgumentNullException.ThrowIfNull(car);
        var isKnown = car.WheelbaseMm is not null && (car.Front.BumpLeftMm is not null || car.Rear.BumpLeftMm is not null);
        if (!isKnown || CorneringSolver.Create(Without(Without(car, CarAxle.Front), CarAxle.Rear), TurnDirection.Left, budget) is not { } free) return default;
        var rest = new Turn(0, car.Front.BumpLeftMm ?? double.PositiveInfinity, car.Rear.BumpLeftMm ?? double.PositiveInfinity, car.Front.LeftLoadN + car.Rear.LeftLoadN);
        if (Straight(car, free, rest) is { } straight) return straight;
        if (CorneringSolver.Create(car, TurnDirection.Left, budget) is not { } solver || solver.With(car) is not { } stood) return default;
        var search = new Search(car, solver, stood, rest);
        return new(search.Find(CarAxle.Front), search.Find(CarAxle.Rear));
    }

    // Straight to both stops, one after the other, where nothing else that carries the wheels changes on the way, so that travel does not kink there; null where it does, or a stop may be met where it is not looked for.
    private static StopMetInTurn? Straight(HandlingCar car, CorneringSolver free, Turn rest)
    {
        if (rest.FrontMm <= 0 || rest.RearMm <= 0) return null;
        var (nearer, further) = (CarAxle.Front, CarAxle.Rear);
        if (free.SeekTravel(new(TryG, RadiusM, TurnDirection.Left), First, HardestG, out var sought) is not null) return null;
        if (sought is not { } firstG) return new(null, null);
        if (!free.StandsAsAtRest(null) || free.OuterTravelMm(further) >= rest.LeftMm(further)) return null;
        if (IsOutOfReach(free, further)) return With(null);
        if (free.With(Without(car, further)) is not { } onStop) return null;
        var beginG = firstG * rest.LeftMm(further) / free.OuterTravelMm(further);
        if (!(beginG > firstG && beginG <= HardestG)) return null;
        if (onStop.SeekTravel(new(firstG, RadiusM, TurnDirection.Left), _ => (further, rest.LeftMm(further)), HardestG, out var secondG) is not null || !onStop.StandsAsAtRest(nearer)) return null;
        return With(secondG);

        StopMetInTurn With(double? furtherG) => nearer == CarAxle.Front ? new(firstG, furtherG) : new(furtherG, firstG);

        (CarAxle, double)? First(CorneringSolver turn)
        {
            var (frontShare, rearShare) = (turn.OuterTravelMm(CarAxle.Front) / rest.FrontMm, turn.OuterTravelMm(CarAxle.Rear) / rest.RearMm);
            if (rearShare > frontShare) (nearer, further) = (further, nearer);
            return IsOutOfReach(turn, nearer) && IsOutOfReach(turn, further) ? null : (nearer, rest.LeftMm(nearer));
        }

        // An axle's outer wheel carries at most what both do: where its inner one carries nothing its travel comes to an end.
        bool IsOutOfReach(CorneringSolver turn, CarAxle axle)
        {
            if (double.IsPositiveInfinity(rest.LeftMm(axle))) return true;
            var (travelMm, innerN, restN) = (turn.OuterTravelMm(axle), turn.InnerLoadOfN(axle), turn.InnerStaticLoadOfN(axle));
            return innerN < restN && travelMm + (LineErrs * Math.Max(0, travelMm) * innerN / (restN - innerN)) < rest.LeftMm(axle) - ClearMm;
        }
    }

    // Up to where it is met the stop does nothing: without it nothing kinks there.
    private static HandlingCar Without(HandlingCar car, CarAxle axle) => car.With(axle, car.At(axle) with { BumpTravelMm = null });

    /// <summary>A turn: its lateral acceleration, the travel left to both stops, without end where there is none, and the load on the inner wheels.</summary>
    private readonly record struct Turn(double G, double FrontMm, double RearMm, double InnerN)
    {
        public double LeftMm(CarAxle axle) => axle == CarAxle.Front ? FrontMm : RearMm;

        /// <summary>Where by the line through this turn and an easier one the inner wheels carry nothing, g.</summary>
        public double EndG(in Turn before) => before.InnerN > InnerN ? G + (InnerN * (G - before.G) / (before.InnerN - InnerN)) : double.PositiveInfinity;

        /// <summary>How far travel is from where the line through two easier turns leads, mm, the worse of both axles.</summary>
        public double MissedMm(in Turn last, in Turn before)
        {
            var share = (G - last.G) / (last.G - before.G);
            var frontMm = FrontMm - last.FrontMm - (share * (last.FrontMm - before.FrontMm));
            var rearMm = RearMm - last.RearMm - (share * (last.RearMm - before.RearMm));
            return Math.Max(double.IsFinite(frontMm) ? Math.Abs(frontMm) : 0, double.IsFinite(rearMm) ? Math.Abs(rearMm) : 0);
        }

        /// <summary>How far a stop may still be from being met where the inner wheels carry nothing, by the line through this turn and an easier one, mm; negative = met.</summary>
        public double LeftAtEndMm(CarAxle axle, in Turn before) => LeftMm(axle) - (WellClear * Math.Max(0, (before.LeftMm(axle) - LeftMm(axle)) * InnerN / (before.InnerN - InnerN)));
    }

    /// <summary>The turns followed so far, which serve both axles; the second solver keeps the last in which the car stood.</summary>
    private sealed class Search(HandlingCar car, CorneringSolver solver, CorneringSolver stood, Turn rest)
    {
        private readonly List<Turn> _turns = [rest];
        private double _stepG = FirstStepG;
        private double _failsG = double.PositiveInfinity;
        private bool _isSpent;

        public double? Find(CarAxle axle)
        {
            if (double.IsPositiveInfinity(rest.LeftMm(axle))) return null;
            if (rest.LeftMm(axle) <= 0) return 0;
            for (var i = 1; i < _turns.Count || (!IsNotMetAnyMore(axle) && TryGoOn()); i++)
            {
                if (_turns[i].LeftMm(axle) <= 0) return Between(axle, _turns[i - 1], _turns[i]);
            }

            return null;
        }

        private bool IsNotMetAnyMore(CarAxle axle) =>
            _turns.Count > 1 && _turns[^1] is var last && _turns[^2] is var before && last.InnerN <= NearlyUnloaded * rest.InnerN && before.InnerN > last.InnerN && last.LeftAtEndMm(axle, before) > ClearMm;

        /// <summary>Follows the car one turn further; false where it stands in no harder one, or none so hard is asked.</summary>
        private bool TryGoOn()
        {
            while (!_isSpent)
            {
                var last = _turns[^1];
                var before = _turns.Count > 1 ? _turns[^2] : last;
                var endG = Math.Min(_failsG, last.EndG(before));
                if (last.G >= HardestG || endG - last.G <= EndAgreedG) return false;
                var stepG = Math.Min(_stepG, ShareOfWay * (endG - last.G));
                if (Follow(last.G + stepG) is not { } turn)
                {
                    _failsG = last.G + stepG;
                    continue;
                }

                var missedMm = _turns.Count > 1 ? turn.MissedMm(last, before) : MissedMm;
                if (missedMm > MissedMm && turn.G - last.G > 1.5 * ShortestStepG)
                {
                    // A step too long may have come to another way to stand: its turn is not kept.
                    _stepG = (turn.G - last.G) / 2;
                    continue;
                }

                if (missedMm < MissedMm / 4) _stepG = Math.Min(LongestStepG, 2 * _stepG);
                _turns.Add(turn);
                return true;
            }

            return false;
        }

        // By secants through turns of the car without that stop; where they leave the step, by halves.
        private double? Between(CarAxle axle, Turn clear, Turn met)
        {
            if (solver.With(Without(car, axle)) is not { } free) return null;
            var (lowG, highG, last, before) = (clear.G, met.G, clear, met);
            var g = clear.G + (clear.LeftMm(axle) / (clear.LeftMm(axle) - met.LeftMm(axle)) * (met.G - clear.G));
            for (var tries = 0; tries < MostTries; tries++)
            {
                if (free.Solve(new CorneringDemand(g, RadiusM, TurnDirection.Left)) is { } failure)
                {
                    // Beyond where it is met, the stop may be what the car stands on.
                    if (failure is CorneringFailure.WorkSpent) return null;
                    (highG, g) = (g, (lowG + g) / 2);
                    continue;
                }

                (before, last) = (last, TurnAt(free, g));
                if (Math.Abs(last.LeftMm(axle)) <= AgreedMm) return g;
                if (last.LeftMm(axle) > 0) lowG = g;
                else highG = g;
                g = last.G - (last.LeftMm(axle) * (last.G - before.G) / (last.LeftMm(axle) - before.LeftMm(axle)));
                if (!(g > lowG && g < highG)) g = (lowG + highG) / 2;
            }

            return g;
        }

        // Where the car does not stand near its last turn it may stand in another way, a wheel lifted; that is dear to find out, and asked once.
        private Turn? Follow(double g)
        {
            CorneringDemand demand = new(g, RadiusM, TurnDirection.Left);
            var failure = double.IsFinite(_failsG) ? solver.SolveNear(demand, CorneringSolver.RoughTolerance) : solver.Solve(demand, CorneringSolver.RoughTolerance);
            if (failure is not null)
            {
                _isSpent |= failure is CorneringFailure.WorkSpent;
                solver.StartFrom(stood);
                return null;
            }

            stood.StartFrom(solver);
            return TurnAt(solver, g);
        }

        private Turn TurnAt(CorneringSolver solved, double g) => new(g, rest.FrontMm - solved.OuterTravelMm(CarAxle.Front), rest.RearMm - solved.OuterTravelMm(CarAxle.Rear), solved.InnerLoadN);
    }
}
