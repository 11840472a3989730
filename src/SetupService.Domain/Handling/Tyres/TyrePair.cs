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
    private const int MostSteps = 60;
    private const double AgreedDeg = 1e-9;

    // A guess from the turn before is mostly this near to the peak.
    private const double FirstStepDeg = 0.05;

    // So level that the force is the peak's to far below a millionth.
    private const double LevelNPerDeg = 1e-4;

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
        var tolerance = 1e-11 * (Math.Abs(forceN) + 1);
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
    /// <param name="slipDeg">That angle, degrees: a guess first, then what was found.</param>
    public double PeakN(ref double slipDeg)
    {
        // Where the force rises no more: the way up to a change of sign of the slope, then between.
        var (from, step) = (slipDeg, FirstStepDeg);
        ForceN(from, out var fromSlope);
        var direction = fromSlope > 0 ? 1 : -1;
        var (to, toSlope) = (from, fromSlope);
        while (toSlope * direction > 0 && Math.Abs(to) < FurthestDeg)
        {
            (from, fromSlope) = (to, toSlope);
            to += direction * step;
            step *= 4;
            ForceN(to, out toSlope);
        }

        for (var tries = 0; tries < MostSteps && Math.Abs(to - from) > AgreedDeg && toSlope != 0; tries++)
        {
            var middle = Math.Clamp(to - (toSlope * (to - from) / (toSlope - fromSlope)), Math.Min(from, to), Math.Max(from, to));
            ForceN(middle, out var slope);
            if (slope * toSlope > 0) fromSlope /= 2;
            else (from, fromSlope) = (to, toSlope);
            (to, toSlope) = (middle, slope);
            if (Math.Abs(slope) < LevelNPerDeg) break;
        }

        slipDeg = to;
        return ForceN(to, out _);
    }
}
