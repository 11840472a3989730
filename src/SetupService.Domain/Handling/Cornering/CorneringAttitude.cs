using SetupService.Domain.Vehicles;

namespace SetupService.Domain.Handling.Cornering;

/// <summary>Attitude of the whole car in a steady turn.</summary>
public readonly record struct CorneringAttitude
{
    // Least load transfer, as a share of the weight, that has a front share: toe alone transfers about as much.
    private const double LeastTransfer = 0.005;

    /// <summary>The turn.</summary>
    public required CorneringDemand Demand { get; init; }

    /// <summary>Roll of the body, degrees; positive = out of the turn.</summary>
    public required double RollDeg { get; init; }

    /// <summary>Pitch of the body between its axles, degrees; positive = the nose down (ISO 8855).</summary>
    public double PitchDeg { get; init; }

    /// <summary>Mean steer of the front wheels, degrees, positive = into the turn.</summary>
    public required double SteerDeg { get; init; }

    /// <summary>
    /// What of the steer the driver gives, degrees at the road wheels, positive = into the turn: the mean heading that this much rack gives the front wheels at rest height, without toe. More than
    /// <see cref="SteerDeg"/> where travel in roll steers the wheels out. NaN where the wheels cannot be steered so far at rest height.
    /// </summary>
    public required double SteeredDeg { get; init; }

    /// <summary>The same, positive = to the left.</summary>
    public double SteeredToLeftDeg => Demand.Turn == TurnDirection.Left ? SteeredDeg : 0 - SteeredDeg;

    /// <summary>The mean steer, positive = to the left.</summary>
    public double SteerToLeftDeg => Demand.Turn == TurnDirection.Left ? SteerDeg : 0 - SteerDeg;

    /// <summary>The front axle.</summary>
    public required AxleAttitude Front { get; init; }

    /// <summary>The rear axle.</summary>
    public required AxleAttitude Rear { get; init; }

    /// <summary>Front left wheel.</summary>
    public required WheelAttitude FrontLeft { get; init; }

    /// <summary>Front right wheel.</summary>
    public required WheelAttitude FrontRight { get; init; }

    /// <summary>Rear left wheel.</summary>
    public required WheelAttitude RearLeft { get; init; }

    /// <summary>Rear right wheel.</summary>
    public required WheelAttitude RearRight { get; init; }

    /// <summary>Front axle's share of the load transfer, percent; null where the load transfer is too small for a share (toe alone transfers a little, without any turn).</summary>
    public double? FrontLoadTransferPct => Front.LoadTransferN + Rear.LoadTransferN is var sum && sum > LeastTransfer * WeightN ? 100 * Front.LoadTransferN / sum : null;

    private double WeightN => FrontLeft.LoadN + FrontRight.LoadN + RearLeft.LoadN + RearRight.LoadN;

    /// <summary>The outer wheel of an axle.</summary>
    public WheelAttitude Outer(CarAxle axle) => (axle, Demand.Turn) switch
    {
        (CarAxle.Front, TurnDirection.Left) => FrontRight,
        (CarAxle.Front, _) => FrontLeft,
        (_, TurnDirection.Left) => RearRight,
        _ => RearLeft,
    };

    /// <summary>The inner wheel of an axle.</summary>
    public WheelAttitude Inner(CarAxle axle) => (axle, Demand.Turn) switch
    {
        (CarAxle.Front, TurnDirection.Left) => FrontLeft,
        (CarAxle.Front, _) => FrontRight,
        (_, TurnDirection.Left) => RearLeft,
        _ => RearRight,
    };

    /// <summary>One axle.</summary>
    public AxleAttitude At(CarAxle axle) => axle == CarAxle.Front ? Front : Rear;

    /// <summary>True when a wheel has left the road.</summary>
    public bool HasLiftedWheel => FrontLeft.IsLifted || FrontRight.IsLifted || RearLeft.IsLifted || RearRight.IsLifted;

    /// <summary>One wheel.</summary>
    public WheelAttitude At(WheelPosition wheel) => wheel switch
    {
        WheelPosition.FrontLeft => FrontLeft,
        WheelPosition.FrontRight => FrontRight,
        WheelPosition.RearLeft => RearLeft,
        _ => RearRight,
    };
}

