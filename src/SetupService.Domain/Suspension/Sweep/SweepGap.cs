namespace SetupService.Domain.Suspension.Sweep;

/// <summary>A figure a sweep cannot give.</summary>
/// <param name="Output">The figure, as the contract names it.</param>
/// <param name="Reason">What is missing, or why there is none.</param>
public sealed record SweepGap(string Output, string Reason);
