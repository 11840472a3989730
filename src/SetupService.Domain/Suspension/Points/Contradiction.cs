namespace SetupService.Domain.Suspension.Points;

/// <summary>Points that cannot all be meant.</summary>
/// <param name="Member">The point to look at first, as the contract names it below <c>points</c>; parts of a list with their place, as in <c>links[2].upright</c>.</param>
/// <param name="Message">What contradicts what, with the figures of the case.</param>
public sealed record Contradiction(string Member, string Message);
