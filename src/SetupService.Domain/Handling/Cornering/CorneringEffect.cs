using SetupService.Domain.Handling.Cars;
using SetupService.Domain.Handling.Inputs;

namespace SetupService.Domain.Handling.Cornering;

/// <summary>How the car would stand in a turn at both ends of the range an assumed input plausibly lies in.</summary>
/// <param name="Assumed">The input.</param>
/// <param name="AtLower">At the lower end; null where there is no equilibrium.</param>
/// <param name="AtUpper">At the upper end; null where there is no equilibrium.</param>
public sealed record CorneringEffect(AssumedInput Assumed, CorneringAttitude? AtLower, CorneringAttitude? AtUpper)
{
    /// <summary>Works a turn anew for both ends of every assumed input's range, the others as they are: every output moves by one solution.</summary>
    public static IReadOnlyList<CorneringEffect> Compute(ResolvedHandlingCar reading, TurnPath path, double lateralG, double? heldLateralG)
    {
        ArgumentNullException.ThrowIfNull(reading);
        return [.. reading.Assumed.Select(one => new CorneringEffect(one, With(one, one.Lower), With(one, one.Upper)))];

        CorneringAttitude? With(AssumedInput one, double value) => CorneringSolver.Create(one.Input.Put(reading.Car, value), path.Turn) is { } solver
            ? SteadyTurn.SolveAttitude(solver, path.At(lateralG), heldLateralG, out _)
            : null;
    }
}
