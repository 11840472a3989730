using SetupService.Domain.Handling.Cars;

namespace SetupService.Domain.Handling.Cornering.Effects;

/// <summary>The car in a turn at both ends of an assumed input's plausible range, the other inputs unchanged.</summary>
/// <param name="Assumed">The input.</param>
/// <param name="AtLower">At the lower end; null where there is no equilibrium.</param>
/// <param name="AtUpper">At the upper end; null where there is no equilibrium.</param>
public sealed record CorneringEffect(AssumedInput Assumed, TurnFigures? AtLower, TurnFigures? AtUpper)
{
    /// <summary>The turn at both ends of every assumed input's range, one input at a time, by <see cref="EquilibriumDerivatives"/>; none of it where the turn itself has no equilibrium or the work allowed is spent.</summary>
    /// <param name="reading">The car.</param>
    /// <param name="solver">Its solver for the direction of the turn.</param>
    /// <param name="path">Radius or speed of the turn.</param>
    /// <param name="lateralG">Its lateral acceleration, g.</param>
    public static IReadOnlyList<CorneringEffect> Compute(ResolvedHandlingCar reading, CorneringSolver solver, in TurnPath path, double lateralG)
    {
        ArgumentNullException.ThrowIfNull(reading);
        ArgumentNullException.ThrowIfNull(solver);
        var nearby = solver.Solve(path.At(lateralG)) is null ? EquilibriumDerivatives.ForCorrections(solver, reading.Car, path, lateralG) : null;
        var list = new List<CorneringEffect>(reading.Assumed.Count);
        foreach (var one in reading.Assumed)
        {
            list.Add(Matters(one.Input) ? new(one, At(one, one.Lower), At(one, one.Upper)) : new(one, nearby?.Figures, nearby?.Figures));
        }

        return list;

        // A stop that is not met moves nothing.
        bool Matters(HandlingInput input) => HandlingInputs.CanMatter(input, reading.Car)
            && (!HandlingInputs.IsOfStop(input) || nearby is null || (nearby.Contacts & CorneringSolver.BumpContacts) != 0);

        TurnFigures? At(AssumedInput one, double value) => nearby?.With(one.Input.Put(reading.Car, value)) is { } other ? nearby.At(other) : null;
    }
}
