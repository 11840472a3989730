namespace SetupService.Domain.Suspension.Readings;

/// <summary>Camber and toe as they are at ride height now, degrees; null for what the readings say.</summary>
/// <param name="CamberDeg">Camber.</param>
/// <param name="ToeDeg">Toe.</param>
public readonly record struct StatedAngles(double? CamberDeg, double? ToeDeg);
