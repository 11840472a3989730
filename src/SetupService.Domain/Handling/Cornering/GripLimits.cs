using SetupService.Domain.Vehicles;

namespace SetupService.Domain.Handling.Cornering;

/// <summary>
/// What each axle of a car can hold. An axle's limit is the lateral acceleration at which its share of the mass needs the most its two tyres give at one slip angle, the
/// attitude solved with the other axle supplying what it needs. Method page: docs/methods/cornering.
/// </summary>
/// <param name="Front">The front axle's.</param>
/// <param name="Rear">The rear axle's.</param>
public readonly record struct GripLimits(AxleLimit Front, AxleLimit Rear)
{
    /// <summary>The rear's limit less the front's, g: positive where the front gives up first. Null where either is not known.</summary>
    public double? MarginG => Rear.LimitG - Front.LimitG;

    /// <summary>The lower of both limits, g, or the only one known; null where neither is.</summary>
    public double? LowerG => Front.LimitG is { } front && Rear.LimitG is { } rear ? Math.Min(front, rear) : Front.LimitG ?? Rear.LimitG;

    /// <summary>One axle's.</summary>
    public AxleLimit At(CarAxle axle) => axle == CarAxle.Front ? Front : Rear;

    /// <summary>Finds both limits along a path, whose radius or speed stays; allocates nothing.</summary>
    /// <param name="solver">The car's solver for the path's direction.</param>
    /// <param name="path">The path.</param>
    /// <param name="guessG">Where to begin, g, above 0.</param>
    public static GripLimits Solve(CorneringSolver solver, in TurnPath path, double guessG)
    {
        ArgumentNullException.ThrowIfNull(solver);
        var search = new LimitSearch(solver, path, guessG);
        var front = search.Find(CarAxle.Front);
        return new(front, search.Find(CarAxle.Rear));
    }

    /// <summary>Finds one axle's limit alone; allocates nothing.</summary>
    /// <param name="solver">The car's solver for the path's direction.</param>
    /// <param name="path">The path.</param>
    /// <param name="guessG">Where to begin, g, above 0.</param>
    /// <param name="axle">Which axle's.</param>
    internal static AxleLimit Solve(CorneringSolver solver, in TurnPath path, double guessG, CarAxle axle) => new LimitSearch(solver, path, guessG).Find(axle);
}

/// <summary>What one axle can hold.</summary>
/// <param name="LimitG">Lateral acceleration, g; null where the car has no equilibrium up to there.</param>
/// <param name="EndedBy">Why it has none; null where it has.</param>
/// <param name="StandsToG">The hardest turn that was looked at and has an equilibrium, g.</param>
public readonly record struct AxleLimit(double? LimitG, CorneringFailure? EndedBy, double StandsToG);
