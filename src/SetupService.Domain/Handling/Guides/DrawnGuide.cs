using SetupService.Domain.Handling.Cars;
using SetupService.Domain.Suspension.Kinematics;
using SetupService.Domain.Suspension.Points;
using SetupService.Domain.Suspension.Steering;

namespace SetupService.Domain.Handling.Guides;

/// <summary>A wheel guided by the points of its suspension, exactly.</summary>
internal sealed class DrawnGuide : WheelGuide
{
    private readonly CornerMechanism _corner;
    private readonly double _restMm;
    private readonly double _motionRatio;
    private readonly double _damperMotionRatio;
    private readonly double _addedCasterDeg;
    private readonly SuspensionPose _origin;
    private readonly double _restHeightMm;
    private readonly double _restSpringMm;

    private DrawnGuide(CornerMechanism corner, HandlingAxle axle, SuspensionPose origin, in WheelFigures rest)
    {
        _corner = corner;
        _origin = origin;
        _restMm = -axle.RideHeightChangeMm;
        _motionRatio = axle.MotionRatio;
        _damperMotionRatio = axle.DamperMotionRatio;
        _addedCasterDeg = axle.AddedCasterDeg;
        _restHeightMm = rest.ContactHeightMm;
        _restSpringMm = rest.SpringLengthMm ?? 0;
    }

    /// <inheritdoc />
    public override SuspensionPose Origin => _origin;

    /// <summary>Makes the guide; null where the points do not close at ride height.</summary>
    public static DrawnGuide? Of(HandlingAxle axle, WheelSide side)
    {
        var isLeft = side == WheelSide.Left;
        var corner = MechanismBuilder.Build(new CornerSetting
        {
            Suspension = axle.Points!,
            CamberDeg = isLeft ? axle.LeftCamberDeg : axle.RightCamberDeg,
            ToeDeg = isLeft ? axle.LeftToeDeg : axle.RightToeDeg,
            LoadedRadiusMm = axle.LoadedRadiusMm,
            Motion = AxleMotion.Opposite,
        });
        if (!PoseContinuation.TryStart(corner, out var state)) return null;
        return axle.RideHeightChangeMm == 0 || PoseContinuation.TryMove(corner, -axle.RideHeightChangeMm, 0, ref state)
            ? new DrawnGuide(corner, axle, state, WheelKinematics.Compute(corner, state))
            : null;
    }

    /// <inheritdoc />
    public override bool TryAt(double travelMm, double steer, ref SuspensionPose state, out GuidedWheel wheel)
    {
        var rackMm = _corner.HasRack ? steer : 0;
        if (!PoseContinuation.TryMove(_corner, _restMm + travelMm, rackMm, ref state))
        {
            wheel = default;
            return false;
        }

        wheel = Read(state, travelMm, steer);
        return true;
    }

    // What WheelKinematics tells, without the figures that no equilibrium asks for.
    private GuidedWheel Read(in SuspensionPose state, double travelMm, double steer)
    {
        var turn = state.Pose.Turn.ToMatrix();
        var plane = new WheelPlane(state.Pose.Centre, turn.Apply(_corner.Stated.Spin));
        var contact = plane.Contact(_corner.Setting.LoadedRadiusMm);
        var byTravel = state.PerTravel.At(contact - plane.Centre);
        var spinByTravel = state.PerTravel.Of(plane.Spin);
        var spinBySteer = state.PerRack.Of(plane.Spin);
        var bySteer = state.PerRack.Velocity + plane.ContactChange(_corner.Setting.LoadedRadiusMm, spinBySteer);
        var spring = _corner.Spring?.At(state.Pose, turn, state.PerTravel);
        var damper = ReferenceEquals(_corner.Damper, _corner.Spring) ? spring : _corner.Damper?.At(state.Pose, turn, state.PerTravel);
        return new GuidedWheel
        {
            CamberDeg = plane.CamberDeg + AddedCasterCamberDeg(state, plane),
            CamberPerTravel = plane.CamberChangeDeg(spinByTravel),
            CamberPerSteer = plane.CamberChangeDeg(spinBySteer),
            HeadingDeg = _corner.HasRack ? plane.SteerDeg : plane.SteerDeg + steer,
            HeadingPerTravel = -plane.ToeChangeDeg(spinByTravel),
            HeadingPerSteer = _corner.HasRack ? -plane.ToeChangeDeg(spinBySteer) : 1,
            ContactRiseMm = contact.Z - _restHeightMm,
            HalfTrackMm = contact.Y,
            OutboardSlope = Math.Abs(byTravel.Z) > WheelKinematics.LeastRise ? byTravel.Y / byTravel.Z : 0,
            RisePerTravel = byTravel.Z,
            RisePerSteer = bySteer.Z,
            OutboardPerSteer = bySteer.Y,
            SpringMotionRatio = spring?.MotionRatio ?? _motionRatio,
            SpringTravelMm = spring is { } sprung ? _restSpringMm - sprung.LengthMm : _motionRatio * travelMm,
            SpringTravelPerSteer = _corner.HasRack && _corner.Spring is { } line ? line.At(state.Pose, turn, state.PerRack).MotionRatio : 0,
            DamperMotionRatio = damper?.MotionRatio ?? _damperMotionRatio,
            HoldsInRoll = false,
        };
    }

    /// <summary>What a steering axis with more caster would add at the same heading: exact rotation about both, the points left where they are.</summary>
    private double AddedCasterCamberDeg(in SuspensionPose state, in WheelPlane plane)
    {
        if (_addedCasterDeg == 0 || WheelKinematics.Axis(_corner, state) is not { } axis) return 0;
        var inclinationDeg = axis.InclinationDeg;
        var steerDeg = plane.SteerDeg + _corner.Setting.ToeDeg;
        return Turned(axis.CasterDeg + _addedCasterDeg) - Turned(axis.CasterDeg);

        double Turned(double caster) => SteerSweep.Of(new SteeredWheel
        {
            CasterDeg = caster,
            InclinationDeg = inclinationDeg,
            CamberDeg = _corner.Setting.CamberDeg,
            ToeDeg = 0,
        }).At(steerDeg)?.CamberDeg ?? _corner.Setting.CamberDeg;
    }
}
