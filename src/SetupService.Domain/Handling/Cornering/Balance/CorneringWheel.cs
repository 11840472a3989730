using System.Diagnostics.CodeAnalysis;
using System.Runtime.Intrinsics;
using SetupService.Domain.Handling.Cars;
using SetupService.Domain.Handling.Tyres;
using SetupService.Domain.Numerics;
using SetupService.Domain.Suspension;
using SetupService.Domain.Suspension.Kinematics;
using SetupService.Domain.Suspension.Steering;

namespace SetupService.Domain.Handling.Cornering.Balance;

/// <summary>State of one wheel during the iteration. Forces in N, lengths in mm; see docs/methods/cornering.</summary>
internal sealed partial class CorneringWheel
{
    private readonly WorkBudget? _budget;
    private HandlingAxle _axle;
    private WheelMotion _motion;
    private double _halfTrackMm;
    private double _springForceAtRestN;
    private AxleTyre _tyre;
    private SuspensionPose _state;
    private double _guidedAtMm;
    private double _guidedSteer;
    private double _ratioPerTravel;
    private double _riseBendPerMm;
    private double _slopePerTravel;
    private double _contactForwardBend;
    private double _centreForwardBend;
    private double _slopeByTravel;
    private double _groundRisePerSteer;
    private double _springForcePerTravelNPerMm;
    private double _inclinedByComplianceDeg;
    private bool _isPlaced;

    public CorneringWheel(HandlingAxle axle, in AxleTyre tyre, WheelMotion motion, WheelSide side, bool isOuter, WorkBudget? budget, CorneringWheel? like = null)
    {
        (IsOuter, Side, _budget) = (isOuter, side, budget);
        Sign = isOuter ? 1 : -1;
        Take(axle, tyre, motion, like);
    }

    /// <summary>Becomes the wheel of another axle, with its motion, standing as at rest.</summary>
    /// <param name="axle">The axle.</param>
    /// <param name="tyre">Its tyre.</param>
    /// <param name="motion">How its suspension moves the wheel.</param>
    /// <param name="like">A wheel that may have the same motion, so that its rest is known; null = none.</param>
    [MemberNotNull(nameof(_axle), nameof(_motion))]
    public void Take(HandlingAxle axle, in AxleTyre tyre, WheelMotion motion, CorneringWheel? like)
    {
        (_axle, _tyre, _motion) = (axle, tyre, motion);
        _halfTrackMm = axle.TrackMm / 2;
        StaticLoadN = Side == WheelSide.Left ? axle.LeftLoadN : axle.RightLoadN;
        CamberSetDeg = Side == WheelSide.Left ? axle.LeftCamberDeg : axle.RightCamberDeg;
        WeightN = axle.UnsprungMassKg * HandlingCar.StandardGravity;
        _state = motion.Origin;
        var rest = default(WheelPose);
        if (like is not null && ReferenceEquals(motion, like._motion)) rest = like.RestPose;
        else motion.TryAt(0, 0, ref _state, out rest);
        RestPose = Pose = rest;
        _isPlaced = false;
        _springForceAtRestN = (StaticLoadN - WeightN) * rest.RisePerTravel / rest.SpringMotionRatio;
    }

    public bool IsOuter { get; }

    /// <summary>How its suspension moves it.</summary>
    public WheelMotion Motion => _motion;

    public WheelSide Side { get; }

    /// <summary>+1 outer, −1 inner.</summary>
    public double Sign { get; }

    public double StaticLoadN { get; private set; }

    public double CamberSetDeg { get; private set; }

    /// <summary>Weight of the unsprung mass, N.</summary>
    public double WeightN { get; private set; }

    public WheelPose RestPose { get; private set; }

    public WheelPose Pose { get; private set; }

    public double TravelMm { get; set; }

    public double LoadN { get; private set; }

    /// <summary>Change of load per mm the contact rises, N/mm: the tyre's rate, 0 once it has left the road.</summary>
    public double TyreRateNPerMm { get; private set; }

    public double SideForceN { get; private set; }

    public double SlipDeg { get; private set; }

    public double InclinationAngleDeg { get; private set; }

    /// <summary>Tyre position in use: the present one, or the one predicted for a step.</summary>
    public TyrePose TyrePose { get; private set; }

    /// <summary>Rise of the contact per mm of travel, against the ground.</summary>
    public double Rise { get; private set; }

    /// <summary>Change of <see cref="Rise"/> per mm of travel.</summary>
    public double RiseBendByTravel { get; private set; }

    /// <summary>Change of <see cref="Rise"/> by the sine of roll.</summary>
    public double RiseBendByRoll { get; private set; }

    /// <summary>Movement of the contact outboard per mm of rise, against the ground.</summary>
    public double Slope { get; private set; }

    /// <summary>Rise of the contact by the sine of roll.</summary>
    public double RisePerRoll { get; private set; }

    /// <summary>Change of the links' share of the load by the sine of roll, N, to first order.</summary>
    public double LinkLoadPerRoll => Pose.HoldsInRoll ? 0 : (1 + (Slope * Slope)) * LinkForceN;

