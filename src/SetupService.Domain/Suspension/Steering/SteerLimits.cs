namespace SetupService.Domain.Suspension.Steering;

/// <summary>How far to either side a left wheel can head about its axis before its heading turns back.</summary>
/// <param name="RightDeg">The end to the right, degrees of steer, positive = left.</param>
/// <param name="LeftDeg">The end to the left, degrees of steer, positive = left.</param>
public readonly record struct SteerLimits(double RightDeg, double LeftDeg)
{
    /// <summary>
    /// The limits; null where the wheel can head everywhere. Turning, the spin axis keeps its angle to the steering axis: it moves
    /// on a cone, and where no vertical stands inside the cone the cone covers only part of the horizon.
    /// </summary>
    public static SteerLimits? Find(in SteeredWheel wheel)
    {
        var axis = SteeringAxis.DirectionOf(wheel.CasterDeg, wheel.SteeringAxisInclinationDeg);
        var along = WheelPlane.SpinOf(wheel.CamberDeg, wheel.ToeDeg).Dot(axis);
        var sinCone = Math.Sqrt(Math.Max(0, 1 - (along * along)));
        var sinLean = Math.Sqrt((axis.X * axis.X) + (axis.Y * axis.Y));
        if (!(sinCone < sinLean)) return null;

        // Halfway between its ends the spin axis lies in the steering axis' own vertical plane, on the side it leans to.
        var towards = Math.CopySign(1, along) * axis;
        var middleDeg = new WheelPlane(default, towards).SteerDeg;
        var halfDeg = double.RadiansToDegrees(Math.Asin(sinCone / sinLean));
        return new(middleDeg - halfDeg, middleDeg + halfDeg);
    }

    /// <summary>The limits of the wheel on a side that is stated alike.</summary>
    public SteerLimits For(WheelSide side) => side == WheelSide.Left ? this : new(-LeftDeg, -RightDeg);
}
