using SetupService.Domain.Handling.Cars;
using SetupService.Domain.Handling.Tyres;
using SetupService.Domain.Vehicles;

namespace SetupService.Domain.Handling.Cornering.Effects;

/// <summary>
/// How a solved turn answers to the car's inputs, by the equilibrium's own derivatives: one Jacobian of its residuals by its unknowns, one factorisation for all inputs. The
/// turn is one of a given lateral acceleration, or the one in which an axle is at its limit: lateral acceleration is the last unknown, and what closes the system is the last
/// equation. Works with a copy of the solver that solved the turn. Not thread-safe. Method page: docs/methods/cornering.
/// </summary>
internal sealed partial class EquilibriumDerivatives
{
    private const int N = CorneringSolver.UnknownCount + 1;
    private const int Last = CorneringSolver.UnknownCount;

    // Half-width of the difference by lateral acceleration, g.
    private const double StepG = 1e-5;

    // A limit is come to from near by with a step, in the steps differences are taken with, so short that what it leaves is nothing.
    private const double LastSteps = 1e-4;
    private const int MostPolishes = 8;

    // The other axle's limit is looked for along the path up to this share further or less far.
    private const double FurthestAlong = 0.1;

    // Of an axle's limit, whether the other axle's tyres are raised moves slip angles, which hardly move the limit.
    private int Kinks => _limitOf is null ? -1 : CorneringSolver.WheelContacts;

    private static readonly double[] Steps = [.. CorneringSolver.UnknownSteps, StepG];
    private static readonly double[] PerStep = [.. Steps.Select(step => 1 / step)];

    private readonly CorneringSolver _solver;
    private readonly HandlingCar _car;
    private readonly TurnPath _path;
    private readonly CarAxle? _limitOf;

    // True where derivatives only lead corrections, so that differences to one side do: half the work.
    private readonly bool _onlyLead;
    private readonly double[] _state = new double[N];
    private readonly double[] _alongPath = new double[N];
    private readonly double[] _moves = new double[N * (MostCorrections + 1)];
    private readonly List<Regime> _regimes = [];
    private CorneringSolver? _other;
    private int _contacts;
    private double _furthestStationMm;

    private EquilibriumDerivatives(CorneringSolver solver, HandlingCar car, in TurnPath path, CarAxle? limitOf, bool onlyLead = true) =>
        (_solver, _car, _path, _limitOf, _onlyLead) = (solver, car, path, limitOf, onlyLead);

    /// <summary>What carries the wheels in the turn, as <see cref="CorneringSolver.Contacts"/>.</summary>
    public int Contacts => _contacts;

    /// <summary>Share of its grip an axle would use in the attitude last put, had it another tyre, as <see cref="CorneringSolver.GripUsed(CarAxle, in AxleTyre, ref double)"/>.</summary>
    public double GripUsed(CarAxle at, in AxleTyre tyre, ref double slipDeg) => _solver.GripUsed(at, tyre, ref slipDeg);

    /// <summary>Slip angle at which an axle's tyres were last found to give the most, degrees.</summary>
    public double PeakSlipDeg(CarAxle at) => _solver.PeakSlipDeg(at);

    /// <summary>The figures of the turn itself; of an axle's limit, here and below, only the lateral acceleration.</summary>
    public TurnFigures Figures { get; private set; }

    /// <summary>Computes the Jacobian, by differences, at the turn last solved; null where a wheel cannot be beside where it is, or nothing holds the car there.</summary>
    /// <param name="solver">The solver that solved it.</param>
    /// <param name="car">Its car.</param>
    /// <param name="path">What stays as the turn is taken harder: radius or speed.</param>
    /// <param name="lateralG">Lateral acceleration of the turn, g.</param>
    /// <param name="limitOf">The axle that is at its limit there and is to stay at it; null = the lateral acceleration stays.</param>
    /// <param name="like">Those of the same car in a turn not far off, whose wheels' motions are taken; null = none.</param>
    public static EquilibriumDerivatives? Create(CorneringSolver solver, HandlingCar car, in TurnPath path, double lateralG, CarAxle? limitOf = null, EquilibriumDerivatives? like = null)
    {
        var derivatives = new EquilibriumDerivatives(CopyOf(solver, car, like), car, path, limitOf, onlyLead: limitOf is not null);
        return derivatives.TryDifferentiate(lateralG) ? derivatives : null;
    }