    /// <summary>Change of the links' share of the load per mm of travel, as the contact's path bends.</summary>
    public double LinkRateNPerMm => Sign * _slopeByTravel * LinkForceN;

    /// <summary>Force of spring and stops at the wheel, without the bar, and its change per mm.</summary>
    public double SpringN { get; private set; }

    public double SpringRateNPerMm { get; private set; }

    /// <summary>Force along the car, N; negative = braking.</summary>
    public double LongitudinalN { get; private set; }

    /// <summary>The most of it that the tyre holds at the position in use, N.</summary>
    public double LongitudinalHoldsN => PassengerTyre.LongitudinalPeakN(TyrePose.LoadN, _tyre);

    /// <summary>
    /// Part of the load that the links take of braking and driving, N: by the contact's way forward where the brake's torque is held by the upright, by the wheel centre's
    /// where the drive's is held by the body; the unsprung mass takes its own part at the wheel centre.
    /// </summary>
    public double ForwardLinkN => -ForwardWork(Pose.ContactForwardPerTravel, Pose.CentreForwardPerTravel) / Rise;

    /// <summary>Change of <see cref="ForwardLinkN"/> per mm of travel, as those ways bend.</summary>
    public double ForwardLinkRateNPerMm => -(ForwardWork(_contactForwardBend, _centreForwardBend) + (ForwardLinkN * RiseBendByTravel)) / Rise;

    private double ForwardWork(double byContact, double byCentre) => (LongitudinalN * (LongitudinalN < 0 ? byContact : byCentre)) - (UnsprungForwardN * byCentre);

    /// <summary>Force that accelerates the unsprung mass along the car, N.</summary>
    public double UnsprungForwardN { get; set; }

    /// <summary>Side force that the links transmit to the body, N.</summary>
    public double LinkForceN { get; private set; }

    public double CamberComplianceDeg => _axle.CamberComplianceDegPerKn * Sign * SideForceN / 1000;

    /// <summary>Compliance steer, degrees, positive = into the turn; the outer wheel toes out, the inner in.</summary>
    public double HeadingComplianceDeg => -_axle.ToeComplianceDegPerKn * SideForceN / 1000;

    /// <summary>Heading against the body, degrees, positive = into the turn, without compliance steer.</summary>
    public double HeadingDeg => -Sign * Pose.HeadingDeg;

    public void Reset()
    {
        _state = _motion.Origin;
        TravelMm = SideForceN = SlipDeg = _guidedAtMm = _guidedSteer = _ratioPerTravel = _riseBendPerMm = _slopePerTravel = _contactForwardBend = _centreForwardBend = LongitudinalN = 0;
        Pose = RestPose;
        _isPlaced = false;
    }

    public void StartFrom(CorneringWheel other)
    {
        (TravelMm, SideForceN, SlipDeg, LongitudinalN) = (other.TravelMm, other.SideForceN, other.SlipDeg, other.LongitudinalN);

        // The same points have the same pose at a travel, however the wheel is set.
        if (ReferenceEquals(_axle.Suspension, other._axle.Suspension)) _state = other._state;
        if (!ReferenceEquals(_motion, other._motion)) return;
        (Pose, _isPlaced) = (other.Pose, other._isPlaced);
        (_guidedAtMm, _guidedSteer, _ratioPerTravel, _riseBendPerMm, _slopePerTravel, _contactForwardBend, _centreForwardBend) =
            (other._guidedAtMm, other._guidedSteer, other._ratioPerTravel, other._riseBendPerMm, other._slopePerTravel, other._contactForwardBend, other._centreForwardBend);
    }

    /// <summary>How far roll (sine and cosine) and travel alone raise the contact, mm.</summary>
    public double RiseInBodyMm(double sin, double cos) =>
        Pose.HoldsInRoll ? TravelMm - (Sign * _halfTrackMm * sin) : (Pose.ContactRiseMm * cos) - (Sign * Pose.HalfTrackMm * sin);

    /// <summary>Updates the contact's position and the tyre's load for this roll (sine and cosine) and heave of the body.</summary>
    public void ApplyBody(double sin, double cos, double heaveMm)
    {
        var risen = heaveMm + RiseInBodyMm(sin, cos);
        if (Pose.HoldsInRoll)
        {
            (Rise, RiseBendByTravel, RiseBendByRoll) = (1, 0, 0);
            (Slope, _slopeByTravel, RisePerRoll, _groundRisePerSteer) = (Pose.OutboardSlope, 0, -Sign * _halfTrackMm, 0);
        }
        else
        {
            var turned = cos - (Sign * Pose.OutboardSlope * sin);
            Rise = Pose.RisePerTravel * turned;
            RiseBendByTravel = (_riseBendPerMm * turned) - (Pose.RisePerTravel * Sign * _slopePerTravel * sin);
            RiseBendByRoll = -Pose.RisePerTravel * ((sin / cos) + (Sign * Pose.OutboardSlope));
            _groundRisePerSteer = (Pose.RisePerSteer * cos) - (Sign * Pose.OutboardPerSteer * sin);
            Slope = ((Pose.OutboardSlope * cos) + (Sign * sin)) / turned;
            _slopeByTravel = _slopePerTravel / (turned * turned);
            RisePerRoll = (-Pose.ContactRiseMm * sin / cos) - (Sign * Pose.HalfTrackMm);
        }

        var load = StaticLoadN - (_axle.TyreRateNPerMm * risen);
        (LoadN, TyreRateNPerMm) = load > 0 ? (load, _axle.TyreRateNPerMm) : (0, 0);
        Incline(sin, cos);
        TyrePose = new(LoadN, InclinationAngleDeg, HeadingDeg);
    }

