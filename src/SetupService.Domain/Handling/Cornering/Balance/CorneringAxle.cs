using System.Diagnostics.CodeAnalysis;
using System.Runtime.Intrinsics;
using SetupService.Domain.Handling.Cars;
using SetupService.Domain.Handling.Tyres;
using SetupService.Domain.Numerics;
using SetupService.Domain.Suspension;
using SetupService.Domain.Suspension.Steering;
using SetupService.Domain.Vehicles;

namespace SetupService.Domain.Handling.Cornering.Balance;

/// <summary>State of one axle during the iteration. Forces in N, lengths in mm; see docs/methods/cornering.</summary>
internal sealed partial class CorneringAxle
{
    private HandlingAxle _axle;
    private double _barNPerMm;
    private Differential _differential;
    private double _massForceN;
    private double _det;
    private double _outerPerOuter;
    private double _outerPerInner;
    private double _innerPerOuter;
    private double _innerPerInner;

    private CorneringAxle(HandlingAxle axle, in Differential differential, double stationMm, CorneringWheel outer, CorneringWheel inner)
    {
        (Outer, Inner) = (outer, inner);
        Take(axle, differential, stationMm);
    }

    [MemberNotNull(nameof(_axle))]
    private void Take(HandlingAxle axle, in Differential differential, double stationMm)
    {
        (_axle, _differential, StationMm) = (axle, differential, stationMm);
        AskedLoadN = axle.LoadN;
        HalfTrackMm = axle.TrackMm / 2;
        RollCentreHeightMm = (Outer.RestPose.OutboardSlope + Inner.RestPose.OutboardSlope) / 2 * HalfTrackMm;
        _barNPerMm = double.RadiansToDegrees(1000 * axle.BarRollRateNmPerDeg) / (axle.TrackMm * axle.TrackMm);
    }

    public CorneringWheel Outer { get; private set; }

    public CorneringWheel Inner { get; private set; }

    /// <summary>Distance ahead of the centre of gravity, mm; negative = behind.</summary>
    public double StationMm { get; private set; }

    public double HalfTrackMm { get; private set; }

    /// <summary>Height of the roll centre above the ground at rest, mm.</summary>
    public double RollCentreHeightMm { get; private set; }

    public double HeaveMm { get; set; }

    /// <summary>Slip angle of the axle, degrees; each wheel adds its own toe and compliance steer.</summary>
    public double SlipDeg { get; private set; }

    /// <summary>Mean heading of the wheels, degrees, positive = into the turn, without compliance steer.</summary>
    public double HeadingDeg => (Outer.HeadingDeg + Inner.HeadingDeg) / 2;

    /// <summary>The same at the tyre positions in use: the present ones, or those predicted for a step.</summary>
    public double TyreHeadingDeg => (Outer.TyrePose.HeadingDeg + Inner.TyrePose.HeadingDeg) / 2;

    /// <summary>Moment of the unsprung masses about the ground, N mm.</summary>
    public double UnsprungMomentNmm { get; private set; }

    public double SideForceN { get; private set; }

    public double LoadN => Outer.LoadN + Inner.LoadN;

    /// <summary>The outer wheel where it is beyond what was read of its suspension; else null.</summary>
    public WheelReach? BeyondReadings(CarAxle at) => Outer.Pose.IsBeyondReadings ? Reach(at, Outer, Outer.TravelMm, 0) : null;

    /// <summary>The wheel, the outer one first, that cannot be at the travel it is asked for, mm from ride height; null where both can.</summary>
    public WheelReach? NotReached(CarAxle at, double outerMm, double innerMm) =>
        !Outer.Reaches(outerMm, 0) ? Reach(at, Outer, outerMm, 0) : !Inner.Reaches(innerMm, 0) ? Reach(at, Inner, innerMm, 0) : null;

