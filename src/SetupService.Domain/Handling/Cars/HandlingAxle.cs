using SetupService.Domain.Suspension;
using SetupService.Domain.Suspension.Points;
using SetupService.Domain.Suspension.Steering;
using SetupService.Domain.Vehicles;

namespace SetupService.Domain.Handling.Cars;

/// <summary>One axle with every figure the handling model takes: given, or assumed and listed. Both wheels alike but for load and angles.</summary>
public sealed record HandlingAxle
{
    /// <summary>What is known of how its wheels move.</summary>
    public SuspensionModel Suspension { get; init; } = SuspensionModel.FromFigures;

    /// <summary>Static load on the left wheel, N.</summary>
    public required double LeftLoadN { get; init; }

    /// <summary>Static load on the right wheel, N.</summary>
    public required double RightLoadN { get; init; }

    /// <summary>Distance between the contact centres, mm.</summary>
    public required double TrackMm { get; init; }

    /// <summary>Unsprung mass per wheel, kg.</summary>
    public required double UnsprungMassKg { get; init; }

    /// <summary>Height of the wheel centre over the ground at rest, mm.</summary>
    public required double LoadedRadiusMm { get; init; }

    /// <summary>Vertical rate of one tyre, N/mm.</summary>
    public required double TyreRateNPerMm { get; init; }

    /// <summary>Side force per degree of slip of one tyre at its static load, N/deg; null = as the published set.</summary>
    public double? CorneringStiffnessNPerDeg { get; init; }

    /// <summary>Nominal load of the tyres, N: what makes their size.</summary>
    public required double TyreNominalLoadN { get; init; }

    /// <summary>Peak side force of a tyre over its load, at nominal load, upright.</summary>
    public required double TyreFriction { get; init; }

    /// <summary>Rate at the spring, N/mm.</summary>
    public required double SpringRateNPerMm { get; init; }

    /// <summary>Spring travel by wheel travel at ride height.</summary>
    public required double MotionRatio { get; init; }

    /// <summary>Damper, and bump stop, travel by wheel travel.</summary>
    public required double DamperMotionRatio { get; init; }

    /// <summary>Moment of the anti-roll bar on the body, N m per degree of body roll.</summary>
    public required double BarRollRateNmPerDeg { get; init; }

    /// <summary>Height of the roll centre above the ground at the stated ride height, mm; with points, theirs.</summary>
    public required double RollCentreHeightMm { get; init; }

    /// <summary>Front-view swing arm, mm: only where neither hardpoints nor readings give camber over travel.</summary>
    public required double SwingArmMm { get; init; }

    /// <summary>Wheel travel from ride height to the bump stop, mm; null = no stop is met.</summary>
    public double? BumpTravelMm { get; init; }

    /// <summary>Wheel travel from ride height to full droop, mm; null = none is met.</summary>
    public double? ReboundTravelMm { get; init; }

    /// <summary>Rate at the bump stop, N/mm.</summary>
    public required double StopRateNPerMm { get; init; }

    /// <summary>Force over compression of the bump stop, rising, in place of one rate and a length; empty where it is not known. Beyond its end the stop is solid.</summary>
    public IReadOnlyList<StopForce> StopCurve { get; init; } = [];

    /// <summary>Length of the bump stop, mm; pressed flat it is solid.</summary>
    public required double StopLengthMm { get; init; }

    /// <summary>Ride height less the one at which hardpoints, angles and travels are stated, mm.</summary>
    public double RideHeightChangeMm { get; init; }

    /// <summary>Camber of the left wheel at the stated ride height, degrees.</summary>
    public required double LeftCamberDeg { get; init; }

    /// <summary>Camber of the right wheel at the stated ride height, degrees.</summary>
    public required double RightCamberDeg { get; init; }

    /// <summary>Toe of the left wheel at the stated ride height, degrees.</summary>
    public required double LeftToeDeg { get; init; }

    /// <summary>Toe of the right wheel at the stated ride height, degrees.</summary>
    public required double RightToeDeg { get; init; }

    /// <summary>Caster of the left wheel, degrees; not used where hardpoints give it.</summary>
    public required double LeftCasterDeg { get; init; }

    /// <summary>Caster of the right wheel, degrees; not used where hardpoints give it.</summary>
    public required double RightCasterDeg { get; init; }

    /// <summary>Steering-axis inclination, degrees; not used where hardpoints give it.</summary>
    public required double SteeringAxisInclinationDeg { get; init; }

    /// <summary>Caster added to that of hardpoints or alignment, degrees, for the wheel's rotation about its steering axis.</summary>
    public double AddedCasterDeg { get; init; }

    /// <summary>Change of camber under side force to the car's middle, degrees per kN; positive = leans out.</summary>
    public required double CamberComplianceDegPerKn { get; init; }

    /// <summary>Change of toe under side force to the car's middle, degrees per kN; positive = toes out.</summary>
    public required double ToeComplianceDegPerKn { get; init; }

    /// <summary>True when both wheels are set to the same angles, so that both have the same motion.</summary>
    public bool IsSetAlike => LeftCamberDeg == RightCamberDeg && LeftToeDeg == RightToeDeg && LeftCasterDeg == RightCasterDeg;

    /// <summary>Static load of the axle, N.</summary>
    public double LoadN => LeftLoadN + RightLoadN;

    /// <summary>Static load of the axle without its unsprung masses, N.</summary>
    public double SprungLoadN => LoadN - (2 * UnsprungMassKg * HandlingCar.StandardGravity);

    /// <summary>Rate of the spring at the wheel at ride height, N/mm, its motion ratio taken as constant.</summary>
    public double WheelRateNPerMm => SpringRateNPerMm * MotionRatio * MotionRatio;

    /// <summary>Travel left to the bump stop at the present ride height, mm.</summary>
    public double? BumpLeftMm => BumpTravelMm + RideHeightChangeMm;

    /// <summary>Travel left to full droop at the present ride height, mm.</summary>
    public double? DroopLeftMm => ReboundTravelMm - RideHeightChangeMm;

    /// <summary>How one of its wheels is set, the right one as its left mirror image.</summary>
    public WheelSetup SetupOf(CarAxle at, WheelSide side)
    {
        var isLeft = side == WheelSide.Left;
        return new()
        {
            CamberDeg = isLeft ? LeftCamberDeg : RightCamberDeg,
            ToeDeg = isLeft ? LeftToeDeg : RightToeDeg,
            LoadedRadiusMm = LoadedRadiusMm,
            RideHeightChangeMm = RideHeightChangeMm,
            Motion = AxleMotion.Opposite,
            IsSteered = at == CarAxle.Front,
            TrackMm = TrackMm,
            RollCentreHeightMm = RollCentreHeightMm,
            SwingArmMm = SwingArmMm,
            CasterDeg = isLeft ? LeftCasterDeg : RightCasterDeg,
            SteeringAxisInclinationDeg = SteeringAxisInclinationDeg,
            AddedCasterDeg = AddedCasterDeg,
            SpringMotionRatio = MotionRatio,
            DamperMotionRatio = DamperMotionRatio,
        };
    }
}
