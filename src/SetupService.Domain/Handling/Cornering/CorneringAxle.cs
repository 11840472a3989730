using SetupService.Domain.Handling.Cars;
using SetupService.Domain.Handling.Tyres;
using SetupService.Domain.Numerics;
using SetupService.Domain.Suspension.Steering;
using SetupService.Domain.Vehicles;

namespace SetupService.Domain.Handling.Cornering;

/// <summary>One axle while its equilibrium is sought. Forces in N, lengths in mm; see docs/methods/cornering.</summary>
internal sealed class CorneringAxle
{
    private const double UsualPeakDeg = 10;

    private readonly HandlingAxle _axle;
    private readonly double _barNPerMm;
    private double _peakSlipDeg = UsualPeakDeg;
    private double _det;
    private double _outerPerOuter;
    private double _outerPerInner;
    private double _innerPerOuter;
    private double _innerPerInner;

    private CorneringAxle(HandlingAxle axle, double stationMm, CorneringWheel outer, CorneringWheel inner)
    {
        (_axle, StationMm, Outer, Inner) = (axle, stationMm, outer, inner);
        HalfTrackMm = axle.TrackMm / 2;
        RollCentreHeightMm = (outer.RestPose.OutboardSlope + inner.RestPose.OutboardSlope) / 2 * HalfTrackMm;
        _barNPerMm = double.RadiansToDegrees(1000 * axle.BarRollRateNmPerDeg) / (axle.TrackMm * axle.TrackMm);
    }

    public CorneringWheel Outer { get; }

    public CorneringWheel Inner { get; }

    /// <summary>Station ahead of the centre of gravity.</summary>
    public double StationMm { get; }

    public double HalfTrackMm { get; }

    /// <summary>At rest, above the ground.</summary>
    public double RollCentreHeightMm { get; }

    public double HeaveMm { get; set; }

    /// <summary>Slip of the axle beyond which its wheels are turned a little, degrees.</summary>
    public double SlipDeg { get; private set; }

    /// <summary>Mean heading of the wheels, positive = into the turn, without the give.</summary>
    public double HeadingDeg => (Outer.HeadingDeg + Inner.HeadingDeg) / 2;

    /// <summary>The same as the tyres are taken to stand: as the wheels do, or as a step leads them to.</summary>
    public double TyreHeadingDeg => (Outer.TyrePose.HeadingDeg + Inner.TyrePose.HeadingDeg) / 2;

    /// <summary>Moment of the unsprung masses about the ground.</summary>
    public double UnsprungMomentNmm { get; private set; }

    public double SideForceN { get; private set; }

    public double LoadN => Outer.LoadN + Inner.LoadN;

    /// <summary>Travel of the outer wheel from where its suspension was read, mm, where that is beyond what was read; else null.</summary>
    public double? BeyondReadingsMm => Outer.Pose.IsBeyondReadings ? Outer.TravelMm - _axle.RideHeightChangeMm : null;

    public double StaticLoadN => _axle.LoadN;

    /// <summary>Load that has moved from the inner wheel to the outer one since rest.</summary>
    public double MovedN => ((Outer.LoadN - Inner.LoadN) - (Outer.StaticLoadN - Inner.StaticLoadN)) / 2;

    private double UnsprungTransferN => UnsprungMomentNmm / _axle.TrackMm;

    /// <summary>Makes the axle; null where its points do not close.</summary>
    public static CorneringAxle? Create(HandlingCar car, CarAxle at, TurnDirection turn, WorkBudget? budget = null)
    {
        var axle = car.At(at);
        if (axle.MotionOf(at, WheelSide.Left) is not { } left) return null;
        if ((axle.IsSetAlike ? left : axle.MotionOf(at, WheelSide.Right)) is not { } right) return null;
        var wheelbase = car.WheelbaseMm ?? 0;
        var station = at == CarAxle.Front ? (1 - car.ShareFront) * wheelbase : -car.ShareFront * wheelbase;
        var leftWheel = new CorneringWheel(axle, left, WheelSide.Left, turn == TurnDirection.Right, budget);
        var rightWheel = new CorneringWheel(axle, right, WheelSide.Right, turn == TurnDirection.Left, budget);
        return turn == TurnDirection.Left ? new(axle, station, rightWheel, leftWheel) : new(axle, station, leftWheel, rightWheel);
    }

    /// <summary>Mean heading that steer alone gives the wheels, degrees, positive = into the turn: at rest height, toe off.</summary>
    public double SteeredByDeg(double steer) => (Outer.SteeredByDeg(steer) + Inner.SteeredByDeg(steer)) / 2;

    public void Reset()
    {
        Outer.Reset();
        Inner.Reset();
        HeaveMm = SlipDeg = 0;
        _peakSlipDeg = UsualPeakDeg;
    }

    public void StartFrom(CorneringAxle other)
    {
        Outer.StartFrom(other.Outer);
        Inner.StartFrom(other.Inner);
        (HeaveMm, SlipDeg) = (other.HeaveMm, other.SlipDeg);
    }

    public void Demand(double accelerationMs2)
    {
        SideForceN = _axle.LoadN / HandlingCar.StandardGravity * accelerationMs2;
        UnsprungMomentNmm = 2 * _axle.UnsprungMassKg * accelerationMs2 * _axle.LoadedRadiusMm;
    }

    public bool TryUpdatePose(double steer) => Outer.TryUpdatePose(steer) && Inner.TryUpdatePose(steer);

    public void ApplyBody(double sin, double cos)
    {
        Outer.ApplyBody(sin, cos, HeaveMm);
        Inner.ApplyBody(sin, cos, HeaveMm);
    }

