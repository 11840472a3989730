using SetupService.Domain.Suspension;
using SetupService.Domain.Suspension.Steering;
using SetupService.Domain.Vehicles;

namespace SetupService.Domain.Handling.Cars;

/// <summary>Finds at which axle a car's points hold no wheel.</summary>
public static class OpenHardpoints
{
    /// <summary>
    /// The axles whose points leave the wheel free, or do not close at the ride height asked for. Of a car that is otherwise complete; both
    /// axles' points are looked at even where one's fail.
    /// </summary>
    public static IReadOnlyList<CarAxle> Find(Vehicle vehicle)
    {
        ArgumentNullException.ThrowIfNull(vehicle);
        return [.. ((CarAxle[])[CarAxle.Front, CarAxle.Rear]).Where(at => !Holds(vehicle, at))];
    }

    private static bool Holds(Vehicle vehicle, CarAxle at)
    {
        var other = at == CarAxle.Front ? CarAxle.Rear : CarAxle.Front;
        if (HandlingCarBuilder.Build(vehicle.With(other, WithoutSuspension(vehicle.At(other)))) is not { } reading) return false;
        var axle = reading.Car.At(at);
        return axle.Suspension.MotionOf(axle.SetupOf(at, WheelSide.Left)) is not null && axle.Suspension.MotionOf(axle.SetupOf(at, WheelSide.Right)) is not null;
    }

    // Any track will do: nothing is computed of this axle.
    private static Axle WithoutSuspension(Axle axle) => axle with { Suspension = SuspensionModel.FromFigures, TrackMm = axle.TrackMm ?? 1500 };
}
