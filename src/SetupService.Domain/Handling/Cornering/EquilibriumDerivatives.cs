using SetupService.Domain.Handling.Cars;
using SetupService.Domain.Handling.Tyres;
using SetupService.Domain.Numerics;
using SetupService.Domain.Vehicles;

namespace SetupService.Domain.Handling.Cornering;

/// <summary>
/// How a solved turn answers to the car's inputs, by the equilibrium's own derivatives: one Jacobian of its residuals by its unknowns, one factorisation for all inputs. The
/// turn is one of a given lateral acceleration, or the one in which an axle is at its limit: lateral acceleration is the last unknown, and what closes the system is the last
/// equation. Uses the solver that solved the turn and leaves it there. Not thread-safe. Method page: docs/methods/cornering.
/// </summary>
internal sealed class EquilibriumDerivatives
{
    private const int N = CorneringSolver.UnknownCount + 1;
    private const int Last = CorneringSolver.UnknownCount;

    // A correction is the last, and taken to first order, where it moves no figure that is followed by more than this share of how far that has come, or than what
    // nobody could read; what it leaves is smaller by about that share again.
    private const double AgreedShare = 0.03;
    private const double LeastDeg = 1e-3;
    private const double LeastG = 1e-5;

    // Corrections tried before a turn is solved again; one to three do.
    private const int MostCorrections = 12;

    // A limit further off than this share is looked for from there.
    private const double FarOff = 0.01;

    // Half-width of the difference by lateral acceleration, g.
    private const double StepG = 1e-5;

    private readonly CorneringSolver _solver;
    private readonly HandlingCar _car;
    private readonly TurnPath _path;
    private readonly CarAxle? _limitOf;
    private readonly double[] _state = new double[N];
    private readonly double[] _figuresByState = new double[N * TurnFigures.Count];
    private readonly double[] _alongPath = new double[N];
    private readonly double[] _moves = new double[N * (MostCorrections + 1)];
    private LinearEquations? _byState;
    private int _contacts;

    private EquilibriumDerivatives(CorneringSolver solver, HandlingCar car, in TurnPath path, CarAxle? limitOf) => (_solver, _car, _path, _limitOf) = (solver, car, path, limitOf);

    /// <summary>The figures of the turn itself; of an axle's limit, here and below, only the lateral acceleration.</summary>
    public TurnFigures Figures { get; private set; }

    /// <summary>Computes the Jacobian, by central differences, at the turn last solved; null where a wheel cannot be beside where it is, or nothing holds the car there.</summary>
    /// <param name="solver">The solver that solved it.</param>
    /// <param name="car">Its car.</param>
    /// <param name="path">What stays as the turn is taken harder: radius or speed.</param>
    /// <param name="lateralG">Lateral acceleration of the turn, g.</param>
    /// <param name="limitOf">The axle that is at its limit there and is to stay at it; null = the lateral acceleration stays.</param>
    public static EquilibriumDerivatives? Create(CorneringSolver solver, HandlingCar car, in TurnPath path, double lateralG, CarAxle? limitOf = null)
    {
        var derivatives = new EquilibriumDerivatives(solver, car, path, limitOf);
        return derivatives.TryDifferentiate(lateralG) ? derivatives : null;
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
        _byState!.Solve(ahead, behind);
        var (change, withLess) = (more.Figures(), less.Figures());
        for (var figure = 0; figure < TurnFigures.Count; figure++) change[figure] = (change[figure] - withLess[figure]) / (2 * step);
        return Moved(change, behind);
    }

    /// <summary>Change of the figures per g of lateral acceleration along the path, where that is what is given.</summary>
    public TurnFigures ByLateralG() => Moved(default, _alongPath);

    /// <summary>The figures with an input of the car a little different, to first order in how the car moves; null where it cannot be in this state.</summary>
    /// <param name="other">A solver of the car with that input, by <see cref="CorneringSolver.With"/>.</param>
    public TurnFigures? Beside(CorneringSolver other)
    {
        Span<double> residuals = stackalloc double[N];
        Span<double> move = stackalloc double[N];
        if (!TryResiduals(other, _state, residuals)) return null;
        _byState!.Solve(residuals, move);
        for (var unknown = 0; unknown < N; unknown++) move[unknown] = -move[unknown];
        return Moved(FiguresOf(other, _state), move);
    }

    /// <summary>
    /// The figures of another car, which may differ a good deal, by corrections with the one factorisation, improved from step to step by Broyden's rank-one
    /// updates (Kelley, Solving Nonlinear Equations with Newton's Method, 2003, ch. 4, from memory); solved again where they do not converge. Null where it has no equilibrium there.
    /// </summary>
    /// <param name="other">A solver of the other car, by <see cref="CorneringSolver.With"/>.</param>
    public TurnFigures? At(CorneringSolver other)
    {
        if (Corrected(other) is { } figures) return figures;
        other.StartFrom(_solver);
        var lateralG = _state[Last];
        if (_limitOf is { } axle)
        {
            if (GripLimits.Solve(other, _path, lateralG).At(axle).LimitG is not { } limitG) return null;
            lateralG = limitG;
        }

        Span<double> state = stackalloc double[N];
        state[Last] = lateralG;
        return other.Solve(_path.At(lateralG)) is null ? FiguresOf(other, state) : null;
    }

