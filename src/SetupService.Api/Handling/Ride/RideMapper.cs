using SetupService.Domain.Answers;
using SetupService.Domain.Handling.Cars;
using SetupService.Domain.Handling.Ride;
using SetupService.Domain.Numerics;
using SetupService.Domain.Vehicles;

namespace SetupService.Api.Handling.Ride;

/// <summary>One state of the car with how its axles ride and when they meet their stops.</summary>
/// <param name="Car">The car.</param>
/// <param name="Budget">The work allowed.</param>
internal sealed record RideEvaluation(StandingCar Car, WorkBudget Budget)
{
    private readonly Lazy<StopMetInTurn> _stopMet = new(() => StopMetInTurn.Compute(Car.Stands, Budget), LazyThreadSafetyMode.None);

    /// <summary>Both ends against each other.</summary>
    public FlatRide FlatRide => new(Rear.RideFrequencyHz / Front.RideFrequencyHz);

    /// <summary>Both ends against each other, as a sentence.</summary>
    public string FlatRideText => RideWords.Flat(FlatRide, IsMotionRatioAssumed(CarAxle.Front), IsMotionRatioAssumed(CarAxle.Rear));

    private bool IsMotionRatioAssumed(CarAxle at) => Reading.AssumedFor(HandlingInputs.For(at).MotionRatio) is not null;

    /// <summary>As stated.</summary>
    public Vehicle Stated => Car.Stated;

    /// <summary>As made ready, with what is assumed.</summary>
    public ResolvedHandlingCar Reading => Car.Reading;

    /// <summary>As it stands on its springs.</summary>
    public HandlingCar Stands => Car.Stands;

    /// <summary>Its front axle.</summary>
    public RideAxle Front => Car.Front;

    /// <summary>Its rear axle.</summary>
    public RideAxle Rear => Car.Rear;

    /// <summary>How much higher than before the change each end stands, mm; 0 without one, null where that is not known.</summary>
    public (double? Front, double? Rear) HeightMm => Car.HeightMm;

    /// <summary>Lateral acceleration at which an axle's outer wheel meets its stop, g; null where none is met or it is not known.</summary>
    public double? StopMetAtLateralG(CarAxle at) => at == CarAxle.Front ? _stopMet.Value.FrontG : _stopMet.Value.RearG;

    /// <summary>The car as given; null where its points hold no wheel.</summary>
    public static RideEvaluation? AsGiven(Vehicle stated, UnitSystem units, WorkBudget budget) => StandingCar.AsGiven(stated, units) is { } car ? new(car, budget) : null;

    /// <summary>The axle of another car that stands alike, as an assumed input is varied.</summary>
    public RideAxle? Varied(HandlingCar car, CarAxle at) => RideAxleBuilder.Build(car, at, Stated.At(at));
}
