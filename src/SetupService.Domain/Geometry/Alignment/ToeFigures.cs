namespace SetupService.Domain.Geometry.Alignment;

/// <summary>One toe in the three units the trade has for it; positive = toe-in.</summary>
/// <param name="Deg">Degrees.</param>
/// <param name="Minutes">Minutes of arc.</param>
/// <param name="Mm">Over the measuring diameter, mm.</param>
public readonly record struct ToeFigures(double Deg, double Minutes, double Mm)
{
    /// <summary>Of one wheel; null where its toe is not known. The diameter is above zero.</summary>
    public static ToeFigures? Compute(double? toeDeg, double measuringDiameterMm) => toeDeg is { } deg
        ? new(deg, ToeUnits.MinutesFromDegrees(deg), ToeUnits.MillimetresFromDegrees(deg, measuringDiameterMm))
        : null;

    /// <summary>The total of both wheels: each unit is the sum of both, since each wheel is measured by itself.</summary>
    public static ToeFigures operator +(ToeFigures left, ToeFigures right) =>
        new(left.Deg + right.Deg, left.Minutes + right.Minutes, left.Mm + right.Mm);
}
