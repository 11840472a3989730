using System.Runtime.InteropServices;
using System.Runtime.Intrinsics;
using SetupService.Domain.Numerics;

namespace SetupService.Domain.Suspension.Kinematics;

/// <summary>
/// Closes a corner at a wheel travel and rack: Newton's method on the five constraints for the five movements left to the upright
/// when its wheel centre's height is held. The derivatives by travel and rack come from the same equations at the solution, by
/// the implicit function theorem, not from differences.
/// </summary>
internal static class PoseSolver
{
    /// <summary>Parts are taken to close within this, mm: the rounding of coordinates of metres, well under 1e-9 mm.</summary>
    public const double ToleranceMm = 1e-10;

    /// <summary>Steps of Newton's method; near a solution three are enough, and where twelve are not the start was too far off.</summary>
    public const int MaximumIterations = 12;

    // Newton's steps beyond these lead out of where the linearisation says anything.
    private const double LongestTurnRad = 0.5;
    private const double LongestMoveMm = 250;

    private const int Width = FiveEquations.RowLength;

    /// <summary>
    /// Closes the corner, starting from <paramref name="start"/>, whose wheel centre's height is set to that of the travel.
    /// </summary>
    /// <returns>False where it does not close, or closes only at a dead point; the state is then not there.</returns>
    public static bool TryClose(CornerMechanism corner, double travelMm, double rackMm, in UprightPose start, out SuspensionPose state)
    {
        Span<double> rows = stackalloc double[FiveEquations.Count * Width];
        var pose = start with { Centre = start.Centre with { Z = corner.Stated.Centre.Z + travelMm } };
        state = default;
        for (var iteration = 0; iteration <= MaximumIterations; iteration++)
        {
            var residualMm = Fill(corner.Constraints, pose, rackMm, rows);
            var sign = double.IsFinite(residualMm) ? FiveEquations.Solve(rows) : 0;
            if (sign == 0) return false;
            if (residualMm <= ToleranceMm)
            {
                var (travelMove, travelTurn) = Movement(rows, 1);
                var (rackMove, rackTurn) = Movement(rows, 2);
                state = new SuspensionPose
                {
                    TravelMm = travelMm,
                    RackMm = rackMm,
                    Pose = pose,
                    PerTravel = new UprightMotion(travelMove with { Z = 1 }, travelTurn),
                    PerRack = new UprightMotion(rackMove, rackTurn),
                    ResidualMm = residualMm,
                    AssemblySign = sign,
                };
                return true;
            }

            var (move, turn) = Movement(rows, 0);
            if (!(turn.Length <= LongestTurnRad) || !(move.Length <= LongestMoveMm)) return false;
            pose = pose.MovedBy(move, turn);
        }

        return false;
    }

    /// <summary>How the movement per mm of wheel travel itself changes per mm, the rack held, from the same equations differentiated once more; false at a dead point.</summary>
    public static bool TryBend(CornerMechanism corner, in SuspensionPose state, out UprightMotion bend)
    {
        Span<double> rows = stackalloc double[FiveEquations.Count * Width];
        var vectors = MemoryMarshal.Cast<double, Vector512<double>>(rows);
        var turn = state.Pose.Turn.ToMatrix();
        bend = default;
        for (var i = 0; i < FiveEquations.Count; i++)
        {
            ref readonly var constraint = ref corner.Constraints[i];
            constraint.Evaluate(state.Pose.Centre, turn, state.RackMm, out var force, out var moment);
            vectors[i] = Vector512.Create(force.X, force.Y, moment.X, moment.Y, moment.Z, -constraint.Bend(state.Pose.Centre, turn, state.RackMm, state.PerTravel), 0, 0);
        }

        if (FiveEquations.Solve(rows) == 0) return false;
        var (move, spin) = Movement(rows, 0);
        bend = new UprightMotion(move, spin);
        return true;
    }

    /// <summary>
    /// Writes the equations for the movement that remains, for the one per mm of the wheel centre's height and for the one per mm of rack;
    /// gives the largest of what does not close, mm.
    /// </summary>
    private static double Fill(ReadOnlySpan<Constraint> constraints, in UprightPose pose, double rackMm, Span<double> rows)
    {
        var vectors = MemoryMarshal.Cast<double, Vector512<double>>(rows);
        var turn = pose.Turn.ToMatrix();
        var largest = 0.0;
        for (var i = 0; i < FiveEquations.Count; i++)
        {
            ref readonly var constraint = ref constraints[i];
            var value = constraint.Evaluate(pose.Centre, turn, rackMm, out var force, out var moment);
            vectors[i] = Vector512.Create(force.X, force.Y, moment.X, moment.Y, moment.Z, -value, -force.Z, -constraint.PerRack(force));
            largest = Math.Max(largest, Math.Abs(value));
        }

        return largest;
    }

    private static (Vector3 MoveMm, Vector3 TurnRad) Movement(ReadOnlySpan<double> rows, int side)
    {
        var at = FiveEquations.Count + side;
        return (
            new Vector3(rows[at], rows[Width + at], 0),
            new Vector3(rows[(2 * Width) + at], rows[(3 * Width) + at], rows[(4 * Width) + at]));
    }
}
