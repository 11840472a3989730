using SetupService.Domain.Answers;
using SetupService.Domain.Numerics.LeastSquares;

namespace SetupService.Domain.Suspension.Readings;

/// <summary>
/// What readings with the top mount moved tell: how camber goes with its place, and from that the height of the mount above the
/// ball joint that acts. Without an inclination the fit is a straight line and there is no height. Derivation in
/// docs/methods/measured-corner.md.
/// </summary>
public readonly record struct TopMountFit
{
    /// <summary>
    /// Standard deviation of what the model itself leaves open in a change of caster, as a share of it: a strut does not quite turn about its
    /// ball joint, and the height found by moving the mount inboard is not quite the one that acts rearward. A judgement by struts solved
    /// from points, toe set again or not, in docs/methods/measured-corner.md.
    /// </summary>
    public const double CasterModelErrorShare = 0.045;

    private readonly Estimate? _inclinationRad;
    private readonly Estimate _ratePerMm;

    private TopMountFit(Estimate? inclinationRad, Estimate ratePerMm)
    {
        _inclinationRad = inclinationRad;
        _ratePerMm = ratePerMm;
        var surplus = ratePerMm.Value - (Uncertainty.StandardErrorsAtNinetyPct * ratePerMm.StandardError);
        IsWrongWay = ratePerMm.Value + (Uncertainty.StandardErrorsAtNinetyPct * ratePerMm.StandardError) < 0;
        HeightGap = inclinationRad is null ? MeasuredGap.InclinationNotKnown
            : IsWrongWay ? MeasuredGap.TopMountWrongWay
            : surplus <= 0 ? MeasuredGap.TopMountMovedTooLittle
            : null;
    }

    /// <summary>Whether camber rises with the mount moved inboard by more than the gauge's error, which no strut does.</summary>
    public bool IsWrongWay { get; }

    /// <summary>Why there is no height; null where there is one.</summary>
    public MeasuredGap? HeightGap { get; }

    /// <summary>
    /// The vertical distance from ball joint to top mount that explains the readings, mm; null where <see cref="HeightGap"/> says
    /// why. A few percent less than the drawn one where the strut's sliding axis passes beside the ball joint.
    /// </summary>
    public Estimate? EffectiveHeightMm
    {
        get
        {
            if (HeightGap is not null || _inclinationRad is not { } inclination) return null;
            var cosine = Math.Cos(inclination.Value);
            var heightMm = cosine * cosine / _ratePerMm.Value;
            return new(heightMm, heightMm * Math.Sqrt(
                Square(_ratePerMm.StandardError / _ratePerMm.Value) + Square(2 * Math.Tan(inclination.Value) * inclination.StandardError)));
        }
    }

    /// <summary>
    /// Fits readings in any order; null where they stand at fewer than two places <see cref="TravelCurve.SameHeightMm"/> apart or
    /// are no numbers. The inclination is that with the mount where it stands now, degrees, under 90 in size.
    /// </summary>
    public static TopMountFit? From(ReadOnlySpan<TopMountReading> readings, Estimate? inclinationDeg, double gaugeErrorDeg)
    {
        var (leastMm, mostMm) = (double.PositiveInfinity, double.NegativeInfinity);
        foreach (var reading in readings)
        {
            (leastMm, mostMm) = (Math.Min(leastMm, reading.InboardMm), Math.Max(mostMm, reading.InboardMm));
        }

        if (!(mostMm - leastMm >= TravelCurve.SameHeightMm)) return null;
        Estimate? inclinationRad = inclinationDeg is { } given
            ? new(double.DegreesToRadians(given.Value), double.DegreesToRadians(given.StandardError))
            : null;
        Span<double> unknowns = [double.DegreesToRadians(readings[0].CamberDeg), 0];
        Span<double> factors = stackalloc double[2];
        return GaussNewton.TryFit(new StrutLeanModel(readings, inclinationRad?.Value), unknowns, factors, out _)
            ? new(inclinationRad, new(unknowns[1], factors[1] * double.DegreesToRadians(gaugeErrorDeg)))
            : null;
    }

    /// <summary>Change of camber with the mount moved inboard, degrees for mm: of the rigid strut, or of the straight line.</summary>
    public Estimate CamberChangeDeg(double inboardMm)
    {
        var (fall, perRate, perInclination) = StrutLeanModel.FallAt(inboardMm, _ratePerMm.Value, _inclinationRad?.Value);
        return new(
            -double.RadiansToDegrees(fall),
            double.RadiansToDegrees(Math.Sqrt(Square(perRate * _ratePerMm.StandardError) + Square(perInclination * (_inclinationRad?.StandardError ?? 0)))));
    }

    /// <summary>
    /// Change of caster with the mount moved rearward, degrees for mm, from the caster it has now, degrees; null without an
    /// effective height.
    /// </summary>
    public Estimate? CasterChangeDeg(double rearwardMm, Estimate casterDeg)
    {
        if (EffectiveHeightMm is not { } heightMm) return null;
        var tangent = Math.Tan(double.DegreesToRadians(casterDeg.Value));
        var moved = tangent + (rearwardMm / heightMm.Value);
        var length = 1 + (moved * moved);
        var perHeight = double.RadiansToDegrees(-rearwardMm / (heightMm.Value * heightMm.Value) / length);
        var perCaster = ((1 + (tangent * tangent)) / length) - 1;
        var changeDeg = double.RadiansToDegrees(Math.Atan(moved)) - casterDeg.Value;
        return new(
            changeDeg,
            Math.Sqrt(Square(perHeight * heightMm.StandardError) + Square(perCaster * casterDeg.StandardError) + Square(CasterModelErrorShare * changeDeg)));
    }

    private static double Square(double value) => value * value;
}
