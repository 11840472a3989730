namespace SetupService.Domain.Suspension.Steering;

/// <summary>What steering axes of road and competition cars lie within; beyond it a reading or a point is more likely wrong than right.</summary>
public static class UsualAxis
{
    /// <summary>Least caster, degrees (our choice).</summary>
    public const double LeastCasterDeg = -5;

    /// <summary>Greatest caster, degrees (our choice).</summary>
    public const double GreatestCasterDeg = 20;

    /// <summary>Least steering-axis inclination, degrees (our choice).</summary>
    public const double LeastInclinationDeg = -10;

    /// <summary>Greatest steering-axis inclination, degrees (our choice).</summary>
    public const double GreatestInclinationDeg = 40;

    /// <summary>Whether an axis lies within.</summary>
    public static bool Holds(double casterDeg, double inclinationDeg) =>
        casterDeg is >= LeastCasterDeg and <= GreatestCasterDeg && inclinationDeg is >= LeastInclinationDeg and <= GreatestInclinationDeg;
}
