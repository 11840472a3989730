using SetupService.Domain.Vehicles;

namespace SetupService.Domain.Handling.Cornering;

/// <summary>
/// What each axle of a car can hold. An axle's limit is the lateral acceleration at which its share of the mass needs the most its two tyres give at one slip angle, the
/// attitude solved with the other axle supplying what it needs. Method page: docs/methods/cornering.
/// </summary>
/// <param name="Front">The front axle's.</param>
/// <param name="Rear">The rear axle's.</param>
public readonly record struct GripLimits(AxleLimit Front, AxleLimit Rear)
{
    // How closely a limit is found, as a share of it, and how closely the place is where the equilibrium itself ends, g.
    private const double Agreed = 1e-9;
    private const double NearlyAgreed = 1e-6;
    private const double EndAgreedG = 1e-3;
    private const int MostTries = 40;

    // As near as this share to the last attitude the turn is solved to the end; further off it is only passed.
    private const double Near = 1e-3;

    // No car is looked at beyond this, g.
    private const double HardestG = 20;

    /// <summary>The rear's limit less the front's, g: positive where the front gives up first. Null where either is not known.</summary>
    public double? MarginG => Rear.LimitG - Front.LimitG;

    /// <summary>The lower of both limits, g, or the only one known; null where neither is.</summary>
    public double? LowerG => Front.LimitG is { } front && Rear.LimitG is { } rear ? Math.Min(front, rear) : Front.LimitG ?? Rear.LimitG;

    /// <summary>One axle's.</summary>
    public AxleLimit At(CarAxle axle) => axle == CarAxle.Front ? Front : Rear;

    /// <summary>Finds both limits along a path, whose radius or speed stays; allocates nothing.</summary>
    /// <param name="solver">The car's solver for the path's direction.</param>
    /// <param name="path">The path.</param>
    /// <param name="guessG">Where to begin, g, above 0.</param>
    public static GripLimits Solve(CorneringSolver solver, in TurnPath path, double guessG)
    {
        ArgumentNullException.ThrowIfNull(solver);
        var search = new Search(solver, path, guessG);
        var front = search.Find(CarAxle.Front);
        return new(front, search.Find(CarAxle.Rear));
    }

    /// <summary>Finds one axle's limit alone; allocates nothing.</summary>
    /// <param name="solver">The car's solver for the path's direction.</param>
    /// <param name="path">The path.</param>
    /// <param name="guessG">Where to begin, g, above 0.</param>
    /// <param name="axle">Which axle's.</param>
    internal static AxleLimit Solve(CorneringSolver solver, in TurnPath path, double guessG, CarAxle axle) => new Search(solver, path, guessG).Find(axle);

    /// <summary>What is known on the way. Of an axle, what its tyres hold in an attitude, a/used, hardly changes with a: the limit is where it meets a.</summary>
    private ref struct Search(CorneringSolver solver, TurnPath path, double guessG)
    {
        private readonly CorneringSolver _solver = solver;
        private readonly TurnPath _path = path;
        private (double G, double Front, double Rear) _last;
        private (double G, double Front, double Rear) _before;
        private double _standsG;
        private double _failsG = double.PositiveInfinity;
        private CorneringFailure? _failure;

        public AxleLimit Find(CarAxle at)
        {
            var (low, high) = (0.0, HardestG);
            Narrow(_last, at, ref low, ref high);
            Narrow(_before, at, ref low, ref high);
            for (var tries = 0; tries < MostTries; tries++)
            {
                if (_failsG - _standsG < EndAgreedG && low >= _standsG) return new(null, _failure, _standsG);
                var nextG = Next(at);

                // What a secant this short leaves is smaller by orders.
                if (_before.G > 0 && Math.Abs(nextG - _last.G) <= NearlyAgreed * nextG && nextG < _failsG) return new(nextG, null, _standsG);
                var ceiling = Math.Min(high, _failsG);
                if (!(nextG > low && nextG < ceiling)) nextG = double.IsFinite(_failsG) && ceiling == _failsG ? (Math.Max(low, _standsG) + ceiling) / 2 : Math.Clamp(nextG, low + ((ceiling - low) / 16), ceiling - ((ceiling - low) / 16));
                var isNear = Math.Abs(nextG - _last.G) <= Near * nextG;
                if (_solver.Solve(_path.At(nextG), isNear ? CorneringSolver.Tolerance : CorneringSolver.RoughTolerance) is { } failure)
                {
                    (_failsG, _failure) = (nextG, failure);
                    if (failure is CorneringFailure.WorkSpent) return new(null, failure, _standsG);
                    continue;
                }

                _standsG = Math.Max(_standsG, nextG);
                _before = _last;
                _last = (nextG, nextG / _solver.GripUsed(CarAxle.Front), nextG / _solver.GripUsed(CarAxle.Rear));
                var missing = Held(_last, at) - nextG;
                if ((isNear && Math.Abs(missing) <= Agreed * nextG) || high - low <= Agreed * nextG) return new(nextG, null, nextG);
                Narrow(_last, at, ref low, ref high);
            }

            return new(null, _failure ?? CorneringFailure.RollsOver, _standsG);
        }

        private static double Held((double G, double Front, double Rear) point, CarAxle at) => at == CarAxle.Front ? point.Front : point.Rear;

        private static void Narrow((double G, double Front, double Rear) point, CarAxle at, ref double low, ref double high)
        {
            if (point.G <= 0) return;
            if (Held(point, at) >= point.G) low = Math.Max(low, point.G);
            else high = Math.Min(high, point.G);
        }

        // By the secant through the last two attitudes, by what the tyres hold in the last one where there is only one.
        private readonly double Next(CarAxle at)
        {
            if (_last.G <= 0) return guessG;
            var missing = Held(_last, at) - _last.G;
            if (_before.G <= 0) return Held(_last, at);
            var slope = (missing - (Held(_before, at) - _before.G)) / (_last.G - _before.G);
            return slope < 0 ? _last.G - (missing / slope) : Held(_last, at);
        }
    }
}

/// <summary>What one axle can hold.</summary>
/// <param name="LimitG">Lateral acceleration, g; null where the car has no equilibrium up to there.</param>
/// <param name="EndedBy">Why it has none; null where it has.</param>
/// <param name="StandsToG">The hardest turn that was looked at and has an equilibrium, g.</param>
public readonly record struct AxleLimit(double? LimitG, CorneringFailure? EndedBy, double StandsToG);
