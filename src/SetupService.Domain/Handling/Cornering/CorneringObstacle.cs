namespace SetupService.Domain.Handling.Cornering;

/// <summary>Why a car has no equilibrium in a turn, and how far it would have one.</summary>
/// <param name="Failure">Why.</param>
/// <param name="LateralG">At which lateral acceleration, g: the turn's, or what the tyres are said to hold.</param>
/// <param name="IsAtHeld">Whether it is what the tyres are said to hold that has no equilibrium.</param>
/// <param name="LimitG">Up to which lateral acceleration along the same path there is an equilibrium, g.</param>
/// <param name="IsUnloadedThere">Whether at that limit hardly anything is left on the inner wheels; else it is the balance itself that ends there.</param>
public readonly record struct CorneringObstacle(CorneringFailure Failure, double LateralG, bool IsAtHeld, double LimitG, bool IsUnloadedThere)
{
    /// <summary>The outer wheel that would have to travel beyond what was read of it; null where that is not why.</summary>
    public WheelReach? BeyondReadings { get; init; }
}
