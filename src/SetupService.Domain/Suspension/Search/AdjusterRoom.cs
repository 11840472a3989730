namespace SetupService.Domain.Suspension.Search;

/// <summary>An adjuster that may be used, and how far.</summary>
/// <param name="Adjustment">What; its amount is not used.</param>
/// <param name="Minimum">The least amount, mm or degrees.</param>
/// <param name="Maximum">The greatest amount, mm or degrees.</param>
public readonly record struct AdjusterRoom(Adjustment Adjustment, double Minimum, double Maximum);
