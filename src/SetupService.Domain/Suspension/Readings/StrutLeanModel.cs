using SetupService.Domain.Numerics.LeastSquares;

namespace SetupService.Domain.Suspension.Readings;

/// <summary>
/// Camber over the top mount's movement inboard, radians over mm, of a strut that is rigid about its ball joint; a straight line
/// where its inclination is not known. Unknown are the camber where the mount stands now and how fast it falls there per mm.
/// </summary>
internal readonly ref struct StrutLeanModel(ReadOnlySpan<TopMountReading> readings, double? inclinationRad) : IFittedModel
{
    private readonly ReadOnlySpan<TopMountReading> _readings = readings;

    public int UnknownCount => 2;

    public int ReadingCount => _readings.Length;

    /// <summary>How much the camber falls at a movement, radians, and its derivatives by the rate and by the inclination.</summary>
    public static (double Fall, double PerRate, double PerInclination) FallAt(double inboardMm, double ratePerMm, double? inclinationRad)
    {
        if (inclinationRad is not { } leanRad) return (inboardMm * ratePerMm, inboardMm, 0);
        var tangent = Math.Tan(leanRad);
        var perCosine = 1 + (tangent * tangent);

        // With the height H the rate is cos² / H, so the axis' tangent grows by rate × movement / cos².
        var moved = ratePerMm * inboardMm * perCosine;
        var length = 1 + ((tangent + moved) * (tangent + moved));
        return (
            Math.Atan(tangent + moved) - leanRad,
            inboardMm * perCosine / length,
            ((perCosine + (2 * moved * tangent)) / length) - 1);
    }

    public bool TryEvaluate(int reading, scoped ReadOnlySpan<double> unknowns, scoped Span<double> gradient, out double residual)
    {
        var (fall, perRate, _) = FallAt(_readings[reading].InboardMm, unknowns[1], inclinationRad);
        gradient[0] = 1;
        gradient[1] = -perRate;
        residual = double.DegreesToRadians(_readings[reading].CamberDeg) - (unknowns[0] - fall);
        return double.IsFinite(residual);
    }
}
