using SetupService.Domain.Numerics;

namespace SetupService.Domain.Suspension.Search;

/// <summary>
/// The least movement of a few adjusters that gives a corner its wanted angles, or comes nearest to them within the limits. Gauss
/// and Newton's method on the solved corner, each step the best place of a linear model (<see cref="LinearModel"/>). Where an adjuster
/// does so little that the angles bend more than they follow, the least movement may not come to rest; the target is then met by one
/// near it.
/// </summary>
public sealed class MovementSearch
{
    private const int MaximumIterations = 30;

    // After them the target is met from where the search is, by the least movement from there, no step leading further from it.
    private const int FinishingIterations = 12;
    private const int MaximumHalvings = 12;

    // Of a difference from which a slope is taken: its error tilts the least movement by some 1e-6 of itself.
    private const double StepMm = 0.001;
    private const double StillMm = 1e-9;

    private readonly AdjustableCorner _start;
    private readonly AdjusterRoom[] _rooms;
    private readonly AngleTarget _target;
    private readonly double? _archGapMm;
    private readonly bool _resetToe;
    private readonly WorkBudget? _budget;
    private readonly Adjustment[] _adjustments;

    private MovementSearch(AdjustableCorner start, AdjusterRoom[] rooms, AngleTarget target, double? archGapMm, bool resetToe, WorkBudget? budget)
    {
        _budget = budget;
        _start = start;
        _rooms = rooms;
        _target = target;
        _archGapMm = archGapMm;
        _resetToe = resetToe;
        _adjustments = Array.ConvertAll(rooms, room => room.Adjustment);
        Amounts = Array.ConvertAll(rooms, room => Math.Clamp(0, room.Minimum, room.Maximum));
        After = start;
    }

    /// <summary>Amount of each adjuster, mm or degrees, in the order asked.</summary>
    public double[] Amounts { get; }

    /// <summary>The corner with these amounts.</summary>
    public AdjustableCorner After { get; private set; }

    /// <summary>Whether the target is met.</summary>
    public bool IsReached { get; private set; }

    /// <summary>What stands in the way where it is not.</summary>
    public IReadOnlyList<BindingLimit> BindingLimits { get; private set; } = [];

    internal static MovementSearch? Find(AdjustableCorner start, AdjusterRoom[] rooms, AngleTarget target, double? archGapMm, bool resetToe, WorkBudget? budget)
    {
        var search = new MovementSearch(start, rooms, target, archGapMm, resetToe, budget);
        return search.Run() ? search : null;
    }

    private bool Run()
    {
        if (At(Amounts) is not { } first) return false;
        After = first;
        var hitClosure = false;
        Span<double> next = stackalloc double[_rooms.Length];
        Span<double> slopes = stackalloc double[3 * _rooms.Length];
        Span<double> wanted = stackalloc double[3];
        Span<double> archSlopes = stackalloc double[_rooms.Length];
        Span<double> origin = stackalloc double[_rooms.Length];
        origin.Clear();
        for (var iteration = 0; iteration < MaximumIterations + FinishingIterations; iteration++)
        {
            if (_budget is not null && !_budget.TrySpend()) break;
            var isFinishing = iteration >= MaximumIterations;
            if (isFinishing) Amounts.CopyTo(origin);
            if (!TryModel(slopes, wanted, archSlopes, origin, out var model))
            {
                hitClosure = true;
                break;
            }

            model.Best(next);
            var (moved, isCut) = Go(next, isFinishing);
            hitClosure = isCut;
            if (moved <= StillMm) break;
        }

        Judge(slopes, archSlopes, hitClosure);
        return true;
    }

    private AdjustableCorner? At(ReadOnlySpan<double> amounts)
    {
        for (var i = 0; i < amounts.Length; i++) _adjustments[i] = _adjustments[i] with { Amount = amounts[i] };
        return _start.With(_adjustments, _resetToe);
    }

    private bool TryModel(Span<double> slopes, Span<double> wanted, Span<double> archSlopes, ReadOnlySpan<double> origin, out LinearModel model)
    {
        var count = _rooms.Length;
        var angles = 0;
        model = default;
        for (var i = 0; i < count; i++)
        {
            // Towards the inside of the limits, so that nothing outside them is asked of the geometry.
            var step = Amounts[i] + StepMm <= _rooms[i].Maximum ? StepMm : -StepMm;
            var stood = Amounts[i];
            Amounts[i] += step;
            var stepped = At(Amounts);
            Amounts[i] = stood;
            if (stepped is null) return false;
            angles = 0;
            if (_target.CamberDeg is not null) slopes[(angles++ * count) + i] = (stepped.CamberDeg - After.CamberDeg) / step;
            if (_target.CasterDeg is not null) slopes[(angles++ * count) + i] = ((stepped.CasterDeg - After.CasterDeg) / step) ?? 0;
            if (_target.ToeDeg is not null) slopes[(angles++ * count) + i] = ((stepped.ToeDeg - After.ToeDeg) / step) ?? 0;
            archSlopes[i] = ((stepped.TyreTopOutboardMm - After.TyreTopOutboardMm) / step) ?? 0;
        }

        var row = 0;
        if (_target.CamberDeg is { } camber) wanted[row++] = camber - After.CamberDeg;
        if (_target.CasterDeg is { } caster) wanted[row++] = (caster - After.CasterDeg) ?? 0;
        if (_target.ToeDeg is { } toe) wanted[row++] = (toe - After.ToeDeg) ?? 0;
        var archRoom = (_start.TyreTopOutboardMm - After.TyreTopOutboardMm + _archGapMm) ?? 0;
        for (var i = 0; i < count; i++)
        {
            for (var k = 0; k < angles; k++) wanted[k] += slopes[(k * count) + i] * Amounts[i];
            archRoom += archSlopes[i] * Amounts[i];
        }

        model = new LinearModel
        {
            Rooms = _rooms,
            Origin = origin,
            Slopes = slopes[..(angles * count)],
            Wanted = wanted[..angles],
            ArchSlopes = _archGapMm is null ? [] : archSlopes,
            ArchRoomMm = archRoom,
        };
        return true;
    }

