namespace SetupService.Domain.Vehicles;

/// <summary>Load on each wheel's scale, kg, of the whole car as driven, level; what was not read is null.</summary>
/// <param name="FrontLeftKg">Front left wheel.</param>
/// <param name="FrontRightKg">Front right wheel.</param>
/// <param name="RearLeftKg">Rear left wheel.</param>
/// <param name="RearRightKg">Rear right wheel.</param>
public sealed record CornerWeights(double? FrontLeftKg, double? FrontRightKg, double? RearLeftKg, double? RearRightKg);
