using SetupService.Domain.Handling.Cars;
using SetupService.Domain.Suspension;
using SetupService.Domain.Suspension.Steering;
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

    /// <summary>
    /// The wheel whose suspension does not reach the travel it would have if it moved on evenly, else the one at which the search ended; null where it is not travel that keeps the turn
    /// from being solved.
    /// </summary>
    public static WheelReach? Find(HandlingCar car, in TurnPath path, double lateralG)
    {
        ArgumentNullException.ThrowIfNull(car);
        if (CorneringSolver.Create(car, path.Turn) is not { } solver) return null;
        var demand = path.At(lateralG);
        foreach (var free in (ReadOnlySpan<HandlingCar>)[Free(car, CarAxle.Front), Free(car, CarAxle.Rear), Free(Free(car, CarAxle.Front), CarAxle.Rear)])
        {
            if (CorneringSolver.Create(free, path.Turn) is not { } moved || moved.Solve(demand) is not null) continue;
            var wanted = moved.Attitude(demand);
            if ((solver.NotReached(CarAxle.Front, wanted) ?? solver.NotReached(CarAxle.Rear, wanted)) is { } reach) return reach;
        }

        return solver.Solve(demand) is CorneringFailure.TravelNotReached ? solver.Missed : null;
    }

    private static HandlingCar Free(HandlingCar car, CarAxle at) => car.With(at, car.At(at) with { Suspension = SuspensionModel.FromFigures });

    private static bool IsReached(HandlingCar car, in TurnPath path, double lateralG) =>
        CorneringSolver.Create(car, path.Turn) is { } solver && solver.Solve(path.At(lateralG)) is not CorneringFailure.TravelNotReached;
}

/// <summary>A wheel that would have to travel further than it can, or than is known of it.</summary>
/// <param name="Axle">Its axle.</param>
/// <param name="Side">Its side.</param>
/// <param name="TravelMm">The travel it needs from where its suspension is stated, mm; positive = bump.</param>
/// <param name="ReachMm">How far it comes that way: its points close, or its readings and what they are extended by tell of it, mm.</param>
/// <param name="IsOfPoints">True where points do not close further; false where readings end.</param>
public readonly record struct WheelReach(CarAxle Axle, WheelSide Side, double TravelMm, double ReachMm, bool IsOfPoints = false)
{
    /// <summary>Its place on the car.</summary>
    public WheelPosition Position => (Axle, Side) switch
    {
        (CarAxle.Front, WheelSide.Left) => WheelPosition.FrontLeft,
        (CarAxle.Front, _) => WheelPosition.FrontRight,
        (_, WheelSide.Left) => WheelPosition.RearLeft,
        _ => WheelPosition.RearRight,
    };
}
