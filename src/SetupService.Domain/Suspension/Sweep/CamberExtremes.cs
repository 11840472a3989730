using SetupService.Domain.Suspension.Kinematics;

namespace SetupService.Domain.Suspension.Sweep;

/// <summary>
/// The greatest change of camber against the body from the stated position to anywhere up to a wheel travel, the rack in the middle.
/// Both are sizes, in degrees.
/// </summary>
/// <param name="InboardDeg">Towards negative camber: top inboard.</param>
/// <param name="OutboardDeg">Towards positive camber: top outboard.</param>
public readonly record struct CamberExtremes(double InboardDeg, double OutboardDeg)
{
    // A turning point lies within half a step of a position looked at: camber that curves by 0.0005°/mm² (a strut or wishbone of usual
    // lengths: 0.0001 to 0.0004) turns 0.001° beyond it.
    private const double LongestStepMm = 4;

    /// <summary>
    /// Walks the corner from its stated position to <paramref name="travelMm"/>. False where it does not hold its wheel there, and
    /// <paramref name="reachedMm"/> is null, or where the way ends before, and it is the last travel reached, mm.
    /// </summary>
    public static bool TryFind(CornerMechanism corner, double travelMm, out CamberExtremes extremes, out double? reachedMm)
    {
        (extremes, reachedMm) = (default, null);
        if (!PoseContinuation.TryStart(corner, out var state)) return false;
        reachedMm = 0;
        var statedDeg = WheelKinematics.Wheel(corner, state).CamberDeg;
        var stepCount = Math.Ceiling(Math.Abs(travelMm) / LongestStepMm);
        for (var step = 1; step <= stepCount; step++)
        {
            if (!PoseContinuation.TryMove(corner, travelMm * step / stepCount, 0, ref state))
            {
                reachedMm = state.TravelMm;
                return false;
            }

            extremes = extremes.Widened(WheelKinematics.Wheel(corner, state).CamberDeg - statedDeg);
        }

        reachedMm = travelMm;
        return true;
    }

    /// <summary>The greater of two on each side.</summary>
    public CamberExtremes Or(in CamberExtremes other) =>
        new(Math.Max(InboardDeg, other.InboardDeg), Math.Max(OutboardDeg, other.OutboardDeg));

    private CamberExtremes Widened(double changeDeg) => new(Math.Max(InboardDeg, -changeDeg), Math.Max(OutboardDeg, changeDeg));
}
