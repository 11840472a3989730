namespace SetupService.Domain.Suspension.Search;

/// <summary>
/// How the angles follow the adjusters near one place, and the best place by that: of all amounts within their limits those with
/// the least sum of squared errors, and of these the ones with the least movement from <see cref="Origin"/>.
/// </summary>
/// <remarks>
/// The best place lies on some face of the box of limits, where a few adjusters stand at an end and the rest are free; on that face
/// it is the pseudo-inverse's solution. With at most four adjusters there are at most 81 faces, twice that with the arch, so every
/// one is looked at and nothing is left to a search that might stop early.
/// </remarks>
internal ref struct LinearModel
{
    // An arch that is met is kept exactly; the angles then get what is left.
    private const double ArchWeight = 1e6;

    // Errors closer than this, degrees, are alike and the movement decides.
    private const double SameErrorDeg = 1e-9;
    private const double InsideMm = 1e-12;

    /// <summary>Change of each angle per unit of each adjuster, angle by angle.</summary>
    public Span<double> Slopes;

    /// <summary>What the linear model gives each angle less the target's, were every adjuster at 0, negative: slopes·x should be this.</summary>
    public Span<double> Wanted;

    /// <summary>Movement of the tyre's top outboard per unit of each adjuster; empty where no arch was given.</summary>
    public Span<double> ArchSlopes;

    /// <summary>What ArchSlopes·x may be at most, mm.</summary>
    public double ArchRoomMm;

    /// <summary>Limits and weights of the adjusters.</summary>
    public ReadOnlySpan<AdjusterRoom> Rooms;

    /// <summary>The amounts that movement counts from.</summary>
    public ReadOnlySpan<double> Origin;

    /// <summary>Finds the best amounts.</summary>
    public readonly void Best(Span<double> best)
    {
        Span<double> candidate = stackalloc double[Rooms.Length];
        var faces = 1;
        for (var i = 0; i < Rooms.Length; i++) faces *= 3;
        var (bestError, bestSize) = (double.PositiveInfinity, double.PositiveInfinity);

        // Where the limits leave no place clear of the arch, nothing is moved that need not be.
        for (var i = 0; i < best.Length; i++) best[i] = Math.Clamp(Origin[i], Rooms[i].Minimum, Rooms[i].Maximum);
        for (var arch = 0; arch < (ArchSlopes.IsEmpty ? 1 : 2); arch++)
        {
            for (var face = 0; face < faces; face++)
            {
                SolveOn(face, arch == 1, candidate);
                if (!IsAllowed(candidate)) continue;
                var (error, size) = (ErrorDeg(candidate), Size(candidate));
                if (error < bestError - SameErrorDeg || (error <= bestError + SameErrorDeg && size < bestSize))
                {
                    (bestError, bestSize) = (error, size);
                    candidate.CopyTo(best);

                    // Free of every limit and on target: no face can better that.
                    if (arch == 0 && face == 0 && error <= SameErrorDeg) return;
                }
            }
        }
    }

    /// <summary>A face's number to the base of three says of each adjuster: free, at its least, at its greatest.</summary>
    private readonly void SolveOn(int face, bool onArch, Span<double> x)
    {
        Span<int> free = stackalloc int[Rooms.Length];
        var freeCount = 0;
        for (var i = 0; i < Rooms.Length; i++, face /= 3)
        {
            switch (face % 3)
            {
                case 0: x[i] = Origin[i]; free[freeCount++] = i; break;
                case 1: x[i] = Rooms[i].Minimum; break;
                default: x[i] = Rooms[i].Maximum; break;
            }
        }

        if (freeCount == 0) return;
        var equations = Wanted.Length + (onArch ? 1 : 0);
        Span<double> rows = stackalloc double[equations * freeCount];
        Span<double> right = stackalloc double[equations];
        for (var row = 0; row < equations; row++)
        {
            var isArch = row == Wanted.Length;
            var slopes = isArch ? ArchSlopes : Slopes.Slice(row * Rooms.Length, Rooms.Length);
            var weight = isArch ? ArchWeight : 1;
            right[row] = weight * ((isArch ? ArchRoomMm : Wanted[row]) - Dot(slopes, x));
            for (var k = 0; k < freeCount; k++) rows[(row * freeCount) + k] = weight * slopes[free[k]] / Rooms[free[k]].Adjustment.WeightMm;
        }

        Span<double> solved = stackalloc double[freeCount];
        Numerics.MinimumNorm.Solve(rows, right, solved);
        for (var k = 0; k < freeCount; k++) x[free[k]] += solved[k] / Rooms[free[k]].Adjustment.WeightMm;
    }

    private readonly bool IsAllowed(ReadOnlySpan<double> x)
    {
        for (var i = 0; i < x.Length; i++)
        {
            if (!(x[i] >= Rooms[i].Minimum - InsideMm && x[i] <= Rooms[i].Maximum + InsideMm)) return false;
        }

        return ArchSlopes.IsEmpty || Dot(ArchSlopes, x) <= ArchRoomMm + SameErrorDeg;
    }

    private readonly double ErrorDeg(ReadOnlySpan<double> x)
    {
        var sum = 0.0;
        for (var row = 0; row < Wanted.Length; row++)
        {
            var error = Dot(Slopes.Slice(row * Rooms.Length, Rooms.Length), x) - Wanted[row];
            sum += error * error;
        }

        return Math.Sqrt(sum);
    }

    private readonly double Size(ReadOnlySpan<double> x)
    {
        var sum = 0.0;
        for (var i = 0; i < x.Length; i++)
        {
            var movement = (x[i] - Origin[i]) * Rooms[i].Adjustment.WeightMm;
            sum += movement * movement;
        }

        return sum;
    }

    private static double Dot(ReadOnlySpan<double> a, ReadOnlySpan<double> b)
    {
        var sum = 0.0;
        for (var i = 0; i < a.Length; i++) sum += a[i] * b[i];
        return sum;
    }
}
