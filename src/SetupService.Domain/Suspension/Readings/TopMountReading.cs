namespace SetupService.Domain.Suspension.Readings;

/// <summary>Camber with a strut's top mount moved across the car.</summary>
/// <param name="InboardMm">How far it was moved, mm; positive = inboard.</param>
/// <param name="CamberDeg">Camber there, degrees; negative = top inboard.</param>
public readonly record struct TopMountReading(double InboardMm, double CamberDeg);
