using SetupService.Domain.Answers;
using SetupService.Domain.Handling.Cars;
using SetupService.Domain.Handling.Ride;
using SetupService.Domain.Vehicles;

namespace SetupService.Api.Handling.Ride;

/// <summary>One state of the car with how its axles ride.</summary>
/// <param name="Stated">As stated.</param>
/// <param name="Reading">As made ready, with what is assumed.</param>
/// <param name="Stands">As it stands on its springs.</param>
/// <param name="Front">Its front axle.</param>
/// <param name="Rear">Its rear axle.</param>
internal sealed record RideEvaluation(Vehicle Stated, ResolvedHandlingCar Reading, HandlingCar Stands, RideAxle Front, RideAxle Rear)
{
    /// <summary>How much higher than before the change each end stands, mm; 0 without one, null where that is not known.</summary>
    public (double? Front, double? Rear) HeightMm { get; init; } = (0, 0);

    /// <summary>Both ends against each other.</summary>
    public FlatRide FlatRide => new(Rear.RideFrequencyHz / Front.RideFrequencyHz);

    private readonly double? _frontStopG = StopMetInTurn.LateralG(Stands, CarAxle.Front);
    private readonly double? _rearStopG = StopMetInTurn.LateralG(Stands, CarAxle.Rear);

    /// <summary>Lateral acceleration at which an axle's outer wheel meets its stop, g; null where none is met or it is not known.</summary>
    public double? StopMetAtLateralG(CarAxle at) => at == CarAxle.Front ? _frontStopG : _rearStopG;

    /// <summary>The car as given; null where its points hold no wheel.</summary>
    public static RideEvaluation? AsGiven(Vehicle stated, UnitSystem units) =>
        HandlingCarBuilder.Build(stated, units) is { } reading ? Create(stated, reading, reading.Car) : null;

    /// <summary>The car after a change, at the height its springs hold it; null where its points hold no wheel there.</summary>
    public RideEvaluation? Changed(Vehicle stated, UnitSystem units) =>
        HandlingCarBuilder.Build(stated, units) is { } reading && ChangedCar.Solve(Stands, Stated, reading.Car, stated) is { } settled
            && Create(WithoutOldLengths(stated), reading, settled.Car) is { } after
            ? after with { HeightMm = (settled.FrontHeightMm, settled.RearHeightMm) }
            : null;

    private Vehicle WithoutOldLengths(Vehicle stated) => stated with
    {
        Front = stated.Front with { Spring = SpringHeight.WithoutOldLength(Stated.Front.Spring, stated.Front.Spring) },
        Rear = stated.Rear with { Spring = SpringHeight.WithoutOldLength(Stated.Rear.Spring, stated.Rear.Spring) },
    };

    /// <summary>The axle of another car that stands alike, as an assumed input is varied.</summary>
    public RideAxle? Varied(HandlingCar car, CarAxle at) => RideAxleBuilder.Build(car, at, Stated.At(at));

    private static RideEvaluation? Create(Vehicle stated, ResolvedHandlingCar reading, HandlingCar stands) =>
        RideAxleBuilder.Build(stands, CarAxle.Front, stated.Front) is { } front && RideAxleBuilder.Build(stands, CarAxle.Rear, stated.Rear) is { } rear
            ? new RideEvaluation(stated, reading, stands, front, rear)
            : null;
}