    /// <summary>Goes to the amounts, or as far towards them as the parts close and, where asked, the target comes nearer.</summary>
    private (double MovedMm, bool IsCut) Go(ReadOnlySpan<double> to, bool comesNearer)
    {
        Span<double> tried = stackalloc double[to.Length];
        var share = 1.0;
        var isCut = false;
        for (var halving = 0; halving <= MaximumHalvings; halving++, share *= 0.5)
        {
            var moved = 0.0;
            for (var i = 0; i < to.Length; i++)
            {
                tried[i] = Amounts[i] + (share * (to[i] - Amounts[i]));
                moved = Math.Max(moved, Math.Abs(tried[i] - Amounts[i]));
            }

            if (_budget is not null && !_budget.TrySpend()) break;
            var reached = At(tried);
            isCut |= reached is null;
            if (reached is null || (comesNearer && SquareError(reached) >= SquareError(After))) continue;
            tried.CopyTo(Amounts);
            After = reached;
            return (moved, isCut);
        }

        return (0, isCut);
    }

    // Of angles in degrees and of what stands in the arch in mm; a corner that lost its steering axis is nowhere near.
    private double SquareError(AdjustableCorner corner)
    {
        if (_target.CasterDeg is not null && corner.CasterDeg is null) return double.PositiveInfinity;
        if (_target.ToeDeg is not null && corner.ToeDeg is null) return double.PositiveInfinity;
        var camberError = (corner.CamberDeg - _target.CamberDeg) ?? 0;
        var casterError = (corner.CasterDeg - _target.CasterDeg) ?? 0;
        var toeError = (corner.ToeDeg - _target.ToeDeg) ?? 0;
        var inArchMm = Math.Max(0, (corner.TyreTopOutboardMm - _start.TyreTopOutboardMm - _archGapMm) ?? 0);
        return (camberError * camberError) + (casterError * casterError) + (toeError * toeError) + (inArchMm * inArchMm);
    }

    private void Judge(ReadOnlySpan<double> slopes, ReadOnlySpan<double> archSlopes, bool hitClosure)
    {
        var camberError = After.CamberDeg - _target.CamberDeg;
        var casterError = After.CasterDeg - _target.CasterDeg;
        var toeError = After.ToeDeg - _target.ToeDeg;
        IsReached = Math.Abs(camberError ?? 0) <= AngleTarget.ToleranceDeg && Math.Abs(casterError ?? 0) <= AngleTarget.ToleranceDeg
            && Math.Abs(toeError ?? 0) <= AngleTarget.ToleranceDeg
            && (_target.CasterDeg is null || After.CasterDeg is not null) && (_target.ToeDeg is null || After.ToeDeg is not null);
        if (IsReached) return;

        var found = new List<BindingLimit>();
        var atArch = _archGapMm is { } gap && After.TyreTopOutboardMm - _start.TyreTopOutboardMm >= gap - 1e-6;
        for (var i = 0; i < _rooms.Length; i++)
        {
            // How the squared error grows with the adjuster: beyond the limit it would have to fall.
            var grows = 0.0;
            var row = 0;
            if (camberError is { } camber) grows += camber * slopes[(row++ * _rooms.Length) + i];
            if (casterError is { } caster) grows += caster * slopes[(row++ * _rooms.Length) + i];
            if (toeError is { } toe) grows += toe * slopes[(row * _rooms.Length) + i];
            if ((Amounts[i] >= _rooms[i].Maximum - StillMm && grows < 0) || (Amounts[i] <= _rooms[i].Minimum + StillMm && grows > 0))
            {
                found.Add(new(Obstacle.Limit, i));
            }
        }

        if (atArch && archSlopes.ContainsAnyExcept(0.0)) found.Add(new(Obstacle.ArchGap, null));
        if (hitClosure) found.Add(new(Obstacle.Closure, null));
        if (found.Count == 0) found.Add(new(Obstacle.NoEffect, null));
        BindingLimits = found;
    }
}
