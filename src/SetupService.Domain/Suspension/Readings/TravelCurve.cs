using SetupService.Domain.Numerics.Smoothing;

namespace SetupService.Domain.Suspension.Readings;

/// <summary>
/// Camber or toe over wheel travel as somebody measured it: the one curve every call asks. Degrees over mm of wheel travel, positive =
/// bump; the angles' own signs are kept. It passes readings without error exactly, leaves none further away than 2.5 gauge errors, and
/// goes on for <see cref="ExtensionMm"/> beyond the readings with growing ranges; further out it is not known. Heights closer than
/// <see cref="SameHeightMm"/> are one height. Method, prior and coverage in docs/methods/measured-corner.md.
/// </summary>
public sealed class TravelCurve
{
    /// <summary>How far the curve is carried on beyond the first and the last reading, mm (a stated assumption, no source).</summary>
    public const double ExtensionMm = 20;

    /// <summary>Heights closer than this cannot be told apart with a ruler, mm (common practice, no source).</summary>
    public const double SameHeightMm = 1;

    /// <summary>
    /// Change of camber per mm of travel at the middle of the readings changes by 4e-4 °/mm per mm (standard deviation), and that by a
    /// further 2.4e-4 °/mm² over 60 mm. A judgement on suspensions: struts, wishbones and links solved for the tests have 0 to 5e-4 °/mm²,
    /// changing by 0 to 1.5e-4 °/mm² over 60 mm.
    /// </summary>
    public static readonly SmoothnessPrior CamberPrior = new(4e-4, 1e-9);

    /// <summary>The same for toe, which bends as much and changes its bend faster: 4.9e-4 °/mm² over 60 mm. A judgement likewise.</summary>
    public static readonly SmoothnessPrior ToePrior = new(4e-4, 4e-9);

    // No wheel's camber or toe changes faster than this per mm of travel (a judgement).
    private const double SteepestDegPerMm = 0.1;

    private const double RoundingDeg = 1e-9;

    private readonly BayesianSpline _spline;

    private TravelCurve(BayesianSpline spline) => _spline = spline;

    /// <summary>Lowest height read, mm.</summary>
    public double FirstMm => _spline.First;

    /// <summary>Highest height read, mm.</summary>
    public double LastMm => _spline.Last;

    /// <summary>Camber over travel; see <see cref="From"/>.</summary>
    public static TravelCurve? ForCamber(IEnumerable<(double TravelMm, double AngleDeg)> readings, double gaugeErrorDeg) =>
        From(readings, gaugeErrorDeg, CamberPrior);

    /// <summary>Toe over travel; see <see cref="From"/>.</summary>
    public static TravelCurve? ForToe(IEnumerable<(double TravelMm, double AngleDeg)> readings, double gaugeErrorDeg) =>
        From(readings, gaugeErrorDeg, ToePrior);

    /// <summary>
    /// A curve through readings in any order, each with the same standard error, degrees, 0 or more; null where fewer than two different
    /// heights were read, or a number is not finite.
    /// </summary>
    public static TravelCurve? From(IEnumerable<(double TravelMm, double AngleDeg)> readings, double gaugeErrorDeg, SmoothnessPrior prior)
    {
        double[] travelsMm = [.. readings.Select(reading => reading.TravelMm)];
        double[] anglesDeg = [.. readings.Select(reading => reading.AngleDeg)];
        return BayesianSpline.Fit(travelsMm, anglesDeg, gaugeErrorDeg, prior) is { } spline && spline.Last - spline.First >= SameHeightMm
            ? new(spline)
            : null;
    }

    /// <summary>
    /// Whether no reading lies further from the mean of those at its height than 2.5 gauge errors, and what the wheel may turn within that
    /// height: no curve could serve both.
    /// </summary>
    public static bool AreConsistent(IEnumerable<(double TravelMm, double AngleDeg)> readings, double gaugeErrorDeg)
    {
        var ordered = readings.OrderBy(reading => reading.TravelMm).ToArray();
        for (var from = 0; from < ordered.Length;)
        {
            var to = from + 1;
            while (to < ordered.Length && ordered[to].TravelMm - ordered[from].TravelMm < SameHeightMm) to++;
            var group = ordered[from..to];
            var (heightMm, angleDeg) = (group.Average(reading => reading.TravelMm), group.Average(reading => reading.AngleDeg));
            foreach (var reading in group)
            {
                var allowedDeg = (BayesianSpline.LargestResidual * gaugeErrorDeg) + (SteepestDegPerMm * Math.Abs(reading.TravelMm - heightMm)) + RoundingDeg;
                if (Math.Abs(reading.AngleDeg - angleDeg) > allowedDeg) return false;
            }

            from = to;
        }

        return true;
    }

    /// <summary>Whether the travel, mm, lies between the readings.</summary>
    public bool Holds(double travelMm) => travelMm >= FirstMm && travelMm <= LastMm;

    /// <summary>Whether the curve, with its extension, reaches the travel, mm.</summary>
    public bool Reaches(double travelMm) => travelMm >= FirstMm - ExtensionMm && travelMm <= LastMm + ExtensionMm;

    /// <summary>The angle at a travel, mm, degrees; null where the curve does not reach it. No allocation.</summary>
    public double? ValueDegAt(double travelMm) => Reaches(travelMm) ? _spline.ValueAt(travelMm) : null;

    /// <summary>The angle and its change per mm at a travel, mm, with their standard errors; null where the curve does not reach it. No allocation.</summary>
    public TravelAngle? At(double travelMm) => Reaches(travelMm) ? Anywhere(travelMm) : null;

    /// <summary>The angle wherever asked, however far beyond the readings.</summary>
    internal TravelAngle Anywhere(double travelMm)
    {
        var at = _spline.At(travelMm);
        return new(new(at.Value, at.ValueStandardDeviation), new(at.Slope, at.SlopeStandardDeviation), !Holds(travelMm));
    }
}
