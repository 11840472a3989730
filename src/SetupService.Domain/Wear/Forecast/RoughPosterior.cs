using SetupService.Domain.Answers;
using SetupService.Domain.Numerics.Statistics;
using SetupService.Domain.Wear.StraightWear;

namespace SetupService.Domain.Wear.Forecast;

/// <summary>Medians and 90 % ranges of a zone's depth, wear and what is left, where the gauge's error and usual rates tell them together.</summary>
internal sealed class RoughPosterior
{
    // The search for a quantile: in logits how near before the last secant, and how far a step goes; the least probability that has a logit.
    private const double LogitOf95Pct = 2.9444389791664403;
    private const double NearEnough = 0.25;
    private const double LongestStep = 4;
    private const double LeastProbability = 1e-12;
    private const int MostLooks = 30;

    private readonly RoughGrid _grid;

    /// <summary>For tyres read at these clocks.</summary>
    /// <param name="design">When they were read; at least one clock moves.</param>
    /// <param name="gaugeErrorMm">Standard deviation of one reading, mm; above 0.</param>
    public RoughPosterior(WearDesign design, double gaugeErrorMm) => _grid = new(design, gaugeErrorMm);

    /// <summary>When the tyres were read.</summary>
    public WearDesign Design => _grid.Design;

    /// <summary>Takes up a zone; false where by its readings tread grows by more than the gauge errs.</summary>
    public bool TryPlace(in ZoneWear fit) => _grid.TryPlace(fit);

    /// <summary>
    /// Depth at the last reading, mm. Its errors are nearly normal; how far they are not is in their third and fourth cumulants (the expansion of
    /// Cornish and Fisher, from memory).
    /// </summary>
    public Uncertainty DepthNow()
    {
        var (mean, square, third, fourth) = _grid.LostSinceMean();

        // Wear comes off the mean depth, whose error is normal.
        var variance = square + (_grid.MeanErrorMm * _grid.MeanErrorMm);
        var deviation = Math.Sqrt(variance);
        var (skewness, excess) = (-third / (variance * deviation), (fourth - (3 * square * square)) / (variance * variance));
        var depthMm = _grid.Fit.MeanDepthMm - mean;
        return new(At(0), At(-Uncertainty.StandardErrorsAtNinetyPct), At(Uncertainty.StandardErrorsAtNinetyPct), Uncertainty.NinetyPct);

        double At(double z) => depthMm + (deviation * (z + (((z * z) - 1) * skewness / 6) + (((z * z) - 3) * z * excess / 24) - (((2 * z * z) - 5) * z * skewness * skewness / 36)));
    }

    /// <summary>What the mix wears by the first clock (1, 0), the second (0, 1) or in all (1, 1), mm.</summary>
    public Uncertainty Lost(double first, double second)
    {
        var (middle, spread) = _grid.Logarithm(first, second);
        var (value, lower, upper) = Quantiles(new(first, second, null, 0, false), middle, spread, double.NegativeInfinity);
        return new(Math.Exp(value), Math.Exp(lower), Math.Exp(upper), Uncertainty.NinetyPct);
    }

    /// <summary>How often that wear is left until a limit.</summary>
    public RatioRange Left(double limitMm, double first, double second)
    {
        // Depth over the limit by wear. With the offset it is about the mean depth over the limit by wear, whose logarithm is nearly normal.
        var overMm = _grid.Fit.MeanDepthMm - limitMm;
        var offset = ((_grid.End.Road * _grid.MiddleShare) + (_grid.End.Track * (1 - _grid.MiddleShare))) / ((first * _grid.MiddleShare) + (second * (1 - _grid.MiddleShare)));
        var (middle, spread) = _grid.Logarithm(first, second);
        var leastMm = Math.Max(overMm, _grid.MeanErrorMm / 2);
        var depthSpread = _grid.MeanErrorMm / leastMm;
        var (value, lower, upper) = Quantiles(new(first, second, overMm, offset, depthSpread > spread / 2), Math.Log(leastMm) - middle, Math.Sqrt((spread * spread) + (depthSpread * depthSpread)), Math.Log(offset));
        return new(Times(value), Times(lower), Times(upper));

        double Times(double log) => Math.Max(0, Math.Exp(log) - offset);
    }

    /// <summary>Median and the 5 and 95 % quantiles of the logarithm of a figure.</summary>
    private (double Value, double Lower, double Upper) Quantiles(in Figure figure, double guess, double spread, double floor)
    {
        // Slopes of the logit of a normal distribution, by standard deviations: 1.6 at the median, 2.2 where 5 % lie.
        var (value, slope) = Solve(figure, 0, guess, 1.6 / spread, floor);
        var reach = Uncertainty.StandardErrorsAtNinetyPct * 1.6 / slope;
        return (value, Solve(figure, -LogitOf95Pct, value - reach, 1.37 * slope, floor).Place, Solve(figure, LogitOf95Pct, value + reach, 1.37 * slope, floor).Place);
    }

    /// <summary>Where the probability has a logit, by secants from a guess, and the slope there; no less than the floor.</summary>
    private (double Place, double Slope) Solve(in Figure figure, double logit, double guess, double slope, double floor)
    {
        var (low, high) = (floor, double.PositiveInfinity);
        var (at, before, missBefore, longest) = (Math.Max(guess, floor), double.NaN, 0.0, LongestStep / slope);
        for (var look = 0; look < MostLooks; look++)
        {
            var miss = Logit(figure, at) - logit;
            if (at <= floor && miss >= 0) return (floor, slope);
            if ((miss - missBefore) / (at - before) is var secant && secant > 0 && double.IsFinite(secant)) slope = secant;
            (low, high) = miss > 0 ? (low, Math.Min(high, at)) : (Math.Max(low, at), high);
            var next = at - Math.Clamp(miss / slope, -longest, longest);
            if (next <= low) next = at == low ? at : (low + at) / 2;
            if (next >= high) next = (high + at) / 2;
            if (look > 0 && Math.Abs(miss) < NearEnough) return (next, slope);
            (before, missBefore, at) = (at, miss, next);
        }

        return (at, slope);
    }

    private double Logit(in Figure figure, double log)
    {
        // Left: what is worn until then, and lost since the mean of the clocks, is at least what the mean depth has over the limit.
        var value = Math.Exp(log) - figure.Offset;
        var probability = figure.OverMm is { } overMm
            ? 1 - _grid.AtMost(_grid.End.Road + (figure.First * value), _grid.End.Track + (figure.Second * value), overMm, figure.IsErrorLarge ? RoughGrid.ManyErrors : RoughGrid.FewErrors)
            : _grid.AtMost(figure.First, figure.Second, value, RoughGrid.NoError);
        return Math.Log(Math.Max(probability, LeastProbability) / Math.Max(1 - probability, LeastProbability));
    }

    /// <summary>What is asked of wear: how much it is, or how often it is left.</summary>
    /// <param name="First">1 where the first clock's part counts, else 0.</param>
    /// <param name="Second">1 where the second's does, else 0.</param>
    /// <param name="OverMm">Mean depth over the limit, mm; null where the wear itself is asked.</param>
    /// <param name="Offset">What is taken off the value whose logarithm is sought.</param>
    /// <param name="IsErrorLarge">True where the error of the mean depth counts for more than half of what the wear does.</param>
    private readonly record struct Figure(double First, double Second, double? OverMm, double Offset, bool IsErrorLarge);
}
