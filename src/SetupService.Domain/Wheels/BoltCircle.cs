using System.Globalization;
using SetupService.Domain.Answers;

namespace SetupService.Domain.Wheels;

/// <summary>The circle through the centres of the wheel's fastener holes.</summary>
/// <param name="HoleCount">How many holes, 3 to 10 as read.</param>
/// <param name="DiameterMm">Diameter of the circle in mm, 80 to 300 as read.</param>
public sealed record BoltCircle(int HoleCount, double DiameterMm)
{
    /// <summary>
    /// How far two diameters may differ in writing and still be the same circle: 0.35 mm, because the trade writes 114 for
    /// 114.3 and 108 for 107.95. The nearest different circles in use, 120 and 120.65, stay apart. Common practice, no source.
    /// </summary>
    public const double MatchToleranceMm = 0.35;

    /// <summary>The second circle of a wheel drilled for two, as in 4x100/4x108; null where there is one.</summary>
    public BoltCircle? Second { get; init; }

    private string Inches => Second is null
        ? Prose.Write(UnitSystem.Us, $"{HoleCount}x{DiameterMm:gap}")
        : Prose.Write(UnitSystem.Us, $"{HoleCount}x{DiameterMm:gap} or {Second.Inches}");

    /// <summary>
    /// True when this and another are the same circle: equal counts, diameters within <see cref="MatchToleranceMm"/>. Of a wheel drilled for two, one of
    /// them is enough.
    /// </summary>
    public bool Matches(BoltCircle other)
    {
        ArgumentNullException.ThrowIfNull(other);
        return IsSame(other) || Second?.Matches(other) == true || (other.Second is { } second && Matches(second));
    }

    /// <summary>Of a wheel drilled for two, the circle that matches another; the first where none does, or there is one.</summary>
    public BoltCircle For(BoltCircle other)
    {
        ArgumentNullException.ThrowIfNull(other);
        return Second is { } second && !IsSame(other) && second.Matches(other) ? second : this;
    }

    /// <summary>As people write it: 5x114.3, or 4x100/4x108.</summary>
    public override string ToString() => Second is null
        ? string.Create(CultureInfo.InvariantCulture, $"{HoleCount}x{DiameterMm}")
        : string.Create(CultureInfo.InvariantCulture, $"{HoleCount}x{DiameterMm}/{Second}");

    /// <summary>As people of a country write it: in US units by the diameter in inches, 5x4.5 in, with what is stamped on the wheel behind, (5x114.3).</summary>
    public string ToString(UnitSystem units) => units == UnitSystem.Metric ? ToString() : $"{Inches} ({this})";

    private bool IsSame(BoltCircle other) => HoleCount == other.HoleCount && Math.Abs(DiameterMm - other.DiameterMm) <= MatchToleranceMm;
}
