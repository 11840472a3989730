namespace SetupService.Domain.Handling.CamberTarget;

/// <summary>The static camber wanted with another caster.</summary>
/// <param name="CasterDeg">Caster, degrees.</param>
/// <param name="StaticCamberDeg">Static camber, degrees; null where a corner has no equilibrium.</param>
public readonly record struct CamberForCaster(double CasterDeg, double? StaticCamberDeg);
