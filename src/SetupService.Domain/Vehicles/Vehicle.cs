using SetupService.Domain.Answers;

namespace SetupService.Domain.Vehicles;

/// <summary>A car, as far as it is known; what is not known is null.</summary>
public sealed record Vehicle
{
    private static readonly Axle Unstated = new();

    /// <summary>The shape of its body, which tells roughly how high its centre of gravity is.</summary>
    public CarBody? Body { get; init; }

    /// <summary>Which axle the engine drives.</summary>
    public DrivenAxle? DrivenAxle { get; init; }

    /// <summary>Top speed, km/h, as the car's papers state it.</summary>
    public double? TopSpeedKmh { get; init; }

    /// <summary>Distance between front and rear contact centres, mm.</summary>
    public double? WheelbaseMm { get; init; }

    /// <summary>Height of the whole car's centre of gravity above the ground at the axle loads given, mm.</summary>
    public double? CentreOfGravityHeightMm { get; init; }

    /// <summary>Load on each wheel.</summary>
    public CornerWeights? CornerWeights { get; init; }

    /// <summary>Front axle's share of the braking force, percent.</summary>
    public double? BrakeShareFrontPct { get; init; }

    /// <summary>Front axle's share of the driving force, percent, where both axles are driven.</summary>
    public double? DriveShareFrontPct { get; init; }

    /// <summary>The differential of each driven axle.</summary>
    public Differential? Differential { get; init; }

    /// <summary>What the air does to it.</summary>
    public Aero? Aero { get; init; }

    /// <summary>Steering-wheel angle by mean road-wheel angle.</summary>
    public double? SteeringRatio { get; init; }

    /// <summary>The front axle.</summary>
    public Axle Front { get; init; } = Unstated;

    /// <summary>The rear axle.</summary>
    public Axle Rear { get; init; } = Unstated;

    /// <summary>One axle of the car.</summary>
    public Axle At(CarAxle axle) => axle == CarAxle.Front ? Front : Rear;

    /// <summary>Cautions about inputs of either axle's suspension and camber that can hardly be right.</summary>
    /// <param name="units">Units of the sentences.</param>
    /// <param name="place">JSON pointer of the car in the body.</param>
    public IReadOnlyList<Caution> SuspensionCautions(UnitSystem units = UnitSystem.Metric, string place = "/vehicle") =>
        [.. Front.Suspension.Cautions(place + "/front", units), .. Rear.Suspension.Cautions(place + "/rear", units), .. CamberCautions];

    /// <summary>Cautions about cambers whose sign is doubtful.</summary>
    public IEnumerable<Caution> CamberCautions =>
        new[] { CamberSign.Doubt("front", Front.Left.CamberDeg, Front.Right.CamberDeg), CamberSign.Doubt("rear", Rear.Left.CamberDeg, Rear.Right.CamberDeg) }.OfType<Caution>();

    /// <summary>The same car with another axle.</summary>
    public Vehicle With(CarAxle at, Axle axle) => at == CarAxle.Front ? this with { Front = axle } : this with { Rear = axle };

    /// <summary>The axle at the other end.</summary>
    public Axle Opposite(CarAxle axle) => axle == CarAxle.Front ? Rear : Front;
}

/// <summary>The shape of a car's body.</summary>
public enum CarBody
{
    /// <summary>Four doors and a boot.</summary>
    Sedan,

    /// <summary>Two doors and a low roof.</summary>
    Coupe,

    /// <summary>A tailgate, and hardly anything behind the rear axle.</summary>
    Hatchback,

    /// <summary>A tailgate and a long roof.</summary>
    Wagon,

    /// <summary>A roof that opens.</summary>
    Convertible,

    /// <summary>A tall car with ground clearance.</summary>
    Suv,

    /// <summary>A cab and an open bed.</summary>
    Pickup,

    /// <summary>A van or minivan.</summary>
    Van,
}

/// <summary>Which axle the engine drives.</summary>
public enum DrivenAxle
{
    /// <summary>The front axle.</summary>
    Front,

    /// <summary>The rear axle.</summary>
    Rear,

    /// <summary>Both axles.</summary>
    Both,
}
