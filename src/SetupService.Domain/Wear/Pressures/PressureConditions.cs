namespace SetupService.Domain.Wear.Pressures;

/// <summary>What the pressures were read in.</summary>
/// <param name="ColdC">Temperature of the gas when the cold pressure was set, °C; null where it is not known.</param>
/// <param name="NextColdC">The same before the next session, °C; null where it is not known.</param>
/// <param name="AirKpa">Absolute pressure of the air, kPa.</param>
/// <param name="Errors">How closely all that is known.</param>
public readonly record struct PressureConditions(double? ColdC, double? NextColdC, double AirKpa, PressureErrors Errors);