    /// <summary>
    /// The lateral acceleration, g, at which the axle that is at its limit would be with other tyres, the attitude taken along the path to first order: what moves the body is the force
    /// tyres give, which is the same whatever they are. Null where the car cannot be there. Leaves the solver elsewhere: <see cref="Restore"/> it after the last.
    /// </summary>
    /// <param name="tyre">The other tyres of that axle.</param>
    /// <param name="used">The share of their grip in the turn itself: <see cref="CorneringSolver.GripUsed(CarAxle, in AxleTyre)"/>.</param>
    public double? LimitWith(in AxleTyre tyre, double used)
    {
        Span<double> state = stackalloc double[N];
        Span<double> residuals = stackalloc double[N];

        // What is used of the other tyres is all but in proportion to what is used of its own: one step of the secant from there.
        var way = (1 / used) - 1;
        if (Math.Abs(way) < 1e-9) return _state[Last];
        for (var unknown = 0; unknown < N; unknown++) state[unknown] = _state[unknown] + (way * _alongPath[unknown]);
        if (!(state[Last] >= 0) || !TryResiduals(_solver, state, residuals)) return null;
        var usedThere = _solver.GripUsed(_limitOf!.Value, tyre);
        var limitG = state[Last] + ((1 - usedThere) * (state[Last] - _state[Last]) / (usedThere - used));
        return double.IsFinite(limitG) ? limitG : null;
    }

    /// <summary>Puts the solver back into the turn.</summary>
    public void Restore()
    {
        Span<double> residuals = stackalloc double[N];
        TryResiduals(_solver, _state, residuals);
    }

    private static double Step(int unknown) => unknown == Last ? StepG : CorneringSolver.UnknownSteps[unknown];

    // Of an axle's limit only the lateral acceleration is followed.
    private TurnFigures FiguresOf(CorneringSolver solver, ReadOnlySpan<double> state) =>
        (_limitOf is null ? solver.Figures() : default) with { LateralG = state[Last] };

    private bool TryDifferentiate(double lateralG)
    {
        _solver.CopyState(_state);
        _state[Last] = lateralG;
        Span<double> coefficients = stackalloc double[N * N];
        Span<double> moved = stackalloc double[N];
        Span<double> ahead = stackalloc double[N];
        Span<double> behind = stackalloc double[N];
        _state.CopyTo(moved);
        for (var unknown = 0; unknown < N; unknown++)
        {
            var (over, under) = (_state[unknown] + Step(unknown), _state[unknown] - Step(unknown));
            if (unknown == Last) under = Math.Max(0, under);
            moved[unknown] = over;
            if (!TryResiduals(_solver, moved, ahead)) return false;
            var figuresAhead = FiguresOf(_solver, moved);
            moved[unknown] = under;
            if (!TryResiduals(_solver, moved, behind)) return false;
            var figuresBehind = FiguresOf(_solver, moved);
            moved[unknown] = _state[unknown];
            for (var row = 0; row < N; row++) coefficients[(row * N) + unknown] = (ahead[row] - behind[row]) / (over - under);
            for (var figure = 0; figure < TurnFigures.Count; figure++) _figuresByState[(figure * N) + unknown] = (figuresAhead[figure] - figuresBehind[figure]) / (over - under);
        }

        if (!TryResiduals(_solver, _state, ahead)) return false;
        Figures = FiguresOf(_solver, _state);
        _contacts = _solver.Contacts;
        _byState = LinearEquations.Factorise(N, coefficients);
        if (_byState is null) return false;

        // The last equation alone moved: along the path, per unit of what it holds.
        ahead.Clear();
        ahead[Last] = 1;
        _byState.Solve(ahead, _alongPath);
        if (_limitOf is not { } axle) return true;

        // Beyond its limit an axle's tyres are raised and their slip stays: both tyres' forces are scaled by what leaves the slip where it is.
        var (slip, tyres) = axle == CarAxle.Front ? (9, 9) : (10, 11);
        ahead.Clear();
        (ahead[tyres], ahead[tyres + 1]) = _solver.SideForcesN(axle);
        _byState.Solve(ahead, behind);
        var share = _alongPath[slip] / behind[slip];
        for (var unknown = 0; unknown < N; unknown++) _alongPath[unknown] -= share * behind[unknown];
        return true;
    }

    /// <summary>What is out of balance in a state, and last what closes the system.</summary>
    private bool TryResiduals(CorneringSolver solver, ReadOnlySpan<double> state, Span<double> residuals)
    {
        var lateralG = state[Last];
        if (!solver.TryResiduals(state[..Last], _path.At(lateralG), residuals[..Last], _limitOf)) return false;
        residuals[Last] = _limitOf is { } axle ? solver.GripUsed(axle) - 1 : lateralG - _state[Last];
        return true;
    }

