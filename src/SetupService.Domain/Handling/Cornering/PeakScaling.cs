namespace SetupService.Domain.Handling.Cornering;

/// <summary>How far the tyres' peak may be scaled.</summary>
/// <param name="Least">At least this.</param>
/// <param name="IsHeld">Exactly that.</param>
internal readonly record struct PeakScaling(double Least, bool IsHeld);
