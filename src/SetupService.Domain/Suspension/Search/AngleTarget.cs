namespace SetupService.Domain.Suspension.Search;

/// <summary>The angles wanted, degrees; null where one may come out as it does.</summary>
/// <param name="CamberDeg">Camber.</param>
/// <param name="CasterDeg">Caster.</param>
/// <param name="ToeDeg">Toe of the wheel.</param>
public readonly record struct AngleTarget(double? CamberDeg, double? CasterDeg, double? ToeDeg = null)
{
    /// <summary>Angles closer than this to the target meet it, degrees.</summary>
    public const double ToleranceDeg = 1e-6;
}