    /// <summary>The wheel that the search last wanted where its suspension does not have it; null where there is none, or it was its steer.</summary>
    public WheelReach? Missed(CarAxle at) =>
        Outer.Missed is { } outer ? Reach(at, Outer, outer.TravelMm, outer.Steer) : Inner.Missed is { } inner ? Reach(at, Inner, inner.TravelMm, inner.Steer) : null;

    private WheelReach? Reach(CarAxle at, CorneringWheel wheel, double travelMm, double steer) => wheel.ReachMm(travelMm, steer) is { } reachMm
        ? new(at, wheel.Side, travelMm - _axle.RideHeightChangeMm, reachMm - _axle.RideHeightChangeMm, _axle.Suspension.Tells.HasFlag(SuspensionFigures.RollCentre))
        : null;

    public double StaticLoadN => _axle.LoadN;

    /// <summary>The load the axle has to carry, N: the static one, and what braking, driving and the air add.</summary>
    public double AskedLoadN { get; private set; }

    /// <summary>Force along the car that its tyres must give, N; negative = braking.</summary>
    public double LongitudinalN { get; private set; }

    /// <summary>That force by the most its tyres could give so shared, above 1 where they cannot.</summary>
    public double LongitudinalUsed { get; private set; }

    /// <summary>Moment of both wheels' longitudinal forces about the axle's middle, N mm, positive = into the turn.</summary>
    public double YawMomentNmm => (Outer.LongitudinalN - Inner.LongitudinalN) * HalfTrackMm;

    /// <summary>Load transferred from the inner to the outer wheel since rest, N.</summary>
    public double MovedN => ((Outer.LoadN - Inner.LoadN) - (Outer.StaticLoadN - Inner.StaticLoadN)) / 2;

    private double UnsprungTransferN => UnsprungMomentNmm / _axle.TrackMm;

    /// <summary>The wheel on a side of the car.</summary>
    public CorneringWheel At(WheelSide side) => Outer.Side == side ? Outer : Inner;

    /// <summary>Mean heading that steer alone gives the wheels, degrees, positive = into the turn: at rest height, without toe.</summary>
    public double SteeredByDeg(double steer) => (Outer.SteeredByDeg(steer) + Inner.SteeredByDeg(steer)) / 2;

    public void Reset()
    {
        Outer.Reset();
        Inner.Reset();
        HeaveMm = SlipDeg = 0;
        _peakSlipDeg = UsualPeakDeg;
    }

    /// <summary>Sets what the turn asks.</summary>
    /// <param name="accelerationMs2">Lateral acceleration.</param>
    /// <param name="longitudinalN">Force along the car.</param>
    /// <param name="addedLoadN">Load added to the static one.</param>
    /// <param name="forwardMs2">Longitudinal acceleration.</param>
    public void Demand(double accelerationMs2, double longitudinalN, double addedLoadN, double forwardMs2)
    {
        _massForceN = SideForceN = _axle.LoadN / HandlingCar.StandardGravity * accelerationMs2;
        UnsprungMomentNmm = 2 * _axle.UnsprungMassKg * accelerationMs2 * _axle.LoadedRadiusMm;
        (LongitudinalN, AskedLoadN) = (longitudinalN, _axle.LoadN + addedLoadN);
        Outer.UnsprungForwardN = Inner.UnsprungForwardN = _axle.UnsprungMassKg * forwardMs2;
    }

    /// <summary>Shares the longitudinal force between the wheels at the tyre positions in use; returns how much their forces changed, N.</summary>
    public double ShareLongitudinal()
    {
        if (LongitudinalN == 0 && Outer.LongitudinalN == 0 && Inner.LongitudinalN == 0)
        {
            LongitudinalUsed = 0;
            return 0;
        }

        var shared = LongitudinalShare.Compute(LongitudinalN, Outer.LongitudinalHoldsN, Inner.LongitudinalHoldsN, _differential);
        LongitudinalUsed = shared.Used;
        return Outer.ApplyLongitudinal(shared.FirstN) + Inner.ApplyLongitudinal(shared.SecondN);
    }