    /// <summary>The same of a turn of a given lateral acceleration, good to lead the corrections to other cars by <see cref="At"/>, for half the work.</summary>
    public static EquilibriumDerivatives? ForCorrections(CorneringSolver solver, HandlingCar car, in TurnPath path, double lateralG)
    {
        var derivatives = new EquilibriumDerivatives(CopyOf(solver, car, null), car, path, null);
        return derivatives.TryDifferentiate(lateralG) ? derivatives : null;
    }

    /// <summary>
    /// The same at an axle's limit, from a turn near to it: Newton's method by the one Jacobian comes to it. Null where it does not, or the limit is past a kink from there.
    /// </summary>
    /// <param name="solver">The solver that solved the turn near by.</param>
    /// <param name="car">Its car.</param>
    /// <param name="path">What stays as the turn is taken harder.</param>
    /// <param name="nearG">Lateral acceleration of the turn near by, g.</param>
    /// <param name="limitOf">The axle.</param>
    /// <param name="like">Those of the same car in a turn not far off, whose wheels' motions are taken; null = none.</param>
    public static EquilibriumDerivatives? AtLimit(CorneringSolver solver, HandlingCar car, in TurnPath path, double nearG, CarAxle limitOf, EquilibriumDerivatives? like)
    {
        var derivatives = new EquilibriumDerivatives(CopyOf(solver, car, like), car, path, limitOf);
        return derivatives.TryDifferentiate(nearG) && derivatives.TryPolish() ? derivatives : null;
    }

    /// <summary>
    /// The same at the other axle's limit: along the path to where what its tyres hold, a/used, which hardly changes with a, meets a, the turn solved there, and from there by Newton's method.
    /// Null where that does not come to it, it is far off, or past a kink from there.
    /// </summary>
    /// <param name="other">The other axle.</param>
    public EquilibriumDerivatives? ToLimitOf(CarAxle other)
    {
        Restore();
        var (limitG, heldG) = (_state[Last], _state[Last] / _solver.GripUsed(other));
        if (!(Math.Abs(heldG - limitG) <= FurthestAlong * limitG) || GoAlong((heldG - limitG) / _alongPath[Last]) is not { } alongG) return null;

        // By the secant, since what they hold does change a little.
        var slope = ((alongG / _solver.GripUsed(other)) - heldG) / (alongG - limitG);
        var nearG = limitG + ((heldG - limitG) / (1 - slope));
        var derivatives = new EquilibriumDerivatives(CopyOf(_solver, _car, this), _car, _path, other);
        Restore();
        return slope < 1 && derivatives._solver.SolveNear(_path.At(nearG), CorneringSolver.RoughTolerance) is null && derivatives.TryDifferentiate(nearG) && derivatives.TryPolish() ? derivatives : null;
    }

    /// <summary>A solver of another car that begins in the turn, until the next one is asked for; null where its hardpoints do not close at ride height.</summary>
    public CorneringSolver? With(HandlingCar car)
    {
        if (_other is null) return _other = _solver.With(car);
        return _other.TryTake(car, _solver) ? _other : null;
    }

    /// <summary>Change of the figures per unit of an input; null where the car cannot be in this state with the input a step more or less.</summary>
    /// <param name="input">The input.</param>
    /// <param name="step">Half-width of the difference that is taken of the residuals, in its unit, above 0.</param>
    public TurnFigures? ByInput(HandlingInput input, double step)
    {
        var value = input.Read(_car);
        Span<double> ahead = stackalloc double[N];
        Span<double> behind = stackalloc double[N];
        if (_solver.With(input.Put(_car, value + step)) is not { } more || !TryResiduals(more, _state, ahead)) return null;
        if (_solver.With(input.Put(_car, value - step)) is not { } less || !TryResiduals(less, _state, behind)) return null;
        for (var row = 0; row < N; row++) ahead[row] = (behind[row] - ahead[row]) / (2 * step);
        _regimes[0].ByState.Solve(ahead, behind);
        var (change, withLess) = (more.Figures(), less.Figures());
        for (var figure = 0; figure < TurnFigures.Count; figure++) change[figure] = (change[figure] - withLess[figure]) / (2 * step);
        return _regimes[0].Moved(change, behind);
    }

