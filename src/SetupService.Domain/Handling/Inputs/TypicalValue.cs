namespace SetupService.Domain.Handling.Inputs;

/// <summary>What a figure usually is.</summary>
/// <param name="Value">The value used where nobody gave one.</param>
/// <param name="Lower">Lower end of the range nine cars in ten lie in.</param>
/// <param name="Upper">Upper end of that range.</param>
/// <param name="Source">Where it comes from.</param>
public sealed record TypicalValue(double Value, double Lower, double Upper, string Source);
