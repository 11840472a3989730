using SetupService.Domain.Numerics;

namespace SetupService.Domain.Suspension.Kinematics;

/// <summary>
/// Moves a corner from one position to another along a straight line of travel and rack, each step started from where the last
/// step's derivatives point. So the corner stays assembled the way it is drawn: a position that closes only with its parts
/// assembled another way, or past a dead point, is not reached.
/// </summary>
public static class PoseContinuation
{
    // Far shorter than what Newton's method bridges, so that it cannot land on another assembly unseen.
    private const double LongestTravelStepMm = 20;
    private const double LongestRackStepMm = 10;

    // How far the solution may turn away from where the derivatives pointed before a shorter step is tried, and how near it is taken
    // without a second look.
    private const double LargestCorrectionRad = 0.05;
    private const double SmallCorrectionRad = 1e-4;

    // How far it may then lie from where the derivatives at both ends of the step point, and as a share of that correction: along a path
    // the share falls with the step, on another assembly it may be any.
    private const double LargestKinkRad = 1e-3;
    private const double LargestKinkShare = 0.2;

    private const double ShortestShare = 1.0 / (1 << 18);
    private const int MostTries = 500;

    /// <summary>The corner as its points state it, or, where something was adjusted, closed anew at the same wheel height.</summary>
    public static bool TryStart(CornerMechanism corner, out SuspensionPose state)
    {
        ArgumentNullException.ThrowIfNull(corner);
        return PoseSolver.TryClose(corner, 0, 0, new UprightPose(corner.Stated.Centre, Rotation.None), out state);
    }

    /// <summary>Moves to a wheel travel and rack, mm.</summary>
    /// <param name="corner">The corner.</param>
    /// <param name="travelMm">Wheel travel from the stated position, mm; positive = bump.</param>
    /// <param name="rackMm">Rack travel, mm; positive = to the left.</param>
    /// <param name="state">The position to go on from; moved.</param>
    /// <param name="budget">Work allowed, a step for each position tried; null = any.</param>
    /// <param name="shortestShare">How short a step may become, as a share of the way: a caller who would come nearer by himself gives up sooner where the way ends.</param>
    /// <returns>False where the way ends before, or the work allowed is spent; <paramref name="state"/> is then the last position reached.</returns>
    public static bool TryMove(CornerMechanism corner, double travelMm, double rackMm, ref SuspensionPose state, WorkBudget? budget = null, double shortestShare = ShortestShare)
    {
        ArgumentNullException.ThrowIfNull(corner);
        if (travelMm == state.TravelMm && rackMm == state.RackMm) return true;
        var from = state;
        var wayMm = Math.Max(Math.Abs(travelMm - from.TravelMm) / LongestTravelStepMm, Math.Abs(rackMm - from.RackMm) / LongestRackStepMm);
        var longestShare = wayMm <= 1 ? 1 : 1 / wayMm;
        var share = longestShare;
        var done = 0.0;
        for (var tries = 0; done < 1; tries++)
        {
            if (tries == MostTries || share < shortestShare || (budget is not null && !budget.TrySpend())) return false;
            var next = Math.Min(1, done + share);

            // The end itself is asked for exactly, so that the same position has the same answer whatever way led there.
            var toTravelMm = next == 1 ? travelMm : from.TravelMm + (next * (travelMm - from.TravelMm));
            var toRackMm = next == 1 ? rackMm : from.RackMm + (next * (rackMm - from.RackMm));
            var predicted = Predict(state, toTravelMm, toRackMm);
            if (PoseSolver.TryClose(corner, toTravelMm, toRackMm, predicted, out var reached)
                && reached.AssemblySign == state.AssemblySign && IsOnTheWay(state, predicted.Turn, reached))
            {
                state = reached;
                done = next;
                share = Math.Min(longestShare, 2 * share);
            }
            else
            {
                share *= 0.5;
            }
        }

        return true;
    }

