using SetupService.Domain.Suspension.Kinematics;

namespace SetupService.Domain.Tests.Suspension.Corners;

/// <summary>Corners brought to a place from the stated position.</summary>
internal static class Walked
{
    /// <summary>The corner at a place that it is known to reach.</summary>
    public static SuspensionPose To(CornerMechanism corner, double travelMm, double rackMm)
    {
        Assert.True(PoseContinuation.TryStart(corner, out var state), "the stated position does not close");
        return Onward(corner, state, travelMm, rackMm);
    }

    /// <summary>The corner moved on from where it is to a place that it is known to reach.</summary>
    public static SuspensionPose Onward(CornerMechanism corner, SuspensionPose state, double travelMm, double rackMm)
    {
        Assert.True(PoseContinuation.TryMove(corner, travelMm, rackMm, ref state), $"travel {travelMm}, rack {rackMm} is not reached");
        return state;
    }

    /// <summary>Whether a corner reaches all that <see cref="PlausibleCorners"/> promises of it.</summary>
    public static bool ReachesItsPlaces(CornerSetting setting)
    {
        var corner = MechanismBuilder.Build(setting);
        if (!PoseContinuation.TryStart(corner, out var stated)) return false;
        foreach (var rackMm in corner.HasRack ? new[] { 0, PlausibleCorners.RackMm, -PlausibleCorners.RackMm } : [0])
        {
            foreach (var travelMm in new[] { PlausibleCorners.TravelMm, -PlausibleCorners.TravelMm })
            {
                var state = stated;
                if (!PoseContinuation.TryMove(corner, travelMm, rackMm, ref state)) return false;
            }
        }

        return true;
    }
}
