using SetupService.Domain.Vehicles;

namespace SetupService.Domain.Handling.Cornering;

/// <summary>
/// Seeks the limits of both axles along a path and keeps what is known on the way. Of an axle, what its tyres hold in an attitude, a/used, hardly changes with a: the limit is
/// where it meets a.
/// </summary>
internal ref struct LimitSearch(CorneringSolver solver, TurnPath path, double guessG)
{
    // How closely a limit is found, as a share of it, and how closely the place is where the equilibrium itself ends, g.
    private const double Agreed = 1e-9;
    private const double NearlyAgreed = 1e-6;
    private const double EndAgreedG = 1e-3;
    private const int MostTries = 40;

    /// <summary>Near enough, as a share of the limit, for Newton's method to come to it by the derivatives there.</summary>
    public const double NewtonNear = 1e-3;

    // As near as this share to the last attitude the turn is solved to the end; further off it is only passed.
    private const double Near = 1e-3;

    // As good as straight ahead, g: less than the end is agreed to.
    private const double StraightG = EndAgreedG / 2;

    // No car is looked at beyond this, g.
    private const double HardestG = 20;

    private readonly CorneringSolver _solver = solver;
    private readonly TurnPath _path = path;
    private (double G, double Front, double Rear) _last;
    private (double G, double Front, double Rear) _before;
    private double _standsG;
    private double _failsG = double.PositiveInfinity;
    private CorneringFailure? _failure;
    private bool _standsStraight;

    /// <summary>The attitude the solver stands in, by its lateral acceleration, g; null where the last one looked at has no equilibrium.</summary>
    public double? StandsAtG { get; private set; }

    /// <summary>Finds an axle's limit.</summary>
    /// <param name="at">Which axle's.</param>
    /// <param name="closely">From how near, as a share of the limit, a last step is taken without looking where it leads.</param>
    public AxleLimit Find(CarAxle at, double closely = NearlyAgreed)
    {
        var (low, high) = (0.0, HardestG);
        Narrow(_before, at, ref low, ref high);
        Narrow(_last, at, ref low, ref high);
        for (var tries = 0; tries < MostTries; tries++)
        {
            if (_failsG - _standsG < EndAgreedG && low >= _standsG) return new(null, _failure, _standsG);
            var nextG = Next(at);

            // What a secant this short leaves is smaller by orders.
            if ((closely > NearlyAgreed ? _last.G : _before.G) > 0 && Math.Abs(nextG - _last.G) <= closely * nextG && nextG < _failsG) return new(nextG, null, _standsG);
            var ceiling = Math.Min(high, _failsG);
            if (!(nextG > low && nextG < ceiling)) nextG = double.IsFinite(_failsG) && ceiling == _failsG ? (Math.Max(low, _standsG) + ceiling) / 2 : Math.Clamp(nextG, low + ((ceiling - low) / 16), ceiling - ((ceiling - low) / 16));
            var isNear = Math.Abs(nextG - _last.G) <= Near * nextG;
            if (_solver.Solve(_path.At(nextG), isNear ? CorneringSolver.Tolerance : CorneringSolver.RoughTolerance) is { } failure)
            {
                (_failsG, _failure, StandsAtG) = (nextG, failure, null);
                if (failure is CorneringFailure.WorkSpent) return new(null, failure, _standsG);
                if (nextG < _standsG) ForgetBeyond(nextG, low, ref high);

                // A car that does not even stand straight ahead has no limit to be narrowed down.
                if (_standsG == 0 && !_standsStraight)
                {
                    if (_solver.Solve(_path.At(StraightG), CorneringSolver.RoughTolerance) is { } unbalanced) (_failsG, _failure) = (StraightG, unbalanced);
                    _standsStraight = true;
                }

                continue;
            }

            (_standsG, StandsAtG) = (Math.Max(_standsG, nextG), nextG);
            _before = _last;
            _last = (nextG, nextG / _solver.GripUsed(CarAxle.Front), nextG / _solver.GripUsed(CarAxle.Rear));
            var missing = Held(_last, at) - nextG;
            if ((isNear && Math.Abs(missing) <= Agreed * nextG) || high - low <= Agreed * nextG) return new(nextG, null, nextG);
            Narrow(_last, at, ref low, ref high);
        }

        return new(null, _failure ?? CorneringFailure.RollsOver, _standsG);
    }

    // Beyond a turn in which it does not stand a car never comes, though it would stand there.
    private void ForgetBeyond(double failedG, double low, ref double high)
    {
        if (_before.G > failedG) _before = default;
        if (_last.G > failedG) (_last, _before) = (_before, default);
        if (high > failedG) high = HardestG;
        _standsG = Math.Max(low, _last.G);
    }

    private static double Held((double G, double Front, double Rear) point, CarAxle at) => at == CarAxle.Front ? point.Front : point.Rear;

    private static void Narrow((double G, double Front, double Rear) point, CarAxle at, ref double low, ref double high)
    {
        if (point.G <= 0) return;

        // A car that stands in more than one way may hold a harder turn and not a softer one: then what was seen last counts.
        if (Held(point, at) >= point.G)
        {
            low = Math.Max(low, point.G);
            if (high <= low) high = HardestG;
        }
        else
        {
            high = Math.Min(high, point.G);
            if (low >= high) low = 0;
        }
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
