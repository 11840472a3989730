namespace SetupService.Domain.Suspension.Readings;

/// <summary>Camber, and toe where it was read, at one wheel travel.</summary>
/// <param name="TravelMm">Wheel centre's height against the body less that at ride height, mm; positive = bump.</param>
/// <param name="CamberDeg">Camber against the body, degrees; negative = top inboard.</param>
/// <param name="ToeDeg">Toe, degrees; positive = toe-in. Null where it was not read.</param>
public readonly record struct TravelReading(double TravelMm, double CamberDeg, double? ToeDeg = null);