    /// <summary>Adds to the side force of the axle's mass what holds a yaw moment, N, positive = into the turn.</summary>
    public void HoldYaw(double byYawN) => SideForceN = _massForceN + byYawN;

    public bool TryUpdatePose(double steer) => Outer.TryUpdatePose(steer) && Inner.TryUpdatePose(steer);

    public void ApplyBody(double sin, double cos)
    {
        Outer.ApplyBody(sin, cos, HeaveMm);
        Inner.ApplyBody(sin, cos, HeaveMm);
    }

    /// <summary>Sets the heave at which its tyres carry the load asked of it, at this roll (sine and cosine) and the wheels' present travels.</summary>
    public void CarryLoad(double sin, double cos)
    {
        var (outerMm, innerMm) = (Outer.RiseInBodyMm(sin, cos), Inner.RiseInBodyMm(sin, cos));
        HeaveMm = (((Outer.StaticLoadN + Inner.StaticLoadN - AskedLoadN) / _axle.TyreRateNPerMm) - outerMm - innerMm) / 2;

        // Where one has left the road the other carries it all.
        var (outerOffMm, innerOffMm) = ((Outer.StaticLoadN / _axle.TyreRateNPerMm) - outerMm, (Inner.StaticLoadN / _axle.TyreRateNPerMm) - innerMm);
        if (HeaveMm > Math.Min(outerOffMm, innerOffMm)) HeaveMm = Math.Max(outerOffMm, innerOffMm) - (AskedLoadN / _axle.TyreRateNPerMm);
    }

    /// <summary>Travel, mm, by which tyres of this axle's rate let its wheels further up than those of a similar axle do at the loads they carry there; 0 where the rate is the same.</summary>
    public (double Outer, double Inner) MoreDeflected(CorneringAxle other)
    {
        var mmPerN = (1 / _axle.TyreRateNPerMm) - (1 / other._axle.TyreRateNPerMm);
        return mmPerN == 0 ? (0, 0) : (More(other.Outer), More(other.Inner));

        double More(CorneringWheel wheel) => wheel.LoadN > 0 ? (wheel.StaticLoadN - wheel.LoadN) * mmPerN / wheel.Rise : 0;
    }

    /// <summary>Predicts tyre positions after a step, to first order; they hold until the next update of the wheels. False where a tyre would leave the road.</summary>
    public bool TryPredict((double Outer, double Inner) travelsMm, double heaveMm, double rollSine, double rollRad, double steer) =>
        Outer.TryPredict(travelsMm.Outer, heaveMm, rollSine, rollRad, steer) && Inner.TryPredict(travelsMm.Inner, heaveMm, rollSine, rollRad, steer);

    /// <summary>The tyres at the positions in use, each with its slip angle beyond the axle's, for a turn centred at this station and distance.</summary>
    public TyrePair Tyres(double centreStationMm, double centreMm) => Tyres(Outer.Curve(), Inner.Curve(), centreStationMm, centreMm);

    private TyrePair Tyres(in SideForceCurve outer, in SideForceCurve inner, double centreStationMm, double centreMm)
    {
        var meanDeg = TyreHeadingDeg;
        var ahead = StationMm - centreStationMm;

        // Angle between the path of the axle's centre and that of a wheel so far out. The centre lies further off than any wheel, so that the second one is never negative.
        var outMm = Vector128.Create(Outer.Sign, Inner.Sign) * HalfTrackMm;
        var pathTurn = Arctangent.Of(ahead * outMm / ((centreMm * (Vector128.Create(centreMm) + outMm)) + Vector128.Create(ahead * ahead)));
        return new(outer, inner, Turn(Outer, pathTurn.GetElement(0)), Turn(Inner, pathTurn.GetElement(1)));

        double Turn(CorneringWheel wheel, double pathTurnRad) => wheel.TyrePose.HeadingDeg - meanDeg + wheel.HeadingComplianceDeg + double.RadiansToDegrees(pathTurnRad);
    }