    /// <summary>Change of the figures per g of lateral acceleration along the path, where that is what is given.</summary>
    public TurnFigures ByLateralG() => _regimes[0].Moved(default, _alongPath);

    /// <summary>The figures with an input of the car a little different, to first order in how the car moves; null where it cannot be in this state.</summary>
    /// <param name="other">A solver of the car with that input, by <see cref="CorneringSolver.With"/>.</param>
    public TurnFigures? Beside(CorneringSolver other)
    {
        Span<double> residuals = stackalloc double[N];
        Span<double> move = stackalloc double[N];
        if (!TryResiduals(other, _state, residuals)) return null;
        _regimes[0].ByState.Solve(residuals, move);
        for (var unknown = 0; unknown < N; unknown++) move[unknown] = -move[unknown];
        return _regimes[0].Moved(FiguresOf(other, _state), move);
    }

    /// <summary>
    /// Puts the solver into the attitude a little further along the path, to first order, and tells its lateral acceleration, g; null where the car cannot be there. What moves the body is the
    /// force tyres give, which is the same whatever they are. <see cref="Restore"/> the solver afterwards.
    /// </summary>
    /// <param name="share">How much further, as a share of the axle's grip.</param>
    public double? GoAlong(double share)
    {
        Span<double> state = stackalloc double[N];
        Span<double> residuals = stackalloc double[N];
        for (var unknown = 0; unknown < N; unknown++) state[unknown] = _state[unknown] + (share * _alongPath[unknown]);
        return TryResiduals(_solver, state, residuals) ? state[Last] : null;
    }

    /// <summary>Puts the solver back into the turn.</summary>
    public void Restore()
    {
        Span<double> residuals = stackalloc double[N];
        TryResiduals(_solver, _state, residuals);
    }

    // A step back from a value of an unknown; lateral acceleration is not negative.
    private static double Before(int unknown, double value) => unknown == Last ? Math.Max(0, value - StepG) : value - Steps[unknown];

    // Of an axle's limit only the lateral acceleration is followed.
    private TurnFigures FiguresOf(CorneringSolver solver, ReadOnlySpan<double> state) =>
        (_limitOf is null ? solver.Figures() : default) with { LateralG = state[Last] };

    private bool TryDifferentiate(double lateralG)
    {
        _solver.CopyState(_state);
        _state[Last] = lateralG;
        if (Differentiate(_solver, _state) is not { } regime) return false;
        _regimes.Add(regime);
        Figures = FiguresOf(_solver, _state);
        _contacts = _solver.Contacts;
        _furthestStationMm = 1000 * FurthestStation * _path.At(lateralG).RadiusM;

        // The last equation alone moved: along the path, per unit of what it holds. Beyond its limit an axle's tyres stay at the slip they have there.
        Span<double> right = stackalloc double[N];
        right[Last] = 1;
        regime.ByState.Solve(right, _alongPath);
        return true;
    }

    private static CorneringSolver CopyOf(CorneringSolver solver, HandlingCar car, EquilibriumDerivatives? like)
    {
        if (like?._solver.With(car) is not { } copy) return solver.Nearby();
        copy.StartFrom(solver);
        return copy;
    }

    private bool TryPolish()
    {
        Span<double> residuals = stackalloc double[N];
        Span<double> move = stackalloc double[N];
        for (var polish = 0; polish < MostPolishes; polish++)
        {
            if (!TryResiduals(_solver, _state, residuals)) return false;
            _regimes[0].ByState.Solve(residuals, move);
            var longest = 0.0;
            for (var unknown = 0; unknown < N; unknown++)
            {
                _state[unknown] -= move[unknown];
                longest = Math.Max(longest, Math.Abs(move[unknown]) / Steps[unknown]);
            }

            if (!(longest < LastSteps)) continue;
            if (!TryResiduals(_solver, _state, residuals) || (_solver.Contacts & Kinks) != _regimes[0].Contacts || !_solver.IsSolution(_state[Last])) return false;
            (Figures, _contacts) = (FiguresOf(_solver, _state), _solver.Contacts);
            return true;
        }

        return false;
    }
}
