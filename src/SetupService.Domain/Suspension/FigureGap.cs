namespace SetupService.Domain.Suspension;

/// <summary>A figure that cannot be given.</summary>
/// <param name="Output">The figure, as the contract names it.</param>
/// <param name="Reason">What is missing, or why there is none.</param>
public sealed record FigureGap(string Output, string Reason);
