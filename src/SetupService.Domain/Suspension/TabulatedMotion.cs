using SetupService.Domain.Numerics;
using SetupService.Domain.Suspension.Kinematics;
using SetupService.Domain.Suspension.Readings;
using SetupService.Domain.Suspension.Steering;

namespace SetupService.Domain.Suspension;

/// <summary>
/// A wheel moved without points: camber and toe over travel by readings, else camber about a front-view swing arm; steered by exact rotation
/// about the stated axis; roll centre and motion ratios as stated, the roll centre going with the body where its ride height is changed.
/// </summary>
internal sealed class TabulatedMotion : WheelMotion
{
    private readonly WheelSetup _setup;
    private readonly MeasuredCorner? _corner;
    private readonly double _rideTravelMm;
    private readonly double _casterDeg;
    private readonly double _camberShiftDeg;
    private readonly double _toeShiftDeg;
    private readonly double _outboardSlope;

    /// <summary>Makes the motion.</summary>
    /// <param name="setup">How the wheel is set.</param>
    /// <param name="corner">The readings; null = about a swing arm.</param>
    public TabulatedMotion(WheelSetup setup, MeasuredCorner? corner)
    {
        (_setup, _corner) = (setup, corner);
        _rideTravelMm = -setup.RideHeightChangeMm;
        _casterDeg = setup.CasterDeg + setup.AddedCasterDeg;
        _camberShiftDeg = Shift(corner?.CamberDegAt(0), setup.CamberDeg);
        _toeShiftDeg = Shift(corner?.ToeDegAt(0), setup.ToeDeg);
        _outboardSlope = 2 * (setup.RollCentreHeightMm + setup.RideHeightChangeMm) / setup.TrackMm;
    }

    /// <inheritdoc />
    public override SuspensionPose Origin => default;

    /// <inheritdoc />
    public override bool TryAt(double travelMm, double steer, ref SuspensionPose pose, out WheelPose wheel, WorkBudget? budget = null)
    {
        wheel = default;
        if (budget is not null && !budget.TrySpend()) return false;
        var atMm = _rideTravelMm + travelMm;
        var readAtMm = _corner is null ? atMm : Math.Clamp(atMm, _corner.FirstMm - MeasuredSuspension.ExtensionMm, _corner.LastMm + MeasuredSuspension.ExtensionMm);
        if (CamberAt(readAtMm) is not { } camberDeg) return false;
        if (_setup.IsSteered && steer != 0)
        {
            if (SteerSweep.Create(new SteeredWheel { CasterDeg = _casterDeg, SteeringAxisInclinationDeg = _setup.SteeringAxisInclinationDeg, CamberDeg = camberDeg, ToeDeg = 0 })
                .At(steer) is not { } turned) return false;
            camberDeg = turned.CamberDeg;
        }

        wheel = new WheelPose
        {
            CamberDeg = camberDeg,
            CamberPerTravel = _corner is null ? -double.RadiansToDegrees(1 / _setup.SwingArmMm) : 0,

            // As of an upright wheel straight ahead.
            CamberPerSteer = _setup.IsSteered ? Math.Tan(double.DegreesToRadians(_casterDeg)) : 0,
            HeadingDeg = (_setup.IsSteered ? steer : 0) - ToeAt(readAtMm),
            HeadingPerTravel = 0,
            HeadingPerSteer = _setup.IsSteered ? 1 : 0,
            ContactForwardPerTravel = 0,
            CentreForwardPerTravel = 0,
            RisePerSteer = 0,
            OutboardPerSteer = 0,
            SpringTravelPerSteer = 0,
            ContactRiseMm = travelMm,
            HalfTrackMm = _setup.TrackMm / 2,
            OutboardSlope = _outboardSlope,
            RisePerTravel = 1,
            SpringMotionRatio = _setup.SpringMotionRatio,
            SpringTravelMm = _setup.SpringMotionRatio * travelMm,
            DamperMotionRatio = _setup.DamperMotionRatio,
            HoldsInRoll = true,
            IsBeyondReadings = readAtMm != atMm,
        };
        return true;
    }

    /// <inheritdoc />
    public override double? SpringRatioPerTravel(in SuspensionPose pose) => 0;

    private static double Shift(double? readDeg, double? statedDeg) => statedDeg - readDeg ?? 0;

    private double? CamberAt(double travelMm) => _corner is null
        ? (_setup.CamberDeg ?? 0) - double.RadiansToDegrees(travelMm / _setup.SwingArmMm)
        : _corner.CamberDegAt(travelMm) + _camberShiftDeg;

    // Where toe was read at fewer heights than camber, it stays as set beyond them.
    private double ToeAt(double travelMm) => _corner?.ToeDegAt(travelMm) is { } readDeg ? readDeg + _toeShiftDeg : _setup.ToeDeg ?? 0;
}
