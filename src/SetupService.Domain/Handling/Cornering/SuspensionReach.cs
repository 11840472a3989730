using SetupService.Domain.Handling.Cars;
using SetupService.Domain.Suspension;
using SetupService.Domain.Vehicles;

namespace SetupService.Domain.Handling.Cornering;

/// <summary>Finds the axles whose suspension does not reach the travel or steer of a turn.</summary>
public static class SuspensionReach
{
    /// <summary>
    /// The axles whose hardpoints or readings end before the travel or steer of a turn: without them the turn has a solution. Empty
    /// where it has none even then.
    /// </summary>
    public static IReadOnlyList<CarAxle> Lacking(HandlingCar car, in TurnPath path, double lateralG)
    {
        ArgumentNullException.ThrowIfNull(car);
        var lacking = new List<CarAxle>();
        foreach (var at in (ReadOnlySpan<CarAxle>)[CarAxle.Front, CarAxle.Rear])
        {
            if (IsReached(Free(car, at), path, lateralG)) lacking.Add(at);
        }

        return lacking.Count == 0 && IsReached(Free(Free(car, CarAxle.Front), CarAxle.Rear), path, lateralG) ? [CarAxle.Front, CarAxle.Rear] : lacking;
    }

    private static HandlingCar Free(HandlingCar car, CarAxle at) => car.With(at, car.At(at) with { Suspension = SuspensionModel.FromFigures });

    private static bool IsReached(HandlingCar car, in TurnPath path, double lateralG) =>
        CorneringSolver.Create(car, path.Turn) is { } solver && solver.Solve(path.At(lateralG)) is not CorneringFailure.TravelNotReached;
}
