using SetupService.Domain.Handling.Cars;
using SetupService.Domain.Handling.Cornering;
using SetupService.Domain.Numerics;
using SetupService.Domain.Vehicles;

namespace SetupService.Domain.Handling.Ride;

/// <summary>How hard the car may turn before an axle's outer wheel meets its bump stop.</summary>
public static class StopMetInTurn
{
    private const double HardestG = 3;
    private const double AgreedG = 1e-4;

    // A radius at which steer is small; the stop does not depend on it.
    private const double RadiusM = 60;

    /// <summary>The lateral acceleration, g; null where no stop is known, the car has no wheelbase, or it rolls over first, or the work allowed is spent.</summary>
    public static double? LateralG(HandlingCar car, CarAxle axle, WorkBudget? budget = null)
    {
        ArgumentNullException.ThrowIfNull(car);
        if (car.At(axle).BumpLeftMm is not { } left || car.WheelbaseMm is null || CorneringSolver.Create(car, TurnDirection.Left, budget) is not { } solver) return null;
        if (left <= 0) return 0;
        var (clear, met) = (0.0, HardestG);
        var isMet = false;
        while (met - clear > AgreedG)
        {
            var middle = (clear + met) / 2;
            var failure = solver.Solve(middle, RadiusM);
            if (failure is CorneringFailure.WorkSpent) return null;
            var failed = failure is not null;
            if (!failed && solver.Attitude(new(middle, RadiusM, TurnDirection.Left)).Outer(axle).BumpLeftMm > 0)
            {
                clear = middle;
            }
            else
            {
                met = middle;
                isMet |= !failed;
            }
        }

        return isMet ? met : null;
    }
}
