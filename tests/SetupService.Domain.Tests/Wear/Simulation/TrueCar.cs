using SetupService.Domain.Vehicles;

namespace SetupService.Domain.Tests.Wear.Simulation;

/// <summary>How a car truly is and was used.</summary>
internal sealed record TrueCar
{
    public required TrueAxle Front { get; init; }

    public required TrueAxle Rear { get; init; }

    public required TrueUse Use { get; init; }

    public required DrivenAxle DrivenAxle { get; init; }

    public TrueAxle At(CarAxle axle) => axle == CarAxle.Front ? Front : Rear;

    public TrueCar With(CarAxle at, TrueAxle axle) => at == CarAxle.Front ? this with { Front = axle } : this with { Rear = axle };
}
