using SetupService.Domain.Numerics;

namespace SetupService.Domain.Suspension.Steering;

/// <summary>
/// Camber of a left wheel over steer, by exact rotation about an axis that stands still in the body. Prepared once; a row costs
/// no memory. Derivation in docs/methods/steer-sweep.md.
/// </summary>
public readonly struct SteerSweep
{
    private readonly SteeredWheel _wheel;
    private readonly Vector3 _axis;
    private readonly TurningVector _spin;
    private readonly TurningVector _centre;
    private readonly double _contactHeightMm;

    private SteerSweep(in SteeredWheel wheel)
    {
        _wheel = wheel;
        _axis = SteeringAxis.DirectionOf(wheel.CasterDeg, wheel.SteeringAxisInclinationDeg);
        _spin = TurningVector.About(_axis, WheelPlane.SpinOf(wheel.CamberDeg, wheel.ToeDeg));

        // The origin is where the axis passes the height of the wheel centre.
        _centre = TurningVector.About(_axis, new(-wheel.WheelCentreTrailMm ?? 0, wheel.SpindleOffsetMm ?? 0, 0));
        _contactHeightMm = wheel.LoadedRadiusMm is { } radiusMm ? TurnedTo(0, 1).Contact(radiusMm).Z : 0;
    }

    /// <summary>Prepares a sweep.</summary>
    public static SteerSweep Create(in SteeredWheel wheel) => new(wheel);

    /// <summary>
    /// The wheel at a heading, degrees, positive = left, −180 to 180; null where no turn about this axis heads it there, which
    /// happens only about an axis that leans by some 35° or more.
    /// </summary>
    public SteerRow? At(double steerDeg)
    {
        var (sinSteer, cosSteer) = Math.SinCos(double.DegreesToRadians(steerDeg));
        if (RotationTo(sinSteer, cosSteer) is not { } rotation) return null;

        var (sin, cos) = Math.SinCos(rotation);
        var wheel = TurnedTo(sin, cos);

        // The equation also holds for a wheel that heads the other way.
        if ((cosSteer * wheel.Spin.Y) - (sinSteer * wheel.Spin.X) <= 0) return null;

        var row = new SteerRow
        {
            SteerDeg = steerDeg,
            RotationDeg = double.RadiansToDegrees(rotation),
            CamberDeg = wheel.CamberDeg,
            CamberChangeDeg = wheel.CamberDeg - _wheel.CamberDeg,
            CamberApproximationDeg = _wheel.CamberDeg + (_wheel.CasterDeg * sinSteer) + (_wheel.SteeringAxisInclinationDeg * (1 - cosSteer)),
        };
        return _wheel is { LoadedRadiusMm: { } radiusMm, SpindleOffsetMm: not null, WheelCentreTrailMm: not null }
            ? OnTheGround(row, wheel, radiusMm)
            : row;
    }

    /// <summary>
    /// The same for the wheel of either side that is stated alike: a right wheel is the left one's mirror, which steers and turns
    /// the other way.
    /// </summary>
    public SteerRow? At(double steerDeg, WheelSide side)
    {
        if (side == WheelSide.Left) return At(steerDeg);

        // Taken from 0, so that straight ahead stays 0 and does not become −0.
        return At(0 - steerDeg) is { } mirror ? mirror with { SteerDeg = steerDeg, RotationDeg = 0 - mirror.RotationDeg } : null;
    }

    private WheelPlane TurnedTo(double sin, double cos) => new(_centre.At(sin, cos), _spin.At(sin, cos));

    private SteerRow OnTheGround(in SteerRow row, in WheelPlane wheel, double radiusMm)
    {
        var contact = wheel.Contact(radiusMm);
        var (scrubRadiusMm, mechanicalTrailMm) = new SteeringAxis(default, _axis).Offsets(wheel, contact);
        return row with
        {
            ScrubRadiusMm = scrubRadiusMm,
            MechanicalTrailMm = mechanicalTrailMm,
            ContactHeightChangeMm = contact.Z - _contactHeightMm,
        };
    }

    /// <summary>
    /// The turn, radians, that leaves the spin axis nothing along the heading: of the two in a full turn the one that is reached
    /// from the stated position without turning back on the way.
    /// </summary>
    private double? RotationTo(double sinSteer, double cosSteer)
    {
        var heading = new Vector3(cosSteer, sinSteer, 0);
        var sinPart = -_spin.Ahead.Dot(heading);
        var cosPart = -_spin.Across.Dot(heading);
        var wanted = _spin.Along.Dot(heading);
        var reach = Math.Sqrt((sinPart * sinPart) + (cosPart * cosPart));

        // Written so that what is not a number is not reached either.
        if (!(Math.Abs(wanted) < reach)) return null;
        return Math.IEEERemainder(Math.Asin(wanted / reach) - Math.Atan2(cosPart, sinPart), 2 * Math.PI);
    }
}
