using SetupService.Domain.Handling.Cars;
using SetupService.Domain.Numerics;
using SetupService.Domain.Vehicles;

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
    // How far the logarithm of the scale may be off where it is taken as found, and where a last secant from there leaves that at most.
    private const double Agreed = 1e-10;
    private const double NearlyAgreed = 1e-5;
    private const int MostTries = 30;

    // A secant is followed where its slope is one that grip by friction can have; else grip is taken as in proportion to friction.
    private const double LeastSlope = 0.3;
    private const double GreatestSlope = 3;

    // Further off than this the turn is only passed.
    private const double Near = 1e-3;

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
        var (factor, atG) = (1.0, held);
        double? standsTo = null;
        CorneringSolver? last = null;
        (double Log, double Off)? before = null;
        var isNear = false;
        for (var tries = 0; tries < MostTries; tries++)
        {
            // The attitude hardly hangs on friction: the last one's is the next one's but for slip.
            var scaled = car with { GripFactor = factor };
            if ((last is null ? CorneringSolver.Create(scaled, path.Turn, budget) : last.With(scaled)) is not { } solver) return null;
            last = solver;
            if (solver.Solve(path.At(atG), isNear ? CorneringSolver.Tolerance : CorneringSolver.RoughTolerance) is { } failure)
            {
                if (failure is CorneringFailure.WorkSpent || standsTo is not null) return null;
                var limitG = RollOver.LimitG(solver, path, atG);
                atG = limitG - JustShortG;
                if (atG <= 0) return null;
                standsTo = limitG;
                before = null;
                continue;
            }

            // What the tyres hold in an attitude is as good as in proportion to their friction; what of it the car was measured to hold is in proportion to the turn.
            var (log, off) = (Math.Log(factor), Math.Log(Math.Max(solver.GripUsed(CarAxle.Front), solver.GripUsed(CarAxle.Rear)) * held / atG));
            var slope = before is { } one ? (off - one.Off) / (log - one.Log) : -1;
            var isSecant = before is not null && slope is >= -GreatestSlope and <= -LeastSlope;
            factor = Math.Exp(log - (off / (isSecant ? slope : -1)));
            if (Math.Abs(off) <= (isSecant && isNear ? NearlyAgreed : Agreed)) break;
            before = (log, off);
            isNear = Math.Abs(off) <= Near;
        }

        return new(factor, held, standsTo);
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