    /// <summary>
    /// Predicts the tyre's position after a step, to first order; it holds until the next update of the wheel. False where it would leave the road.
    /// Travel and heave in mm, roll by its sine and in rad, steer in units of the input.
    /// </summary>
    public bool TryPredict(double travelMm, double heaveMm, double rollSine, double rollRad, double steer)
    {
        var ownSteer = -Sign * steer;
        TyrePose = new(
            LoadN + LoadBySteerN(steer) - (TyreRateNPerMm * ((Rise * travelMm) + heaveMm + (RisePerRoll * rollSine))),
            InclinationAngleDeg + (Pose.CamberPerTravel * travelMm) + (Pose.CamberPerSteer * ownSteer) + (Sign * double.RadiansToDegrees(rollRad))
                + (CamberComplianceDeg - _inclinedByComplianceDeg),
            HeadingDeg - (Sign * ((Pose.HeadingPerTravel * travelMm) + (Pose.HeadingPerSteer * ownSteer))));
        return TyrePose.LoadN > 0;
    }

    /// <summary>Change of load with a change of steer alone, N.</summary>
    public double LoadBySteerN(double steer) => TyreRateNPerMm * _groundRisePerSteer * Sign * steer;

    /// <summary>Change of <see cref="SpringN"/> with a change of steer alone, N.</summary>
    public double SpringBySteerN(double steer) => -Sign * steer * _springForcePerTravelNPerMm * Pose.SpringTravelPerSteer;

    /// <summary>The same wheel as it is, with another tyre.</summary>
    public CorneringWheel With(in AxleTyre tyre)
    {
        var other = (CorneringWheel)MemberwiseClone();
        other._tyre = tyre;
        return other;
    }

    /// <summary>Puts another friction on its tyre.</summary>
    public void PutFriction(double friction) => _tyre = _tyre with { Friction = friction };

    /// <summary>True where another wheel has the same tyre.</summary>
    public bool HasSameTyre(CorneringWheel other) => _tyre == other._tyre;

    /// <summary>Side force of the tyre at the position in use.</summary>
    public SideForceCurve Curve() => Curve(_tyre);

    /// <summary>Side force of another tyre in its place, beside the same longitudinal force.</summary>
    public SideForceCurve Curve(in AxleTyre tyre)
    {
        var curve = PassengerTyre.At(TyrePose.LoadN, -Sign * TyrePose.InclinationAngleDeg, tyre);
        return LongitudinalN == 0 || curve.PeakN <= 0
            ? curve
            : curve.WithPeak(PassengerTyre.SideShare(Math.Abs(LongitudinalN) / PassengerTyre.LongitudinalPeakN(TyrePose.LoadN, tyre), tyre.Set.CombinedExponent));
    }

    /// <summary>Sets the longitudinal force; returns how much it changed, N.</summary>
    public double ApplyLongitudinal(double forceN)
    {
        var before = LongitudinalN;
        LongitudinalN = forceN;
        return Math.Abs(forceN - before);
    }

    /// <summary>Sets side force and slip angle; returns how much the force changed, N.</summary>
    public double ApplySideForce(double sideForceN, double slipDeg, double unsprungN)
    {
        var before = SideForceN;
        SlipDeg = slipDeg;
        SideForceN = sideForceN;
        LinkForceN = SideForceN - unsprungN;
        return Math.Abs(SideForceN - before);
    }

    /// <summary>Computes force and rate of spring, bump stop and droop stop at the present travel.</summary>
    public void Spring()
    {
        var spring = WheelSpring.Compute(_axle, Pose, TravelMm, _springForceAtRestN, _ratioPerTravel);
        (SpringN, SpringRateNPerMm, _springForcePerTravelNPerMm) = (spring.ForceN, spring.RateNPerMm, spring.ForcePerTravelNPerMm);
    }

    private void Incline(double sin, double cos)
    {
        // The outboard spin axis of WheelPlane, its height and its part across the car.
        var (sines, cosines) = Vector128.SinCos(Vector128.Create(Pose.CamberDeg + CamberComplianceDeg, (-Pose.HeadingDeg) + (Sign * HeadingComplianceDeg)) * (Math.PI / 180));
        var (up, across) = (-sines.GetElement(0), cosines.GetElement(0) * cosines.GetElement(1));
        _inclinedByComplianceDeg = CamberComplianceDeg;
        InclinationAngleDeg = -double.RadiansToDegrees(Math.Asin(Math.Clamp((up * cos) - (Sign * across * sin), -1, 1)));
    }
}
