using SetupService.Domain.Numerics;

namespace SetupService.Domain.Suspension.Kinematics;

/// <summary>
/// How nearly a corner closes where it does not: the pose with the least sum of squares of what is missing, found by the damped
/// least-squares method (Levenberg 1944, Marquardt 1963, from memory).
/// </summary>
/// <param name="Role">The part that is furthest from closing there.</param>
/// <param name="GapMm">What that part lacks, mm: a positive link is too short by it, a negative one too long; for other parts a size.</param>
/// <param name="ResidualMm">The largest size of what any part lacks, mm; practically 0 at a dead point, where the parts close but do not hold.</param>
public readonly record struct ClosureGap(ConstraintRole Role, double GapMm, double ResidualMm)
{
    // A gap below this is none: the parts meet.
    private const double NoGapMm = 1e-6;

    private const int MaximumIterations = 80;
    private const double SmallestDamping = 1e-12;
    private const double LargestDamping = 1e9;

    /// <summary>True when the parts meet, but past a dead point or assembled another way.</summary>
    public bool IsNone => ResidualMm < NoGapMm;

    /// <summary>Finds it from the last position that was reached.</summary>
    public static ClosureGap Find(CornerMechanism corner, double travelMm, double rackMm, in SuspensionPose last)
    {
        ArgumentNullException.ThrowIfNull(corner);
        Span<double> values = stackalloc double[FiveEquations.Count];
        Span<double> tried = stackalloc double[FiveEquations.Count];
        Span<double> slopes = stackalloc double[FiveEquations.Count * FiveEquations.Count];
        Span<double> rows = stackalloc double[FiveEquations.Count * FiveEquations.RowLength];
        var pose = last.Pose with { Centre = last.Pose.Centre with { Z = corner.Stated.Centre.Z + travelMm } };
        var sum = Fill(corner, pose, rackMm, values, slopes);
        var damping = 1e-3;
        for (var iteration = 0; iteration < MaximumIterations && damping < LargestDamping; iteration++)
        {
            FillNormal(values, slopes, damping, rows);
            if (FiveEquations.Solve(rows) == 0)
            {
                damping *= 10;
                continue;
            }

            var candidate = pose.MovedBy(new Vector3(Solution(rows, 0), Solution(rows, 1), 0), new Vector3(Solution(rows, 2), Solution(rows, 3), Solution(rows, 4)));
            var candidateSum = Fill(corner, candidate, rackMm, tried, slopes);
            if (candidateSum < sum)
            {
                var gain = sum - candidateSum;
                (pose, sum) = (candidate, candidateSum);
                tried.CopyTo(values);
                damping = Math.Max(SmallestDamping, damping * 0.2);
                if (gain <= 1e-14 * sum) break;
            }
            else
            {
                damping *= 10;
                Fill(corner, pose, rackMm, values, slopes);
            }
        }

        return Largest(corner, values);
    }

    private static double Solution(ReadOnlySpan<double> rows, int unknown) => rows[(unknown * FiveEquations.RowLength) + FiveEquations.Count];

    private static ClosureGap Largest(CornerMechanism corner, ReadOnlySpan<double> values)
    {
        var largest = default(ClosureGap);
        for (var i = 0; i < values.Length; i++)
        {
            var lacksMm = LacksMm(corner.Constraints[i], values[i]);
            if (i == 0 || Math.Abs(lacksMm) > largest.ResidualMm) largest = new(corner.Constraints[i].Role, lacksMm, Math.Abs(lacksMm));
        }

        return largest;
    }

    /// <summary>What a part lacks; a link's value, (d² − L²)/(2 L), is its missing length d − L to first order only.</summary>
    private static double LacksMm(in Constraint constraint, double value) => constraint.Form == ConstraintForm.Link
        ? value * 2 / (1 + Math.Sqrt(1 + (2 * value / constraint.LengthMm)))
        : Math.Abs(value);

    private static double Fill(CornerMechanism corner, in UprightPose pose, double rackMm, Span<double> values, Span<double> slopes)
    {
        var turn = pose.Turn.ToMatrix();
        var sum = 0.0;
        for (var i = 0; i < FiveEquations.Count; i++)
        {
            values[i] = corner.Constraints[i].Evaluate(pose.Centre, turn, rackMm, out var force, out var moment);
            var row = slopes.Slice(i * FiveEquations.Count, FiveEquations.Count);
            (row[0], row[1], row[2], row[3], row[4]) = (force.X, force.Y, moment.X, moment.Y, moment.Z);
            sum += values[i] * values[i];
        }

        return sum;
    }

    private static void FillNormal(ReadOnlySpan<double> values, ReadOnlySpan<double> slopes, double damping, Span<double> rows)
    {
        for (var i = 0; i < FiveEquations.Count; i++)
        {
            var right = 0.0;
            for (var k = 0; k < FiveEquations.Count; k++) right -= slopes[(k * FiveEquations.Count) + i] * values[k];
            rows[(i * FiveEquations.RowLength) + FiveEquations.Count] = right;
            for (var j = 0; j < FiveEquations.Count; j++)
            {
                var sum = 0.0;
                for (var k = 0; k < FiveEquations.Count; k++) sum += slopes[(k * FiveEquations.Count) + i] * slopes[(k * FiveEquations.Count) + j];
                rows[(i * FiveEquations.RowLength) + j] = i == j ? sum * (1 + damping) : sum;
            }
        }
    }
}
