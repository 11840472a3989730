using SetupService.Domain.Vehicles;

namespace SetupService.Domain.Wear.Diagnosis;

/// <summary>Readings that cannot well be true together, or that no cause explains.</summary>
/// <param name="Position">The tyre they are of; null = of the whole car.</param>
/// <param name="Text">What contradicts what, as a sentence.</param>
public sealed record ReadingContradiction(WheelPosition? Position, string Text);
