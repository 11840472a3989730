using SetupService.Domain.Vehicles;

namespace SetupService.Domain.Fitment.Cars;

/// <summary>
/// A car that many candidates are held against. What its axles' checks share is computed when an axle is first asked for; a car belongs to one thread at a time.
/// </summary>
/// <param name="vehicle">The car.</param>
/// <param name="axle">The axle a candidate for one axle goes on; null where it goes on both.</param>
/// <param name="settings">What the caller set. A camber change is one of <paramref name="axle"/> alone.</param>
public sealed class FitmentCar(Vehicle vehicle, CarAxle? axle, CheckSettings settings)
{
    private FitmentContext? _front;
    private FitmentContext? _rear;

    /// <summary>The car.</summary>
    public Vehicle Vehicle => vehicle;

    /// <summary>The axle a candidate for one axle goes on; null where it goes on both.</summary>
    public CarAxle? Axle => axle;

    /// <summary>One axle, ready for checks.</summary>
    public FitmentContext At(CarAxle at) => at == CarAxle.Front ? _front ??= Prepare(at) : _rear ??= Prepare(at);

    private FitmentContext Prepare(CarAxle at) => FitmentContext.Prepare(vehicle, at, at == axle ? settings : settings with { CamberChange = null });
}

/// <summary>What is to be put on a car: one wheel and tyre for the axle the car names, else for all four corners; or one for the front, the rear or each.</summary>
public readonly record struct CarCandidate
{
    // A fitting without a wheel is none.
    private readonly Fitting _front;
    private readonly Fitting _rear;

    /// <summary>A wheel and tyre for the axle the car names, and for both axles where it names none.</summary>
    public CarCandidate(in Fitting fitting) => _front = _rear = fitting;

    /// <summary>What goes on each axle; null where that stays as it is. One of them at least is given.</summary>
    public CarCandidate(in Fitting? front, in Fitting? rear)
    {
        _front = front.GetValueOrDefault();
        _rear = rear.GetValueOrDefault();
        NamesAxles = true;
    }

    /// <summary>True where the candidate itself says which axle each wheel and tyre goes on.</summary>
    internal bool NamesAxles { get; }

    /// <summary>True where the whole car is asked about, because axles are named by the candidate or by nobody.</summary>
    public bool IsWhole(FitmentCar car)
    {
        ArgumentNullException.ThrowIfNull(car);
        return NamesAxles || car.Axle is null;
    }

    /// <summary>What goes on an axle of a car; null where nothing does.</summary>
    public Fitting? On(FitmentCar car, CarAxle axle)
    {
        ArgumentNullException.ThrowIfNull(car);
        return !NamesAxles && car.Axle is { } named && named != axle ? null : At(axle);
    }

    /// <summary>What may go on an axle of any car; null where nothing does.</summary>
    internal Fitting? At(CarAxle axle)
    {
        var fitting = axle == CarAxle.Front ? _front : _rear;
        return fitting.Wheel is null ? null : fitting;
    }
}
