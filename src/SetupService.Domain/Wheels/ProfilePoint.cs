namespace SetupService.Domain.Wheels;

/// <summary>One point of a profile turned about the spin axis, such as the inside of a wheel or the outside of a caliper.</summary>
/// <param name="StationMm">
/// Distance along the spin axis in mm from the face the profile is measured from (the wheel's mounting face, the hub's face);
/// positive outboard.
/// </param>
/// <param name="RadiusMm">Distance from the spin axis in mm.</param>
public readonly record struct ProfilePoint(double StationMm, double RadiusMm);
