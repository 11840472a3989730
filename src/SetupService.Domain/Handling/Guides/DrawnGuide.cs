using SetupService.Domain.Geometry;
using SetupService.Domain.Geometry.Mechanism;
using SetupService.Domain.Geometry.Motion;
using SetupService.Domain.Geometry.Steering;
using SetupService.Domain.Geometry.Suspensions;
using SetupService.Domain.Handling.Cars;

namespace SetupService.Domain.Handling.Guides;

/// <summary>A wheel guided by the points of its suspension, exactly.</summary>
internal sealed class DrawnGuide : WheelGuide
{
    private readonly CornerMechanism _corner;
    private readonly double _restMm;
    private readonly double _motionRatio;
    private readonly double _damperMotionRatio;
    private readonly double _addedCasterDeg;
    private readonly CornerState _origin;
    private readonly double _restHeightMm;
    private readonly double _restSpringMm;

    private DrawnGuide(CornerMechanism corner, HandlingAxle axle, CornerState origin, in WheelFigures rest)
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
    public override CornerState Origin => _origin;

    /// <summary>Makes the guide; null where the points do not close at ride height.</summary>
    public static DrawnGuide? Of(HandlingAxle axle, WheelSide side)
    {
        var isLeft = side == WheelSide.Left;
        var corner = MechanismMaker.Of(new CornerSetting
        {
            Suspension = axle.Points!,
            CamberDeg = isLeft ? axle.LeftCamberDeg : axle.RightCamberDeg,
            ToeDeg = isLeft ? axle.LeftToeDeg : axle.RightToeDeg,
            LoadedRadiusMm = axle.LoadedRadiusMm,
            Motion = AxleMotion.Opposite,
        });
        if (!CornerWalk.TryStart(corner, out var state)) return null;
        return axle.RideHeightChangeMm == 0 || CornerWalk.TryMove(corner, -axle.RideHeightChangeMm, 0, ref state)
            ? new DrawnGuide(corner, axle, state, WheelFiguresMaker.Of(corner, state))
            : null;
    }

    /// <inheritdoc />
    public override bool TryAt(double travelMm, double steer, ref CornerState state, out GuidedWheel wheel)
    {
        var rackMm = _corner.HasRack ? steer : 0;
        if (!CornerWalk.TryMove(_corner, _restMm + travelMm, rackMm, ref state))
        {
            wheel = default;
            return false;
        }

        var figures = WheelFiguresMaker.Of(_corner, state);
        var spin = WheelFiguresMaker.Wheel(_corner, state).Spin;
        var turn = state.PerRack.Of(spin);
        var isSprung = figures.SpringMotionRatio is not null;
        wheel = new GuidedWheel
        {
            CamberDeg = figures.CamberDeg + AddedCasterCamberDeg(figures),
            CamberPerTravel = figures.CamberGainDegPerMm,
            HeadingDeg = _corner.HasRack ? figures.SteerDeg : figures.SteerDeg + steer,
            HeadingPerSteer = _corner.HasRack ? -double.RadiansToDegrees(((spin.Y * turn.X) - (spin.X * turn.Y)) / ((spin.X * spin.X) + (spin.Y * spin.Y))) : 1,
            ContactRiseMm = figures.ContactHeightMm - _restHeightMm,
            HalfTrackMm = figures.HalfTrackMm,
            OutboardSlope = figures.ContactOutboardSlope ?? 0,
            RisePerTravel = figures.ContactRise,
            SpringMotionRatio = isSprung ? figures.SpringMotionRatio!.Value : _motionRatio,
            SpringTravelMm = isSprung ? _restSpringMm - figures.SpringLengthMm!.Value : _motionRatio * travelMm,
            DamperMotionRatio = figures.DamperMotionRatio ?? _damperMotionRatio,
            HoldsInRoll = false,
        };
        return true;
    }

    /// <summary>What a steering axis with more caster would add at the same heading: exact rotation about both, the points left where they are.</summary>
    private double AddedCasterCamberDeg(in WheelFigures figures)
    {
        if (_addedCasterDeg == 0 || figures.CasterDeg is not { } casterDeg || figures.InclinationDeg is not { } inclinationDeg) return 0;
        var steerDeg = figures.SteerDeg + _corner.Setting.ToeDeg;
        return Turned(casterDeg + _addedCasterDeg) - Turned(casterDeg);

        double Turned(double caster) => SteerSweep.Of(new SteeredWheel
        {
            CasterDeg = caster,
            InclinationDeg = inclinationDeg,
            CamberDeg = _corner.Setting.CamberDeg,
            ToeDeg = 0,
        }).At(steerDeg)?.CamberDeg ?? _corner.Setting.CamberDeg;
    }
}
