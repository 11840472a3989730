using SetupService.Domain.Suspension;
using SetupService.Domain.Suspension.Sweep;
using SetupService.Domain.Vehicles;

namespace SetupService.Domain.Geometry.Alignment;

/// <summary>The angles of an axle as the car stands: as stated, and where the body stands higher or lower than there, moved with the suspension.</summary>
public static class AnglesAtRide
{
    /// <summary>Why they are not known, as a clause with what to do.</summary>
    public const string NotKnown =
        "how the angles change with ride height needs the suspension's points, or readings that reach this height; measure the angles as the car stands and leave rideHeightChangeMm out.";

    /// <summary>The angles of both wheels, degrees; null where the suspension does not tell them at the present ride height.</summary>
    /// <param name="axle">The axle.</param>
    /// <param name="isRightMeasured">False where camber or inclination of the right wheel stands in for one that was not measured.</param>
    public static AxleAngles? Compute(Axle axle, bool isRightMeasured)
    {
        ArgumentNullException.ThrowIfNull(axle);
        return Angles(axle, axle.Left) is { } left && Angles(axle, axle.Right) is { } right ? new(left, right, isRightMeasured) : null;
    }

    /// <summary>How far an angle lies outside a range, degrees: negative = below it, 0 = inside; null where the angle is not known.</summary>
    public static double? OutsideBy(double? angleDeg, double fromDeg, double toDeg) => angleDeg - Math.Clamp(angleDeg ?? fromDeg, fromDeg, toDeg);

    private static WheelAngles? Angles(Axle axle, WheelAlignment stated)
    {
        var change = default(WheelAngles);
        var isMoved = axle.RideHeightChangeMm is not (null or 0);
        if (isMoved)
        {
            if (Change(axle, stated) is not { } known) return null;
            change = known;
        }

        return new()
        {
            CamberDeg = isMoved ? stated.CamberDeg + change.CamberDeg : stated.CamberDeg,
            CasterDeg = isMoved ? stated.CasterDeg + change.CasterDeg : stated.CasterDeg,
            ToeDeg = isMoved ? stated.ToeDeg + change.ToeDeg : stated.ToeDeg,
            SteeringAxisInclinationDeg = isMoved ? stated.SteeringAxisInclinationDeg + change.SteeringAxisInclinationDeg : stated.SteeringAxisInclinationDeg,
        };
    }

    /// <summary>By how much the angles at the present ride height differ from those stated; null where that is not known.</summary>
    private static WheelAngles? Change(Axle axle, WheelAlignment stated)
    {
        var setup = new WheelSetup { CamberDeg = stated.CamberDeg, ToeDeg = stated.ToeDeg, RideHeightChangeMm = axle.RideHeightChangeMm ?? 0 };
        if (SuspensionTracker.Start(axle.Suspension, setup with { RideHeightChangeMm = 0 })?.AtRide is not { } there) return null;
        if (SuspensionTracker.Start(axle.Suspension, setup)?.AtRide is not { } here) return null;
        return new WheelAngles
        {
            CamberDeg = here.CamberDeg - there.CamberDeg,
            CasterDeg = here.CasterDeg - there.CasterDeg,
            ToeDeg = here.ToeDeg - there.ToeDeg,
            SteeringAxisInclinationDeg = here.SteeringAxisInclinationDeg - there.SteeringAxisInclinationDeg,
        };
    }
}
