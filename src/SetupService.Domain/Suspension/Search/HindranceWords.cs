using SetupService.Domain.Answers;

namespace SetupService.Domain.Suspension.Search;

/// <summary>Says what stands in the way of a target.</summary>
public static class HindranceWords
{
    /// <summary>The sentence.</summary>
    /// <param name="hindrance">What.</param>
    /// <param name="name">The adjuster as the contract names it; not used for the others.</param>
    /// <param name="amount">Where the adjuster stands, mm or degrees.</param>
    /// <param name="isAngle">Whether its amounts are degrees.</param>
    public static string Of(Hindrance hindrance, string? name, double amount, bool isAngle) => hindrance.Obstacle switch
    {
        Obstacle.Limit when isAngle => Prose.Write(UnitSystem.Metric, $"{name} is at its limit of {amount:deg}; beyond it the angles would come nearer to the target."),
        Obstacle.Limit => Prose.Write(UnitSystem.Metric, $"{name} is at its limit of {amount:mm}; beyond it the angles would come nearer to the target."),
        Obstacle.ArchGap => "The tyre's top has used up the gap to the arch.",
        Obstacle.Closure => "Adjusted further the suspension's parts do not meet any more.",
        _ => "What may be adjusted does not move the angle wanted, or not without moving the other one away.",
    };
}
