namespace SetupService.Domain.Handling.Tyres;

/// <summary>The two tyres of an axle, each turned a little against the axle's common slip angle.</summary>
/// <param name="Outer">The outer tyre.</param>
/// <param name="Inner">The inner tyre.</param>
/// <param name="OuterTurnDeg">Slip of the outer tyre beyond the common one, degrees.</param>
/// <param name="InnerTurnDeg">Slip of the inner tyre beyond the common one, degrees.</param>
public readonly record struct TyrePair(SideForceCurve Outer, SideForceCurve Inner, double OuterTurnDeg, double InnerTurnDeg)
{
    private const double LongestStepDeg = 2;
    private const double FurthestDeg = 60;
    private const double CoarseDeg = 1.5;
    private const int MostSteps = 60;
    private const double Golden = 0.6180339887498949;

    /// <summary>Side force of both, N, at a common slip angle, degrees.</summary>
    public double ForceN(double slipDeg, out double slopeNPerDeg)
    {
        var force = Outer.ForceN(slipDeg + OuterTurnDeg, out var outerSlope) + Inner.ForceN(slipDeg + InnerTurnDeg, out var innerSlope);
        slopeNPerDeg = outerSlope + innerSlope;
        return force;
    }

    /// <summary>The common slip angle, degrees, on the rising side of the curve that gives a force, N, sought from a guess; null where none does.</summary>
    public double? SlipFor(double forceN, double guessDeg)
    {
        var slip = guessDeg;
        var tolerance = 1e-12 * (Math.Abs(forceN) + 1);
        for (var step = 0; step < MostSteps; step++)
        {
            var missing = forceN - ForceN(slip, out var slope);
            if (Math.Abs(missing) <= tolerance && slope > 0) return slip;

            // Past the peak the way back to the rising side leads down.
            var change = slope > 0 ? Math.Clamp(missing / slope, -LongestStepDeg, LongestStepDeg) : -LongestStepDeg;
            if (slope > 0 && Math.Abs(change) < 1e-13 * (1 + Math.Abs(slip))) return slip;
            slip += change;
            if (Math.Abs(slip) > FurthestDeg) return null;
        }

        return null;
    }

    /// <summary>The most both give together at one common slip angle, N.</summary>
    public double PeakN()
    {
        var (bestDeg, bestN) = (0.0, double.NegativeInfinity);
        for (var slip = 0.0; slip <= FurthestDeg; slip += CoarseDeg)
        {
            var force = ForceN(slip, out _);
            if (force <= bestN) break;
            (bestDeg, bestN) = (slip, force);
        }

        var (from, to) = (bestDeg - CoarseDeg, bestDeg + CoarseDeg);
        var (lower, upper) = (to - (Golden * (to - from)), from + (Golden * (to - from)));
        var (atLower, atUpper) = (ForceN(lower, out _), ForceN(upper, out _));
        while (to - from > 1e-5)
        {
            if (atLower < atUpper)
            {
                (from, lower, atLower) = (lower, upper, atUpper);
                upper = from + (Golden * (to - from));
                atUpper = ForceN(upper, out _);
            }
            else
            {
                (to, upper, atUpper) = (upper, lower, atLower);
                lower = to - (Golden * (to - from));
                atLower = ForceN(lower, out _);
            }
        }

        return Math.Max(atLower, atUpper);
    }
}
