using SetupService.Domain.Answers;

namespace SetupService.Domain.Suspension.Search;

/// <summary>One limit that keeps a search from its target.</summary>
/// <param name="Obstacle">What kind of limit.</param>
/// <param name="AdjusterIndex">The adjuster at its limit, by its place in what was asked; null for the others.</param>
public readonly record struct BindingLimit(Obstacle Obstacle, int? AdjusterIndex);

/// <summary>Says in words which limit keeps a search from its target.</summary>
public static class BindingLimitWords
{
    /// <summary>The sentence.</summary>
    /// <param name="limit">The limit.</param>
    /// <param name="name">The adjuster as the contract names it; not used for the others.</param>
    /// <param name="amount">Where the adjuster stands, mm or degrees.</param>
    /// <param name="isAngle">Whether its amounts are degrees.</param>
    /// <param name="units">Units of the sentence.</param>
    public static string Describe(BindingLimit limit, string? name, double amount, bool isAngle, UnitSystem units) => limit.Obstacle switch
    {
        Obstacle.Limit when isAngle => Prose.Write(units, $"{name} is at its limit of {amount:deg}; beyond it the angles would come nearer to the target."),
        Obstacle.Limit => Prose.Write(units, $"{name} is at its limit of {amount:mm}; beyond it the angles would come nearer to the target."),
        Obstacle.ArchGap => "The tyre's top has used up the gap to the arch.",
        Obstacle.Closure => "Adjusted further the suspension's parts do not meet any more.",
        _ => "What may be adjusted does not move the angle wanted, or not without moving the other one away.",
    };
}
