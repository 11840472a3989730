namespace SetupService.Domain.Suspension.Search;

/// <summary>One thing that stands in the way of a target.</summary>
/// <param name="Obstacle">What.</param>
/// <param name="AdjusterIndex">The adjuster at its limit, by its place in what was asked; null for the others.</param>
public readonly record struct Hindrance(Obstacle Obstacle, int? AdjusterIndex);