    /// <summary>
    /// Moves to a wheel travel and rack, mm, from the position before; where that fails the ways from the stated position are tried, the wheel
    /// first and then the rack, and the other way round, so that a position counts as unreachable for itself and not for what was asked
    /// before it.
    /// </summary>
    /// <param name="corner">The corner.</param>
    /// <param name="stated">The stated position, as <see cref="TryStart"/> gives it.</param>
    /// <param name="travelMm">Wheel travel from the stated position, mm; positive = bump.</param>
    /// <param name="rackMm">Rack travel, mm; positive = to the left.</param>
    /// <param name="last">The position reached before; the new one where it is reached, else left as it was.</param>
    /// <param name="state">
    /// The position; where every way ends before, the last one on the way that moves the rack first: at the rack asked for, if that is reached,
    /// the furthest travel.
    /// </param>
    /// <param name="budget">Work allowed, a step for each position tried; null = any.</param>
    public static bool TryReach(CornerMechanism corner, in SuspensionPose stated, double travelMm, double rackMm, ref SuspensionPose last, out SuspensionPose state, WorkBudget? budget = null)
    {
        if (travelMm == stated.TravelMm && rackMm == stated.RackMm)
        {
            // The corner as it is described, not as rounding on the way there leaves it.
            state = last = stated;
            return true;
        }

        state = last;
        if (!TryMove(corner, travelMm, rackMm, ref state, budget)
            && !TryMoveVia(corner, stated, (travelMm, 0), (travelMm, rackMm), out state, budget)
            && !TryMoveVia(corner, stated, (0, rackMm), (travelMm, rackMm), out state, budget)) return false;
        last = state;
        return true;
    }

    private static bool TryMoveVia(CornerMechanism corner, in SuspensionPose stated, (double TravelMm, double RackMm) via, (double TravelMm, double RackMm) to, out SuspensionPose state, WorkBudget? budget)
    {
        state = stated;
        return TryMove(corner, via.TravelMm, via.RackMm, ref state, budget) && TryMove(corner, to.TravelMm, to.RackMm, ref state, budget);
    }

    private static UprightPose Predict(in SuspensionPose state, double travelMm, double rackMm)
    {
        var travel = travelMm - state.TravelMm;
        var rack = rackMm - state.RackMm;
        return state.Pose.MovedBy(
            (travel * state.PerTravel.Velocity) + (rack * state.PerRack.Velocity),
            (travel * state.PerTravel.Spin) + (rack * state.PerRack.Spin));
    }

    /// <summary>
    /// Whether the position reached goes on from the last without a jump to another assembly: near where the derivatives there pointed,
    /// and much nearer to where the mean of those there and here does.
    /// </summary>
    private static bool IsOnTheWay(in SuspensionPose from, in Rotation predicted, in SuspensionPose reached)
    {
        var correctionRad = Between(predicted, reached.Pose.Turn);
        if (correctionRad <= SmallCorrectionRad) return true;
        var (travel, rack) = (reached.TravelMm - from.TravelMm, reached.RackMm - from.RackMm);
        var mean = from.Pose.Turn.TurnedBy(
            (0.5 * travel * (from.PerTravel.Spin + reached.PerTravel.Spin)) + (0.5 * rack * (from.PerRack.Spin + reached.PerRack.Spin)));
        return correctionRad <= LargestCorrectionRad
            && Between(mean, reached.Pose.Turn) <= Math.Max(LargestKinkRad, LargestKinkShare * correctionRad);
    }

    /// <summary>The angle between two rotations that lie near to each other, rad: twice the vector part of one by the other's opposite.</summary>
    private static double Between(in Rotation a, in Rotation b)
    {
        var (p, q) = (new Vector3(a.X, a.Y, a.Z), new Vector3(b.X, b.Y, b.Z));
        return 2 * ((a.W * q) - (b.W * p) - q.Cross(p)).Length;
    }
}