/// <summary>Load transfer of one axle, N from the inner to the outer wheel, beyond that at rest; the three parts add up to the whole.</summary>
public readonly record struct AxleAttitude
{
    /// <summary>Half the difference between outer and inner wheel, less what it is at rest.</summary>
    public required double LoadTransferN { get; init; }

    /// <summary>Geometric part: by the links, from side force and roll centre.</summary>
    public required double GeometricN { get; init; }

    /// <summary>Part of the unsprung masses.</summary>
    public required double UnsprungN { get; init; }

    /// <summary>Elastic part: by springs, bar and stops.</summary>
    public double ElasticN => LoadTransferN - GeometricN - UnsprungN;

    /// <summary>Share of the most its two tyres can give at one slip angle that its side force takes; above 1 they cannot hold the turn.</summary>
    public required double GripUsed { get; init; }

    /// <summary>More is not told apart: such a turn is far out of reach. Infinite where the tyres give nothing.</summary>
    public const double MostToldGripUsed = 10;

    /// <summary>Force along the car of both tyres, N; negative = braking.</summary>
    public double LongitudinalN { get; init; }

    /// <summary>That force by the most the tyres could give as brakes or differential share it; above 1 they cannot.</summary>
    public double LongitudinalUsed { get; init; }

    /// <summary>Load that braking, driving and the air add to the axle, N.</summary>
    public double LongitudinalLoadN { get; init; }

    /// <summary>How far the body rose at the axle, mm; positive = jacked up.</summary>
    public required double HeaveMm { get; init; }

    /// <summary>Slip angle of the axle, degrees.</summary>
    public required double SlipDeg { get; init; }

    /// <summary>Height of the roll centre at rest, mm above the ground.</summary>
    public required double RollCentreHeightMm { get; init; }
}

/// <summary>One wheel in the turn.</summary>
public readonly record struct WheelAttitude
{
    /// <summary>Load on the road, N; 0 = lifted.</summary>
    public required double LoadN { get; init; }

    /// <summary>Travel from the present ride height, mm; positive = bump.</summary>
    public required double TravelMm { get; init; }

    /// <summary>Heading against the body, degrees, positive = left; toe included.</summary>
    public required double SteerDeg { get; init; }

    /// <summary>Slip angle, degrees, positive = pulling into the turn.</summary>
    public required double SlipDeg { get; init; }

    /// <summary>Side force, N, positive = into the turn.</summary>
    public required double SideForceN { get; init; }

    /// <summary>Force along the car, N; negative = braking.</summary>
    public double LongitudinalN { get; init; }

    /// <summary>The inclination to the road by its causes.</summary>
    public required CamberContributions Camber { get; init; }

    /// <summary>Travel left to the bump stop, mm, negative = compressed by this much; null where no stop is known.</summary>
    public required double? BumpLeftMm { get; init; }

    /// <summary>Travel left to full droop, mm, negative = against it; null where none is known.</summary>
    public required double? DroopLeftMm { get; init; }

    /// <summary>True when it is the outer wheel of its axle.</summary>
    public required bool IsOuter { get; init; }

    /// <summary>True where the wheel is beyond what was read of its suspension: its camber, and so its inclination, is not known.</summary>
    public bool IsBeyondReadings { get; init; }

    /// <summary>Inclination to the road, degrees; negative = top towards the car's centre. With the last camber read where it <see cref="IsBeyondReadings"/>.</summary>
    public double InclinationAngleDeg => Camber.InclinationAngleDeg;

    /// <summary>True when it is on its bump stop.</summary>
    public bool IsOnBumpStop => BumpLeftMm < 0;

    /// <summary>True when it has left the road.</summary>
    public bool IsLifted => LoadN <= 0;
}

/// <summary>What a wheel's inclination to the road is made of, degrees; the five add up to it.</summary>
/// <param name="StaticDeg">Camber as set.</param>
/// <param name="KinematicDeg">What travel, and a changed ride height, do.</param>
/// <param name="RollDeg">What the roll of the body does.</param>
/// <param name="SteerDeg">What steering about the inclined axis does.</param>
/// <param name="ComplianceDeg">What side force does by the compliance of the suspension.</param>
public readonly record struct CamberContributions(double StaticDeg, double KinematicDeg, double RollDeg, double SteerDeg, double ComplianceDeg)
{
    /// <summary>Inclination to the road, degrees; negative = top towards the car's centre.</summary>
    public double InclinationAngleDeg => StaticDeg + KinematicDeg + RollDeg + SteerDeg + ComplianceDeg;
}
