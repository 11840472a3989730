using SetupService.Domain.Handling.Cars;
using SetupService.Domain.Numerics;

namespace SetupService.Domain.Handling.Cornering;

/// <summary>The car in a turn at both ends of an assumed input's plausible range.</summary>
/// <param name="Assumed">The input.</param>
/// <param name="AtLower">At the lower end; null where there is no equilibrium.</param>
/// <param name="AtUpper">At the upper end; null where there is no equilibrium.</param>
public sealed record CorneringEffect(AssumedInput Assumed, CorneringAttitude? AtLower, CorneringAttitude? AtUpper)
{
    /// <summary>Solves the turn at both ends of every assumed input's range, one input at a time; an end is null too where the work allowed is spent.</summary>
    public static IReadOnlyList<CorneringEffect> Compute(ResolvedHandlingCar reading, TurnPath path, double lateralG, WorkBudget? budget = null)
    {
        ArgumentNullException.ThrowIfNull(reading);
        return [.. reading.Assumed.Select(one => new CorneringEffect(one, With(one, one.Lower), With(one, one.Upper)))];

        CorneringAttitude? With(AssumedInput one, double value) => CorneringSolver.Create(one.Input.Put(reading.Car, value), path.Turn, budget) is { } solver
            ? SteadyTurn.SolveAttitude(solver, path.At(lateralG), out _)
            : null;
    }
}
