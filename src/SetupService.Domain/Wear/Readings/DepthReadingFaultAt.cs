namespace SetupService.Domain.Wear.Readings;

/// <summary>One thing wrong with readings.</summary>
/// <param name="Fault">What.</param>
/// <param name="Reading">Zero-based index of the reading.</param>
/// <param name="Place">The zone; null where a clock is at fault.</param>
/// <param name="Value">What was read, in its own unit.</param>
/// <param name="Before">What it contradicts: the reading before, or the new depth.</param>
/// <param name="AllowedMm">How much deeper the gauge's error allows, mm; 0 for a clock.</param>
public readonly record struct DepthReadingFaultAt(DepthReadingFault Fault, int Reading, TreadPlace? Place, double Value, double Before, double AllowedMm);
