using SetupService.Domain.Numerics;

namespace SetupService.Domain.Handling.Cornering.Effects;

/// <summary>The derivatives while the same carries the wheels, by differences that stay on this side of a kink.</summary>
internal sealed partial class EquilibriumDerivatives
{
    /// <summary>The derivatives in a state of a car, which need not be in balance; leaves the solver there. Null where a wheel cannot be beside it, or nothing holds the car.</summary>
    /// <param name="solver">The car's solver.</param>
    /// <param name="state">The state.</param>
    /// <param name="like">Those where the same wheels are on the road: what does not go by a spring or stop met since is taken from there; null = none.</param>
    private Regime? Differentiate(CorneringSolver solver, ReadOnlySpan<double> state, Regime? like = null)
    {
        var coefficients = like is null ? new double[N * N] : [.. like.Coefficients];
        Span<double> moved = stackalloc double[N];
        Span<double> here = stackalloc double[N];
        Span<double> ahead = stackalloc double[N];
        Span<double> behind = stackalloc double[N];
        var figuresByState = _limitOf is null ? new double[N * TurnFigures.Count] : [];
        if (!TryResiduals(solver, state, here)) return null;
        var contacts = solver.Contacts & Kinks;
        state.CopyTo(moved);
        here.CopyTo(behind);
        var figuresHere = FiguresOf(solver, state);
        for (var unknown = 0; unknown < N; unknown++)
        {
            if (like is not null && !CorneringSolver.IsTravelOf(unknown, contacts ^ like.Contacts)) continue;
            var (over, under, figuresBehind) = (state[unknown] + Steps[unknown], state[unknown], figuresHere);
            moved[unknown] = over;
            if (!TryResiduals(solver, moved, ahead)) return null;

            // Where a step ahead leads past a kink, to the other side.
            var isPast = (solver.Contacts & Kinks) != contacts;
            if (isPast)
            {
                moved[unknown] = over = Before(unknown, under);
                if (!TryResiduals(solver, moved, ahead)) return null;
            }

            var figures = FiguresOf(solver, moved);
            if (!_onlyLead && !isPast)
            {
                moved[unknown] = Before(unknown, under);
                if (!TryResiduals(solver, moved, behind)) return null;
                if ((solver.Contacts & Kinks) == contacts) (under, figuresBehind) = (moved[unknown], FiguresOf(solver, moved));
            }

            if (under == state[unknown]) here.CopyTo(behind);
            moved[unknown] = state[unknown];
            for (var row = 0; row < N; row++) coefficients[(row * N) + unknown] = (ahead[row] - behind[row]) / (over - under);
            for (var figure = 0; figure * N < figuresByState.Length; figure++) figuresByState[(figure * N) + unknown] = (figures[figure] - figuresBehind[figure]) / (over - under);
        }

        return TryResiduals(solver, state, ahead) && LinearEquations.Factorise(N, coefficients) is { } byState ? new(contacts, coefficients, byState, figuresByState) : null;
    }

    /// <summary>The derivatives that hold while what carries the wheels is what it is in a state of a car, which the solver stands in; null where there are none.</summary>
    private Regime? RegimeOf(CorneringSolver solver, ReadOnlySpan<double> state)
    {
        var contacts = solver.Contacts & Kinks;
        if (_regimes.Find(known => known.Contacts == contacts) is { } same) return same;
        var onSameWheels = _regimes.Find(known => ((known.Contacts ^ contacts) & CorneringSolver.RoadContacts) == 0);
        if (Differentiate(solver, state, onSameWheels) is not { } regime) return null;
        _regimes.Add(regime);
        return regime;
    }

    /// <summary>What is out of balance in a state, and last what closes the system.</summary>
    private bool TryResiduals(CorneringSolver solver, ReadOnlySpan<double> state, Span<double> residuals)
    {
        var lateralG = state[Last];
        if (!solver.TryResiduals(state[..Last], _path.At(lateralG), residuals[..Last], _limitOf, _onlyLead)) return false;
        residuals[Last] = _limitOf is { } axle ? solver.UsedAtPeak(axle) - 1 : lateralG - _state[Last];
        return true;
    }

    /// <summary>The derivatives while the same carries the wheels: those of the residuals as they are and factorised, those of the figures row by row.</summary>
    private sealed record Regime(int Contacts, double[] Coefficients, LinearEquations ByState, double[] FiguresByState)
    {
        public TurnFigures Moved(TurnFigures figures, ReadOnlySpan<double> move)
        {
            if (FiguresByState.Length == 0) figures.LateralG += move[Last];
            else for (var figure = 0; figure < TurnFigures.Count; figure++) figures[figure] += Change(figure, move);
            return figures;
        }

        public double Change(int figure, ReadOnlySpan<double> move) => Dot(FiguresByState.AsSpan(figure * N, N), move);
    }
}
