using SetupService.Domain.Suspension.Kinematics;

namespace SetupService.Domain.Suspension.Sweep;

/// <summary>How far a wheel can move from its stated position.</summary>
public static class ReachableTravel
{
    /// <summary>Looked no further, mm.</summary>
    public const double FurthestMm = 500;

    /// <summary>
    /// The ends of the travel, mm, the rack in the middle: within 0.05 mm of where the parts reach their dead point, and at most
    /// <see cref="FurthestMm"/> either way. Both 0 where the corner does not close at all.
    /// </summary>
    public static (double FromMm, double ToMm) Find(CornerMechanism corner)
    {
        if (!PoseContinuation.TryStart(corner, out var stated)) return (0, 0);
        return (End(corner, stated, -FurthestMm), End(corner, stated, FurthestMm));
    }

    private static double End(CornerMechanism corner, SuspensionPose state, double travelMm)
    {
        PoseContinuation.TryMove(corner, travelMm, 0, ref state);
        return state.TravelMm;
    }
}
