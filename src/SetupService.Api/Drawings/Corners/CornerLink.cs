namespace SetupService.Api.Drawings.Corners;

/// <summary>A line between two points of a corner.</summary>
/// <param name="From">One end.</param>
/// <param name="To">The other end.</param>
/// <param name="Part">What the line is part of.</param>
public sealed record CornerLink(CornerPoint From, CornerPoint To, CornerPart Part);
