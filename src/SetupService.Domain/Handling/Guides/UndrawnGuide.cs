using SetupService.Domain.Handling.Cars;
using SetupService.Domain.Suspension.Kinematics;
using SetupService.Domain.Suspension.Readings;
using SetupService.Domain.Suspension.Steering;

namespace SetupService.Domain.Handling.Guides;

/// <summary>
/// A wheel whose suspension is not drawn: camber and toe over travel by readings, else camber about a front-view swing arm; steered
/// by exact rotation about the stated axis; roll centre and motion ratios as stated, the roll centre going with the body
/// where its ride height is changed.
/// </summary>
internal sealed class UndrawnGuide(HandlingAxle axle, bool steers, WheelSide side) : WheelGuide
{
    private readonly double _restMm = -axle.RideHeightChangeMm;
    private readonly double _camberDeg = side == WheelSide.Left ? axle.LeftCamberDeg : axle.RightCamberDeg;
    private readonly double _toeDeg = side == WheelSide.Left ? axle.LeftToeDeg : axle.RightToeDeg;
    private readonly double _casterDeg = (side == WheelSide.Left ? axle.LeftCasterDeg : axle.RightCasterDeg) + axle.AddedCasterDeg;
    private readonly double _camberShiftDeg = Shift(axle.Measured?.CamberAt(0), side == WheelSide.Left ? axle.LeftCamberDeg : axle.RightCamberDeg);
    private readonly double _toeShiftDeg = Shift(axle.Measured?.ToeAt(0), side == WheelSide.Left ? axle.LeftToeDeg : axle.RightToeDeg);
    private readonly double _slope = 2 * (axle.RollCentreHeightMm + axle.RideHeightChangeMm) / axle.TrackMm;

    /// <inheritdoc />
    public override SuspensionPose Origin => default;

    /// <inheritdoc />
    public override bool TryAt(double travelMm, double steer, ref SuspensionPose state, out GuidedWheel wheel)
    {
        wheel = default;
        if (CamberAt(_restMm + travelMm) is not { } camberDeg) return false;
        if (steers && steer != 0)
        {
            if (SteerSweep.Of(new SteeredWheel { CasterDeg = _casterDeg, InclinationDeg = axle.InclinationDeg, CamberDeg = camberDeg, ToeDeg = 0 })
                .At(steer) is not { } turned) return false;
            camberDeg = turned.CamberDeg;
        }

        wheel = new GuidedWheel
        {
            CamberDeg = camberDeg,
            CamberPerTravel = axle.Measured is null ? -double.RadiansToDegrees(1 / axle.SwingArmMm) : 0,

            // As of an upright wheel straight ahead.
            CamberPerSteer = steers ? Math.Tan(double.DegreesToRadians(_casterDeg)) : 0,
            HeadingDeg = (steers ? steer : 0) - ToeAt(_restMm + travelMm),
            HeadingPerTravel = 0,
            HeadingPerSteer = steers ? 1 : 0,
            RisePerSteer = 0,
            OutboardPerSteer = 0,
            SpringTravelPerSteer = 0,
            ContactRiseMm = travelMm,
            HalfTrackMm = axle.TrackMm / 2,
            OutboardSlope = _slope,
            RisePerTravel = 1,
            SpringMotionRatio = axle.MotionRatio,
            SpringTravelMm = axle.MotionRatio * travelMm,
            DamperMotionRatio = axle.DamperMotionRatio,
            HoldsInRoll = true,
        };
        return true;
    }

    private static double Shift(TravelAngle? atRest, double statedDeg) => atRest is { } read ? statedDeg - read.AngleDeg.Value : 0;

    private double? CamberAt(double travelMm) => axle.Measured is { } measured
        ? measured.CamberAt(travelMm)?.AngleDeg.Value + _camberShiftDeg
        : _camberDeg - double.RadiansToDegrees(travelMm / axle.SwingArmMm);

    // Where toe was read at fewer heights than camber, it stays as set beyond them.
    private double ToeAt(double travelMm) => axle.Measured?.ToeAt(travelMm) is { } read ? read.AngleDeg.Value + _toeShiftDeg : _toeDeg;
}