    /// <summary>Residual at each wheel after this much more steer, N: the tyre's load less the load the suspension puts on it.</summary>
    public (double Outer, double Inner) Residuals(double steer)
    {
        Outer.Spring();
        Inner.Spring();
        var bar = _barNPerMm * (Outer.TravelMm - Inner.TravelMm);
        return (Create(Outer, bar), Create(Inner, -bar));

        double Create(CorneringWheel wheel, double barN) =>
            SuspendedN(wheel) + wheel.LoadBySteerN(steer) - ((wheel.SpringN + wheel.SpringBySteerN(steer) + barN) / wheel.Rise);
    }

    /// <summary>The part of a wheel's load carried by spring, stops and bar, N.</summary>
    public double SuspendedN(CorneringWheel wheel) =>
        wheel.LoadN - (wheel.WeightN + (wheel.Sign * UnsprungTransferN) + (wheel.Sign * wheel.Slope * wheel.LinkForceN) + wheel.ForwardLinkN);

    /// <summary>Inverts the two-by-two Jacobian of the wheels' residuals by their travels.</summary>
    public void Linearise()
    {
        var (outer, inner) = (ByTravel(Outer), ByTravel(Inner));
        var (outerByInner, innerByOuter) = (_barNPerMm / Outer.Rise, _barNPerMm / Inner.Rise);
        _det = (outer * inner) - (outerByInner * innerByOuter);
        (_outerPerOuter, _outerPerInner) = (inner / _det, -outerByInner / _det);
        (_innerPerOuter, _innerPerInner) = (-innerByOuter / _det, outer / _det);

        // The suspended load is taken at equilibrium: far from it a solid stop may push with any force.
        double ByTravel(CorneringWheel wheel) => (-wheel.TyreRateNPerMm * wheel.Rise) - wheel.LinkRateNPerMm - wheel.ForwardLinkRateNPerMm
            - ((wheel.SpringRateNPerMm + _barNPerMm - (SuspendedN(wheel) * wheel.RiseBendByTravel)) / wheel.Rise);
    }

    /// <summary>Change of both travels, mm, that cancels these residuals, N.</summary>
    public (double Outer, double Inner) Travels(double outerN, double innerN) =>
        (-((_outerPerOuter * outerN) + (_outerPerInner * innerN)), -((_innerPerOuter * outerN) + (_innerPerInner * innerN)));

    public AxleAttitude Attitude(double gripUsed) => new()
    {
        GripUsed = gripUsed,
        LongitudinalN = LongitudinalN,
        LongitudinalUsed = LongitudinalUsed,
        LongitudinalLoadN = AskedLoadN - StaticLoadN,
        LoadTransferN = MovedN,
        GeometricN = ((Outer.Slope * Outer.LinkForceN) + (Inner.Slope * Inner.LinkForceN)) / 2,
        UnsprungN = UnsprungTransferN,
        HeaveMm = HeaveMm,
        SlipDeg = SlipDeg,
        RollCentreHeightMm = RollCentreHeightMm,
    };

    public WheelAttitude Attitude(CorneringWheel wheel, double steer) => new()
    {
        LoadN = wheel.LoadN,
        TravelMm = wheel.TravelMm,
        SteerDeg = (wheel.HeadingDeg + wheel.HeadingComplianceDeg) * (Outer.Side == WheelSide.Right ? 1 : -1),
        SlipDeg = wheel.SlipDeg,
        SideForceN = wheel.SideForceN,
        LongitudinalN = wheel.LongitudinalN,
        Camber = wheel.Contributions(steer),
        BumpLeftMm = _axle.BumpLeftMm - wheel.TravelMm,
        DroopLeftMm = _axle.DroopLeftMm + wheel.TravelMm,
        IsOuter = wheel.IsOuter,
        IsBeyondReadings = wheel.Pose.IsBeyondReadings,
    };
}
