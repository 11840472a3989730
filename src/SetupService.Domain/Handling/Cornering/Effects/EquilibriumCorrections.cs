using System.Runtime.Intrinsics;
using SetupService.Domain.Vehicles;

namespace SetupService.Domain.Handling.Cornering.Effects;

/// <summary>The turn of a car that differs a good deal, by corrections from this one.</summary>
internal sealed partial class EquilibriumDerivatives
{
    // A correction is the last, and taken to first order, where it moves no figure that is followed by more than this share of how far that has come, or than what
    // nobody could read; what it leaves is smaller by about that share again.
    private const double AgreedShare = 0.03;
    private const double LeastDeg = 0.01;
    private const double LeastG = 1e-4;

    // So short a correction, in the steps differences are taken with (0.3 mm of travel, 15 N of side force), is as good as straight: what it moves a limit or an angle by is taken as it is up to this.
    private const double ShortSteps = 150;
    private const double ShortG = 3e-3;
    private const double ShortDeg = 0.05;

    // Corrections tried before a turn is solved again; one to three do.
    private const int MostCorrections = 12;

    // A car turned further than this in its turn, by how far the turn's centre is moved along it as a share of the radius, steers otherwise than first order tells.
    private const double FurthestStation = 0.1;

    // A limit further off than this share is looked for from there; one further off than the other is not believed.
    private const double FarOff = 0.01;
    private const double FurthestShare = 0.3;

    // The residuals of the body, which come first, and what of them is rounding, N.
    private const int OfBody = 5;
    private const double LeastN = 1e-3;

    // What may be out of balance past a kink: forces, N; heading of the front axle, degrees; station of the turn's centre, mm; and of an axle's grip, as a share of it.
    private const int HeadingRow = 5;
    private const int StationRow = 6;
    private const double BalancedN = 5;
    private const double BalancedDeg = 0.05;
    private const double BalancedMm = 10;
    private const double BalancedG = 5e-4;

    /// <summary>
    /// The figures of another car, which may differ a good deal, by corrections with the one factorisation, improved from step to step by Broyden's rank-one
    /// updates (Kelley, Solving Nonlinear Equations with Newton's Method, 2003, ch. 4, from memory); solved again where they do not converge. Null where it has no equilibrium there.
    /// </summary>
    /// <param name="other">A solver of the other car, by <see cref="CorneringSolver.With"/>.</param>
    public TurnFigures? At(CorneringSolver other)
    {
        var lateralG = _state[Last];
        var reachedG = lateralG;
        if (Corrected(other, ref reachedG) is { } figures) return figures;

        // A limit is looked for from where the corrections came to, unless they went astray.
        var isNear = Math.Abs(reachedG - lateralG) <= FurthestShare * lateralG;
        if (_limitOf is null || !isNear) other.StartFrom(_solver);
        if (_limitOf is { } axle) return GripLimits.Solve(other, _path, isNear ? reachedG : lateralG, axle).LimitG is { } limitG ? new TurnFigures { LateralG = limitG } : null;
        return other.Solve(_path.At(lateralG)) is null ? other.Figures() with { LateralG = lateralG } : null;
    }

    // Tells the lateral acceleration it came to, whether or not it comes to an end.
    private TurnFigures? Corrected(CorneringSolver other, ref double reachedG)
    {
        Span<double> state = stackalloc double[N];
        Span<double> residuals = stackalloc double[N];
        Span<double> squares = stackalloc double[MostCorrections + 1];
        Span<double> steps = stackalloc double[N];
        Span<double> unimproved = stackalloc double[N];
        _state.CopyTo(state);
        var hasMoved = other.KeepTyreLoads(state, _solver);
        if (!TryResiduals(other, state, residuals)) return null;
        if (_limitOf is not null)
        {
            // Where only what the tyres hold differs and the limit is far off, from where the car would be if what its tyres hold did not change on the way.
            var way = (1 / (1 + residuals[Last])) - 1;
            if (Math.Abs(way) > FarOff && IsOfTyres(residuals))
            {
                for (var unknown = 0; unknown < N; unknown++) state[unknown] += way * _alongPath[unknown];
                if (!(state[Last] >= 0) || !TryResiduals(other, state, residuals)) return null;
                hasMoved = true;
            }
        }

        var (regime, wasPast) = (_regimes[0], false);
        for (var (count, tries) = (0, 0); tries <= MostCorrections; (count, tries) = (count + 1, tries + 1))
        {
            if (tries > 0 && (!(state[Last] >= 0) || !TryResiduals(other, state, residuals))) return null;
            reachedG = state[Last];

            // Past the kink of a stop, of a lifting wheel or of tyres at their limit the derivatives are others. A turn is then solved again: it may stand in more than one way.
            var contacts = other.Contacts;
            var isPast = (contacts & Kinks) != regime.Contacts;
            if (isPast && (tries > 0 || hasMoved))
            {
                if (_limitOf is null || RegimeOf(other, state) is not { } next) return null;
                (regime, count, isPast) = (next, 0, false);
            }

            var move = _moves.AsSpan(count * N, N);
            regime.ByState.Solve(residuals, unimproved);
            for (var unknown = 0; unknown < N; unknown++) (unimproved[unknown], move[unknown]) = (-unimproved[unknown], -unimproved[unknown] * PerStep[unknown]);
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
            for (var unknown = 0; unknown < N; unknown++) steps[unknown] = move[unknown] * Steps[unknown];
            wasPast |= isPast;
            var isBalanced = (contacts == _contacts && !wasPast) || IsBalanced(residuals, state[Last]);
            if (isBalanced && IsLast(other, state, steps, count) && (count == 0 || IsLast(other, state, unimproved, count)))
            {
                var figures = _regimes[0].Moved(FiguresOf(other, state), steps);
                return other.IsSolution(state[Last]) && KeepsContacts(other, steps, figures) ? figures : null;
            }

            for (var unknown = 0; unknown < N; unknown++) state[unknown] += steps[unknown];

            // A step that began past a kink, as a car may in this one's state, says nothing of how residuals go where it led.
            if (isPast) count = -1;
        }

        return null;
    }

