using SetupService.Domain.Geometry.Mechanism;
using SetupService.Domain.Numerics;

namespace SetupService.Domain.Geometry.Motion;

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

    // Five coefficients, then the movement that remains (or the one per travel) and the one per rack.
    private const int Width = FiveEquations.Count + 2;

    /// <summary>
    /// Closes the corner, starting from <paramref name="start"/>, whose wheel centre's height is set to that of the travel.
    /// </summary>
    /// <returns>False where it does not close, or closes only at a dead point; the state is then not there.</returns>
    public static bool TryClose(CornerMechanism corner, double travelMm, double rackMm, in UprightPose start, out CornerState state)
    {
        Span<double> rows = stackalloc double[FiveEquations.Count * Width];
        Span<double> perTravel = stackalloc double[FiveEquations.Count];
        var pose = start with { Centre = start.Centre with { Z = corner.Stated.Centre.Z + travelMm } };
        for (var iteration = 0; ; iteration++)
        {
            var residualMm = Fill(corner.Constraints, pose, rackMm, rows, perTravel);
            if (residualMm <= ToleranceMm)
            {
                return TryDifferentiate(rows, perTravel, out state) && Complete(ref state, travelMm, rackMm, pose, residualMm);
            }

            if (iteration == MaximumIterations || !double.IsFinite(residualMm) || FiveEquations.Solve(rows, Width) == 0)
            {
                state = default;
                return false;
            }

            var (move, turn) = Movement(rows, 0);
            if (!(turn.Length <= LongestTurnRad) || !(move.Length <= LongestMoveMm))
            {
                state = default;
                return false;
            }

            pose = pose.MovedBy(move, turn);
        }
    }

    /// <summary>
    /// Writes the equations for the movement that remains, the rack's in the last column, and the negative derivatives by the wheel
    /// centre's height aside; gives the largest value, mm.
    /// </summary>
    private static double Fill(ReadOnlySpan<Constraint> constraints, in UprightPose pose, double rackMm, Span<double> rows, Span<double> perTravel)
    {
        var turn = pose.Turn.ToMatrix();
        var largest = 0.0;
        for (var i = 0; i < FiveEquations.Count; i++)
        {
            ref readonly var constraint = ref constraints[i];
            var value = constraint.Evaluate(pose.Centre, turn, rackMm, out var force, out var moment);
            var row = rows.Slice(i * Width, Width);
            row[6] = -constraint.PerRack(force);
            row[5] = -value;
            row[4] = moment.Z;
            row[3] = moment.Y;
            row[2] = moment.X;
            row[1] = force.Y;
            row[0] = force.X;
            perTravel[i] = -force.Z;
            largest = Math.Max(largest, Math.Abs(value));
        }

        return largest;
    }

    private static bool TryDifferentiate(Span<double> rows, ReadOnlySpan<double> perTravel, out CornerState state)
    {
        for (var i = 0; i < FiveEquations.Count; i++) rows[(i * Width) + FiveEquations.Count] = perTravel[i];
        var sign = FiveEquations.Solve(rows, Width);
        state = default;
        if (sign == 0) return false;
        var (move, turn) = Movement(rows, 0);
        var (rackMove, rackTurn) = Movement(rows, 1);
        state = new CornerState
        {
            PerTravel = new UprightMotion(move with { Z = 1 }, turn),
            PerRack = new UprightMotion(rackMove, rackTurn),
            AssemblySign = sign,
        };
        return true;
    }

    private static bool Complete(ref CornerState state, double travelMm, double rackMm, in UprightPose pose, double residualMm)
    {
        state = state with { TravelMm = travelMm, RackMm = rackMm, Pose = pose, ResidualMm = residualMm };
        return true;
    }

    private static (Vector3 MoveMm, Vector3 TurnRad) Movement(ReadOnlySpan<double> rows, int side)
    {
        var at = FiveEquations.Count + side;
        return (
            new Vector3(rows[at], rows[Width + at], 0),
            new Vector3(rows[(2 * Width) + at], rows[(3 * Width) + at], rows[(4 * Width) + at]));
    }
}
