using SetupService.Domain.Handling.Cars;
using SetupService.Domain.Numerics;

namespace SetupService.Domain.Handling.Cornering;

/// <summary>
/// The one scale of grip of a request, found on the car as given and kept for every row and change: by the lateral acceleration the car was measured to hold, else by
/// what its tyres are made for, else as typical.
/// </summary>
/// <param name="Factor">On the friction of all four tyres.</param>
/// <param name="HeldLateralG">What the car was measured to hold, g; null where that is not known.</param>
/// <param name="StandsToG">The hardest turn in which the car has an equilibrium, g, where that is less than what it is said to hold; else null.</param>
public readonly record struct GripScale(double Factor, double? HeldLateralG = null, double? StandsToG = null)
{
    // Just below where the equilibrium ends, g.
    private const double JustShortG = 0.01;

    // How closely somebody knows what his car holds, g (90 %); common practice, no source.
    private const double HeldErrorG = 0.05;

    /// <summary>Grip as the tyres' categories have it.</summary>
    public static GripScale ByTyres => new(1);

    /// <summary>Finds the scale; null where the work allowed is spent or the points do not close. The car's own scale does not count.</summary>
    /// <param name="car">The car as given.</param>
    /// <param name="path">The path at whose radius or speed it was measured.</param>
    /// <param name="heldLateralG">What it was measured to hold, g, above 0; null = not known.</param>
    /// <param name="budget">Work allowed; null = any.</param>
    public static GripScale? Find(HandlingCar car, in TurnPath path, double? heldLateralG, WorkBudget? budget = null)
    {
        ArgumentNullException.ThrowIfNull(car);
        if (heldLateralG is not { } held) return ByTyres;
        if (CorneringSolver.Create(car with { GripFactor = 1 }, path.Turn, budget) is not { } solver) return null;
        var failure = solver.SolveScaled(path.At(held), 1, out var factor);
        if (failure is not null && solver.Solve(path.At(held)) is null) failure = solver.SolveScaled(path.At(held), 1, out factor);
        if (failure is null) return new(factor, held);

        // The car does not stand so hard a turn: what its tyres hold is in proportion to the hardest it does.
        if (failure is CorneringFailure.WorkSpent) return null;
        var limitG = RollOver.LimitG(solver, path, held);
        var atG = limitG - JustShortG;
        return atG > 0 && solver.SolveScaled(path.At(atG), held / atG, out factor) is null ? new(factor, held, limitG) : null;
    }

    /// <summary>The car on this scale, with its range among what is assumed.</summary>
    public ResolvedHandlingCar Apply(ResolvedHandlingCar reading)
    {
        ArgumentNullException.ThrowIfNull(reading);
        var car = reading.Car with { GripFactor = Factor };
        if (HeldLateralG is not { } held) return reading with { Car = car };
        var share = Math.Min(0.5, HeldErrorG / held);
        AssumedInput known = new(HandlingInputs.Grip, Factor, (1 - share) * Factor, (1 + share) * Factor, "heldLateralG",
            "Value is a factor on the friction of all four tyres, with which the car as given holds what heldLateralG says; its range is 0.05 g of that.");
        return reading with { Car = car, Assumed = [.. reading.Assumed.Where(one => !ReferenceEquals(one.Input, HandlingInputs.Grip)), known] };
    }
}
