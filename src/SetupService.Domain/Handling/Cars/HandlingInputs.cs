using SetupService.Domain.Vehicles;

namespace SetupService.Domain.Handling.Cars;

/// <summary>
/// The one list of the scalars the handling model takes: it serves the defaults, the assumptions of an answer, its sensitivities and
/// its interval.
/// </summary>
public static class HandlingInputs
{
    /// <summary>Height of the centre of gravity, mm.</summary>
    public static HandlingInput CentreOfGravityHeight { get; } = new(
        "/centreOfGravityHeightMm", "Mm", car => car.CentreOfGravityHeightMm, (car, value) => car with { CentreOfGravityHeightMm = value }, 0, 15);

    /// <summary>The front axle's.</summary>
    public static AxleInputList Front { get; } = new(CarAxle.Front);

    /// <summary>The rear axle's.</summary>
    public static AxleInputList Rear { get; } = new(CarAxle.Rear);

    /// <summary>All.</summary>
    public static IReadOnlyList<HandlingInput> All { get; } = [CentreOfGravityHeight, .. Front.All, .. Rear.All];

    /// <summary>Those of one axle.</summary>
    public static AxleInputList For(CarAxle axle) => axle == CarAxle.Front ? Front : Rear;
}
