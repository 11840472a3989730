namespace SetupService.Domain.Suspension.Search;

/// <summary>What stands in the way of a target.</summary>
public enum Obstacle
{
    /// <summary>An adjuster is at its limit.</summary>
    Limit,

    /// <summary>The tyre's top is at the arch.</summary>
    ArchGap,

    /// <summary>Further on the suspension's parts do not close.</summary>
    Closure,

    /// <summary>What may be adjusted does not move the angle, or not without moving the other.</summary>
    NoEffect,
}
