using SetupService.Domain.Suspension.Kinematics;
using SetupService.Domain.Suspension.Sweep;

namespace SetupService.Benchmarks.Geometry;

/// <summary>A corner swept over 61 positions from −60 to 60 mm, as its peers sweep it: from the stated position outward, both ways.</summary>
internal sealed class SweptCorner
{
    public const int Positions = 61;

    private const int Half = 30;
    private const double StepMm = 2;

    private readonly CornerMechanism _corner;
    private readonly SuspensionPose _stated;
    private readonly AxleInputs _axle = new() { IsFront = true, WheelbaseMm = 2570, CentreOfGravityHeightMm = 505, BrakeShareFrontPct = 66, MeasuringDiameterMm = 400 };

    public SweptCorner(string name)
    {
        _corner = MechanismBuilder.Build(BenchmarkCorners.Named(name));
        if (!PoseContinuation.TryStart(_corner, out _stated)) throw new InvalidOperationException("The corner does not close.");
    }

    /// <summary>Camber at the outermost droop and bump, degrees, to be held against the peers'.</summary>
    public (double DroopDeg, double BumpDeg) Ends => (CamberAt(-Half * StepMm), CamberAt(Half * StepMm));

    /// <summary>Solve, camber and toe at each position.</summary>
    public double Angles()
    {
        var sum = 0.0;
        for (var side = 1; side >= -1; side -= 2)
        {
            var state = _stated;
            for (var i = side > 0 ? 0 : 1; i <= Half; i++)
            {
                Move(side * i * StepMm, 0, ref state);
                var wheel = WheelKinematics.Wheel(_corner, state);
                sum += wheel.CamberDeg + wheel.ToeDeg;
            }
        }

        return sum;
    }

    /// <summary>Solve and every figure of a row at each position: the wheel's, the axle's in braking and driving, both wheels' steer.</summary>
    public double Figures()
    {
        var sum = 0.0;
        for (var side = 1; side >= -1; side -= 2)
        {
            var state = _stated;
            for (var i = side > 0 ? 0 : 1; i <= Half; i++)
            {
                Move(side * i * StepMm, 0, ref state);
                var wheel = WheelKinematics.Compute(_corner, state);
                sum += wheel.CamberDeg + (AntiFigures.Compute(wheel.ContactForwardSlope, wheel.CentreForwardSlope, _axle).AntiDivePct ?? 0) + SteeringPair.Compute((wheel.ToeDeg, wheel.ContactForwardMm), (wheel.ToeDeg, wheel.ContactForwardMm), 1500, 2570).OtherSteerDeg;
            }
        }

        return sum;
    }

    /// <summary>The same at 61 positions of the rack, where the other wheel is solved too.</summary>
    public double Steered()
    {
        var sum = 0.0;
        for (var side = 1; side >= -1; side -= 2)
        {
            var (left, right) = (_stated, _stated);
            for (var i = side > 0 ? 0 : 1; i <= Half; i++)
            {
                Move(0, side * i, ref left);
                Move(0, -side * i, ref right);
                var wheel = WheelKinematics.Compute(_corner, left);
                var other = WheelKinematics.Compute(_corner, right);
                sum += wheel.CamberDeg + (AntiFigures.Compute(wheel.ContactForwardSlope, wheel.CentreForwardSlope, _axle).AntiDivePct ?? 0) + SteeringPair.Compute((wheel.ToeDeg, wheel.ContactForwardMm), (other.ToeDeg, other.ContactForwardMm), 1500, 2570).OtherSteerDeg;
            }
        }

        return sum;
    }

    private void Move(double travelMm, double rackMm, ref SuspensionPose state)
    {
        if (!PoseContinuation.TryMove(_corner, travelMm, rackMm, ref state)) throw new InvalidOperationException("The sweep does not close.");
    }

    private double CamberAt(double travelMm)
    {
        var state = _stated;
        Move(travelMm, 0, ref state);
        return WheelKinematics.Wheel(_corner, state).CamberDeg;
    }
}