    private TurnFigures? Corrected(CorneringSolver other)
    {
        Span<double> state = stackalloc double[N];
        Span<double> residuals = stackalloc double[N];
        Span<double> squares = stackalloc double[MostCorrections + 1];
        Span<double> steps = stackalloc double[N];
        Span<double> unimproved = stackalloc double[N];
        _state.CopyTo(state);
        if (_limitOf is not null)
        {
            // Where the limit is far off, from where the car would be if what its tyres hold did not change on the way.
            if (!TryResiduals(other, state, residuals)) return null;
            var way = (1 / (1 + residuals[Last])) - 1;
            if (Math.Abs(way) > FarOff)
            {
                for (var unknown = 0; unknown < N; unknown++) state[unknown] += way * _alongPath[unknown];
            }
        }

        for (var count = 0; count <= MostCorrections; count++)
        {
            if (!(state[Last] >= 0) || !TryResiduals(other, state, residuals)) return null;

            // Past the kink of a stop, of a lifting wheel or of tyres at their limit the Jacobian is another one, by which a small correction may leave much.
            if (count > 0 && other.Contacts != _contacts) return null;
            var move = _moves.AsSpan(count * N, N);
            _byState!.Solve(residuals, move);
            for (var unknown = 0; unknown < N; unknown++) move[unknown] /= -Step(unknown);
            for (var unknown = 0; unknown < N; unknown++) unimproved[unknown] = move[unknown] * Step(unknown);
            for (var earlier = 0; earlier + 1 < count; earlier++)
            {
                var share = Dot(_moves.AsSpan(earlier * N, N), move) / squares[earlier];
                for (var unknown = 0; unknown < N; unknown++) move[unknown] += share * _moves[((earlier + 1) * N) + unknown];
            }

            if (count > 0)
            {
                var share = 1 / (1 - (Dot(_moves.AsSpan((count - 1) * N, N), move) / squares[count - 1]));
                for (var unknown = 0; unknown < N; unknown++) move[unknown] *= share;
            }

            squares[count] = Dot(move, move);
            if (!double.IsFinite(squares[count])) return null;
            for (var unknown = 0; unknown < N; unknown++) steps[unknown] = move[unknown] * Step(unknown);
            if (IsLast(other, state, steps) && IsLast(other, state, unimproved))
            {
                var figures = Moved(FiguresOf(other, state), steps);
                return other.IsSolution(state[Last]) && KeepsContacts(figures) ? figures : null;
            }

            for (var unknown = 0; unknown < N; unknown++) state[unknown] += steps[unknown];
        }

        return null;
    }

    // The last correction, to first order, may itself lead past a kink.
    private bool KeepsContacts(in TurnFigures figures)
    {
        if (_limitOf is not null) return true;
        foreach (var wheel in (ReadOnlySpan<WheelPosition>)[WheelPosition.FrontLeft, WheelPosition.FrontRight, WheelPosition.RearLeft, WheelPosition.RearRight])
        {
            if (figures.LoadN(wheel) > 0 != Figures.LoadN(wheel) > 0) return false;
        }

        return figures.FrontGripUsed > CorneringAxle.MostUsed == Figures.FrontGripUsed > CorneringAxle.MostUsed
            && figures.RearGripUsed > CorneringAxle.MostUsed == Figures.RearGripUsed > CorneringAxle.MostUsed;
    }

    // Followed are the limit, where that is what is asked, else roll and the inclinations. Asked of the correction as it is and as it is improved, lest only the improvement makes it small.
    private bool IsLast(CorneringSolver other, ReadOnlySpan<double> state, ReadOnlySpan<double> steps)
    {
        if (_limitOf is not null) return Math.Abs(steps[Last]) <= Math.Max(LeastG, AgreedShare * Math.Abs(state[Last] - _state[Last]));
        if (!IsSmall(0, other.RollDeg, steps)) return false;
        foreach (var wheel in (ReadOnlySpan<WheelPosition>)[WheelPosition.FrontLeft, WheelPosition.FrontRight, WheelPosition.RearLeft, WheelPosition.RearRight])
        {
            if (!IsSmall(TurnFigures.InclinationIndex(wheel), other.InclinationAngleDeg(wheel), steps)) return false;
        }

        return true;
    }

    private bool IsSmall(int figure, double here, ReadOnlySpan<double> steps) =>
        Math.Abs(Dot(_figuresByState.AsSpan(figure * N, N), steps)) <= Math.Max(LeastDeg, AgreedShare * Math.Abs(here - Figures[figure]));

    private TurnFigures Moved(TurnFigures figures, ReadOnlySpan<double> move)
    {
        for (var figure = 0; figure < TurnFigures.Count; figure++) figures[figure] += Dot(_figuresByState.AsSpan(figure * N, N), move);
        return figures;
    }

    private static double Dot(ReadOnlySpan<double> one, ReadOnlySpan<double> other)
    {
        var sum = 0.0;
        for (var i = 0; i < N; i++) sum += one[i] * other[i];
        return sum;
    }
}
