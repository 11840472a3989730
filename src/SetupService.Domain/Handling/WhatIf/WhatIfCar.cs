using SetupService.Domain.Handling.Cars;
using SetupService.Domain.Vehicles;

namespace SetupService.Domain.Handling.WhatIf;

/// <summary>One state of the car.</summary>
/// <param name="Stated">As stated.</param>
/// <param name="Reading">As made ready for the model.</param>
public sealed record WhatIfCar(Vehicle Stated, ResolvedHandlingCar Reading)
{
    /// <summary>Makes a car ready; null where it lacks something or its points make no corner.</summary>
    public static WhatIfCar? Create(Vehicle stated) => HandlingCarBuilder.Build(stated) is { } reading ? new(stated, reading) : null;
}
