using System.Runtime.CompilerServices;
using System.Runtime.Intrinsics;

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
    private const double UsualPeakDeg = 14;
    private const int MostSteps = 60;

    /// <summary>The usual last step of both searches, degrees: they go by the curve's slope and bend, so that it leaves some 1e-8 N.</summary>
    public const double LastStepDeg = 1e-3;

    /// <summary>A last step, degrees, that leaves some 1e-3 N of a force and of a peak: enough where no fine difference is taken of what follows.</summary>
    public const double RoughStepDeg = 0.12;

    /// <summary>Side force of both, N, at a common slip angle, degrees, and its change per degree.</summary>
    public double ForceN(double slipDeg, out double slopeNPerDeg) => ForceN(slipDeg, out slopeNPerDeg, out _);

    /// <summary>Side force of both, N, at a common slip angle, degrees, its change per degree, and the change of that per degree.</summary>
    public double ForceN(double slipDeg, out double slopeNPerDeg, out double bendNPerDeg2)
    {
        var forces = ForcesN(slipDeg, out var slopes, out var bends);
        (slopeNPerDeg, bendNPerDeg2) = (Vector128.Sum(slopes), Vector128.Sum(bends));
        return Vector128.Sum(forces);
    }

    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    private Vector128<double> ForcesN(double slipDeg, out Vector128<double> slopesNPerDeg, out Vector128<double> bendsNPerDeg2) =>
        SideForceCurve.ForcesN(Outer, Inner, Vector128.Create(slipDeg + OuterTurnDeg, slipDeg + InnerTurnDeg), out slopesNPerDeg, out bendsNPerDeg2);

    /// <summary>The common slip angle up to the peak that gives a force, N, sought from a guess, degrees; null where none does.</summary>
    /// <param name="forceN">The force.</param>
    /// <param name="guessDeg">The guess.</param>
    /// <param name="lastStepDeg">The step that is the last, degrees.</param>
    public PairSlip? SlipFor(double forceN, double guessDeg, double lastStepDeg = LastStepDeg) => Newton(forceN, guessDeg, lastStepDeg) ?? Halve(forceN, guessDeg);

    // Tyres turned far apart fight each other, and their sum is flat where it meets a small force: there is no rising side to be found by its slope.
    private PairSlip? Halve(double forceN, double guessDeg)
    {
        var (low, high) = (-FurthestDeg, Math.Clamp(guessDeg, 0, UsualPeakDeg));
        if (PeakN(ref high) < forceN || ForceN(low, out _) > forceN) return null;
        for (var step = 0; step < MostSteps; step++)
        {
            var middle = (low + high) / 2;
            if (ForceN(middle, out _) < forceN) low = middle;
            else high = middle;
        }

        var outer = Outer.ForceN(high + OuterTurnDeg);
        return new(high, outer, forceN - outer);
    }

    private PairSlip? Newton(double forceN, double guessDeg, double lastStepDeg)
    {
        var slip = guessDeg;
        var tolerance = 1e-11 * (Math.Abs(forceN) + 1);
        for (var step = 0; step < MostSteps; step++)
        {
            var forces = ForcesN(slip, out var slopes, out var bends);
            var missing = forceN - Vector128.Sum(forces);
            var slope = Vector128.Sum(slopes);
            if (Math.Abs(missing) <= tolerance && slope > 0) return new(slip, forces.GetElement(0), forces.GetElement(1));

            // Along the parabola that touches here, along the tangent where that does not reach so far; past the peak the way back to the
            // rising side leads down.
            var square = (slope * slope) + (2 * Vector128.Sum(bends) * missing);
            var onward = 2 * missing / (slope + (square > 0 ? Math.Sqrt(square) : slope));
            var change = slope > 0 ? Math.Clamp(onward, -LongestStepDeg, LongestStepDeg) : -LongestStepDeg;
            slip += change;
            if (slope > 0 && Math.Abs(change) < lastStepDeg)
            {
                var moved = forces + ((slopes + (bends * (change / 2))) * change);
                return new(slip, moved.GetElement(0), moved.GetElement(1));
            }

            if (Math.Abs(slip) > FurthestDeg) return null;
        }

        return null;
    }

    /// <summary>The same tyres with their peak scaled.</summary>
    public TyrePair WithPeak(double factor) => this with { Outer = Outer.WithPeak(factor), Inner = Inner.WithPeak(factor) };

    /// <summary>The most both give together at one common slip angle, N.</summary>
    /// <param name="slipDeg">That angle, degrees: a guess first, then what was found.</param>
    /// <param name="enoughN">So much is enough: it is not asked how much more they give.</param>
    /// <param name="lastStepDeg">The step that is the last, degrees.</param>
    public double PeakN(ref double slipDeg, double enoughN = double.PositiveInfinity, double lastStepDeg = LastStepDeg)
    {
        // A guess from an attitude far off may lie where nothing leads back.
        if (!(Math.Abs(slipDeg) < FurthestDeg)) slipDeg = UsualPeakDeg;

        // Newton's method for the slope's zero; where the curve is not bent down the way up it leads towards that. A step over a peak that was passed already is halved back to it.
        var (rising, falling) = (double.NegativeInfinity, double.PositiveInfinity);
        for (var step = 0; step < MostSteps && Math.Abs(slipDeg) < FurthestDeg; step++)
        {
            var force = ForceN(slipDeg, out var slope, out var bend);
            if (slope == 0 || force >= enoughN) return force;
            var change = bend < 0 ? Math.Clamp(-slope / bend, -LongestStepDeg, LongestStepDeg) : Math.CopySign(LongestStepDeg, slope);
            if (slope > 0) rising = slipDeg;
            else falling = slipDeg;
            var next = slipDeg + change;
            if (double.IsFinite(falling - rising) && rising < falling && !(next >= rising && next <= falling)) change = ((rising + falling) / 2) - slipDeg;
            slipDeg += change;
            if (Math.Abs(change) < lastStepDeg) return force + (slope * change / 2);
        }

        return ForceN(slipDeg, out _);
    }
}

/// <summary>How the two tyres of an axle share a side force.</summary>
/// <param name="SlipDeg">Their common slip angle, degrees.</param>
/// <param name="OuterN">Side force of the outer tyre, N.</param>
/// <param name="InnerN">Side force of the inner tyre, N.</param>
public readonly record struct PairSlip(double SlipDeg, double OuterN, double InnerN);
