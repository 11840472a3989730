using SetupService.Domain.Numerics;
using SetupService.Domain.Suspension.Kinematics;

namespace SetupService.Domain.Suspension.Sweep;

/// <summary>
/// Follows a corner from position to position, each found from the one before. Where that fails the ways from the stated position are
/// tried, the wheel first and then the rack, and the other way round, so that a position counts as unreachable for itself and not
/// for what was asked before it.
/// </summary>
public sealed class PositionTracker
{
    private readonly CornerMechanism _corner;
    private readonly SuspensionPose _origin;
    private readonly WorkBudget? _budget;
    private SuspensionPose _last;

    private PositionTracker(CornerMechanism corner, SuspensionPose origin, WorkBudget? budget)
    {
        _budget = budget;
        _corner = corner;
        _origin = origin;
        _last = origin;
    }

    /// <summary>Starts at the stated position; null where the corner does not even close there, or does not hold its wheel.</summary>
    public static PositionTracker? Start(CornerMechanism corner, WorkBudget? budget = null) =>
        PoseContinuation.TryStart(corner, out var origin) ? new PositionTracker(corner, origin, budget) : null;

    /// <summary>The stated position.</summary>
    public SuspensionPose Origin => _origin;

    /// <summary>
    /// Goes to a wheel travel and rack, mm; where every way ends before, <paramref name="state"/> is the last position on the way that
    /// moves the rack first: at the rack asked for, if that is reached, the furthest travel.
    /// </summary>
    public bool TryReach(double travelMm, double rackMm, out SuspensionPose state)
    {
        if (travelMm == _origin.TravelMm && rackMm == _origin.RackMm)
        {
            // The corner as it is described, not as rounding on the way there leaves it.
            state = _last = _origin;
            return true;
        }

        state = _last;
        if (!PoseContinuation.TryMove(_corner, travelMm, rackMm, ref state, _budget)
            && !TryFromOrigin(travelMm, 0, travelMm, rackMm, out state)
            && !TryFromOrigin(0, rackMm, travelMm, rackMm, out state)) return false;
        _last = state;
        return true;
    }

    private bool TryFromOrigin(double viaTravelMm, double viaRackMm, double travelMm, double rackMm, out SuspensionPose state)
    {
        state = _origin;
        return PoseContinuation.TryMove(_corner, viaTravelMm, viaRackMm, ref state, _budget) && PoseContinuation.TryMove(_corner, travelMm, rackMm, ref state, _budget);
    }
}