    /// <summary>Takes the tyres to stand where a step leads, to first order, until the wheels stand anew; false where one would be off the road.</summary>
    public bool TryPredict((double Outer, double Inner) travelsMm, double heaveMm, double rollSine, double rollRad, double steer) =>
        Outer.TryPredict(travelsMm.Outer, heaveMm, rollSine, rollRad, steer) && Inner.TryPredict(travelsMm.Inner, heaveMm, rollSine, rollRad, steer);

    /// <summary>The tyres where they are taken to stand, each with how far it is turned against the axle's slip angle about a turn centred at this station and distance.</summary>
    public TyrePair Tyres(double peakScale, double centreStationMm, double centreMm)
    {
        var meanDeg = TyreHeadingDeg;
        var ahead = StationMm - centreStationMm;
        return new(Outer.Curve(peakScale), Inner.Curve(peakScale), Turn(Outer), Turn(Inner));

        double Turn(CorneringWheel wheel) => wheel.TyrePose.HeadingDeg - meanDeg + wheel.HeadingComplianceDeg + PathTurnDeg(wheel.Sign * HalfTrackMm);

        // By how much the path of the axle's middle is turned against that of a wheel so far out.
        double PathTurnDeg(double outMm) => double.RadiansToDegrees(Math.Atan2(ahead * outMm, (centreMm * (centreMm + outMm)) + (ahead * ahead)));
    }

    /// <summary>How far the most the tyres can give must be scaled for the side force with some to spare, or so far as is enough already.</summary>
    public double PeakNeed(in TyrePair tyres, double peakScale, double spare, double enough)
    {
        var askedN = peakScale * spare * SideForceN;

        // Each tyre's own most is at least what it adds to the common peak, which is seldom under nine tenths of the sum.
        if (enough * (tyres.Outer.MostN + tyres.Inner.MostN) > 1.25 * askedN) return enough;
        var peak = tyres.PeakN(ref _peakSlipDeg, askedN / enough);
        return peak > 0 ? askedN / peak : double.PositiveInfinity;
    }

    /// <summary>The slip at which the tyres give the side force, and each one's share of it; null where they cannot.</summary>
    public PairSlip? SlipFor(in TyrePair tyres) => tyres.SlipFor(SideForceN, SlipDeg);

    /// <summary>Takes slip and side forces; gives by how much the forces changed.</summary>
    public double ApplySideForce(in PairSlip shared, in TyrePair tyres, double accelerationMs2)
    {
        SlipDeg = shared.SlipDeg;
        var unsprung = _axle.UnsprungMassKg * accelerationMs2;
        return Outer.ApplySideForce(shared.OuterN, SlipDeg + tyres.OuterTurnDeg, unsprung) + Inner.ApplySideForce(shared.InnerN, SlipDeg + tyres.InnerTurnDeg, unsprung);
    }

    /// <summary>What is out of balance at each wheel once it is steered so much further: the tyre's load less what stands on it.</summary>
    public (double Outer, double Inner) Residuals(double steer)
    {
        Outer.Spring();
        Inner.Spring();
        var bar = _barNPerMm * (Outer.TravelMm - Inner.TravelMm);
        return (Create(Outer, bar), Create(Inner, -bar));

        double Create(CorneringWheel wheel, double barN) =>
            SuspendedN(wheel) + wheel.LoadBySteerN(steer) - ((wheel.SpringN + wheel.SpringBySteerN(steer) + barN) / wheel.Rise);
    }

    /// <summary>What of a wheel's load is left for spring, stops and bar to hold up.</summary>
    public double SuspendedN(CorneringWheel wheel) =>
        wheel.LoadN - (wheel.WeightN + (wheel.Sign * UnsprungTransferN) + (wheel.Sign * wheel.Slope * wheel.LinkForceN));

    /// <summary>Prepares the response of the two travels to what is out of balance.</summary>
    public void Linearise()
    {
        var (outer, inner) = (ByTravel(Outer), ByTravel(Inner));
        var (outerByInner, innerByOuter) = (_barNPerMm / Outer.Rise, _barNPerMm / Inner.Rise);
        _det = (outer * inner) - (outerByInner * innerByOuter);
        (_outerPerOuter, _outerPerInner) = (inner / _det, -outerByInner / _det);
        (_innerPerOuter, _innerPerInner) = (-innerByOuter / _det, outer / _det);

        // What springs and bar hold is taken as it is in balance: far from there a solid stop may press with anything.
        double ByTravel(CorneringWheel wheel) => (-wheel.TyreRateNPerMm * wheel.Rise) - wheel.LinkRateNPerMm
            - ((wheel.SpringRateNPerMm + _barNPerMm - (SuspendedN(wheel) * wheel.RiseBendByTravel)) / wheel.Rise);
    }

    /// <summary>The travels' change that makes up for a change of each wheel's balance, N.</summary>
    public (double Outer, double Inner) Travels(double outerN, double innerN) =>
        (-((_outerPerOuter * outerN) + (_outerPerInner * innerN)), -((_innerPerOuter * outerN) + (_innerPerInner * innerN)));

    public AxleAttitude Attitude() => new()
    {
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
        Camber = wheel.Contributions(steer),
        BumpLeftMm = _axle.BumpLeftMm - wheel.TravelMm,
        DroopLeftMm = _axle.DroopLeftMm + wheel.TravelMm,
        IsOuter = wheel.IsOuter,
        IsBeyondReadings = wheel.Pose.IsBeyondReadings,
    };
}
