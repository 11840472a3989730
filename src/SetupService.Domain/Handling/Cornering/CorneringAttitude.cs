using SetupService.Domain.Vehicles;

namespace SetupService.Domain.Handling.Cornering;

/// <summary>How the whole car stands in a steady turn.</summary>
public readonly record struct CorneringAttitude
{
    // Less than this share of the weight crossing the car is not told apart from what toe does.
    private const double LeastTransfer = 0.005;

    /// <summary>The turn.</summary>
    public required CorneringDemand Demand { get; init; }

    /// <summary>Roll of the body, degrees; positive = out of the turn.</summary>
    public required double RollDeg { get; init; }

    /// <summary>Mean steer of the front wheels, degrees, positive = into the turn.</summary>
    public required double SteerDeg { get; init; }

    /// <summary>The same, positive = to the left.</summary>
    public double SteerToLeftDeg => Demand.Turn == TurnDirection.Left ? SteerDeg : 0 - SteerDeg;

    /// <summary>By what the peak of all four tyres is scaled; 1 = not.</summary>
    public required double PeakScale { get; init; }

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

    /// <summary>Front axle's share of the load transfer, percent; null where too little crosses to be shared (toe alone moves a little, without any turn).</summary>
    public double? FrontLoadTransferPct => Front.LoadTransferN + Rear.LoadTransferN is var sum && sum > LeastTransfer * WeightN ? 100 * Front.LoadTransferN / sum : null;

    private double WeightN => FrontLeft.LoadN + FrontRight.LoadN + RearLeft.LoadN + RearRight.LoadN;

    /// <summary>How the wheel of an axle that the turn loads stands.</summary>
    public WheelAttitude Outer(CarAxle axle) => (axle, Demand.Turn) switch
    {
        (CarAxle.Front, TurnDirection.Left) => FrontRight,
        (CarAxle.Front, _) => FrontLeft,
        (_, TurnDirection.Left) => RearRight,
        _ => RearLeft,
    };

    /// <summary>How one wheel stands.</summary>
    public WheelAttitude At(WheelPosition wheel) => wheel switch
    {
        WheelPosition.FrontLeft => FrontLeft,
        WheelPosition.FrontRight => FrontRight,
        WheelPosition.RearLeft => RearLeft,
        _ => RearRight,
    };
}