    // True where hardly anything is out of balance: past a kink derivatives may be so far off that a small correction leaves much.
    private bool IsBalanced(ReadOnlySpan<double> residuals, double lateralG)
    {
        for (var row = 0; row < Last; row++)
        {
            var most = row switch { HeadingRow => BalancedDeg, StationRow => BalancedMm, _ => BalancedN };
            if (Math.Abs(residuals[row]) > most) return false;
        }

        return Math.Abs(residuals[Last]) <= Math.Max(BalancedG, AgreedShare * Math.Abs(lateralG - _state[Last]));
    }

    // True where the body stands as it did, so that only slip and side forces are out of balance.
    private static bool IsOfTyres(ReadOnlySpan<double> residuals)
    {
        for (var row = 0; row < OfBody; row++)
        {
            if (Math.Abs(residuals[row]) > LeastN) return false;
        }

        return true;
    }

    // The last correction, to first order, may itself lead past a kink.
    private bool KeepsContacts(CorneringSolver other, ReadOnlySpan<double> steps, in TurnFigures figures)
    {
        if (_limitOf is not null) return true;
        if (other.CarriedBy(steps) != (_contacts & CorneringSolver.WheelContacts & ~CorneringSolver.RoadContacts)) return false;
        foreach (var wheel in (ReadOnlySpan<WheelPosition>)[WheelPosition.FrontLeft, WheelPosition.FrontRight, WheelPosition.RearLeft, WheelPosition.RearRight])
        {
            if (figures.LoadN(wheel) > 0 != Figures.LoadN(wheel) > 0) return false;
        }

        return true;
    }

    // Followed are the limit, where that is what is asked, else roll and the inclinations. Asked of the correction as it is and as it is improved, lest only the improvement makes it small.
    private bool IsLast(CorneringSolver other, ReadOnlySpan<double> state, ReadOnlySpan<double> steps, int count)
    {
        if (_limitOf is not null) return Math.Abs(steps[Last]) <= Math.Max(IsShort(steps) ? ShortG : LeastG, count > 0 ? AgreedShare * Math.Abs(state[Last] - _state[Last]) : 0);
        var least = IsShort(steps) ? ShortDeg : LeastDeg;
        if (Math.Abs(steps[StationRow]) > _furthestStationMm || !IsSmall(0, other.RollDeg, steps, least)) return false;
        foreach (var wheel in (ReadOnlySpan<WheelPosition>)[WheelPosition.FrontLeft, WheelPosition.FrontRight, WheelPosition.RearLeft, WheelPosition.RearRight])
        {
            if (!IsSmall(TurnFigures.InclinationIndex(wheel), other.InclinationAngleDeg(wheel), steps, least)) return false;
        }

        return true;
    }

    private static bool IsShort(ReadOnlySpan<double> steps)
    {
        for (var unknown = 0; unknown < Last; unknown++)
        {
            if (Math.Abs(steps[unknown]) > ShortSteps * Steps[unknown]) return false;
        }

        return true;
    }

    private bool IsSmall(int figure, double here, ReadOnlySpan<double> steps, double leastDeg) =>
        Math.Abs(_regimes[0].Change(figure, steps)) <= Math.Max(leastDeg, AgreedShare * Math.Abs(here - Figures[figure]));

    private static double Dot(ReadOnlySpan<double> one, ReadOnlySpan<double> other)
    {
        one = one[..N];
        other = other[..N];
        var sum = Vector128<double>.Zero;
        for (var i = 0; i < N; i += Vector128<double>.Count) sum += Vector128.Create(one[i..]) * Vector128.Create(other[i..]);
        return Vector128.Sum(sum);
    }
}
