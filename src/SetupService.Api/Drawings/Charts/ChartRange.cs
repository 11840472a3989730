namespace SetupService.Api.Drawings.Charts;

/// <summary>From where to where an axis runs.</summary>
/// <param name="Low">Its lower end.</param>
/// <param name="High">Its upper end.</param>
internal readonly record struct ChartRange(double Low, double High)
{
    // Room beside the extremes, so that lines and dots stand clear of the next panel.
    private const double Padding = 0.08;

    // Zero is shown where it lies this near to the values, as a share of their span.
    private const double NearZero = 0.3;

    public double Span => High - Low;

    /// <summary>The shared axis: exactly what was asked for.</summary>
    public static ChartRange Across(IEnumerable<double> places)
    {
        var range = Of(places);
        return range.Span > 0 ? range : Around(range.Low);
    }

    /// <summary>A panel's own axis.</summary>
    public static ChartRange Up(IEnumerable<double> values, double leastSpan)
    {
        var range = Of(values);
        if (!(range.Span >= leastSpan)) return Around((range.Low + range.High) / 2);
        var (low, high) = range;
        if (low > 0 && low < NearZero * range.Span) low = 0;
        if (high < 0 && -high < NearZero * range.Span) high = 0;
        var room = Padding * (high - low);
        return new(low - room, high + room);
    }

    private static ChartRange Of(IEnumerable<double> values)
    {
        var (low, high) = (double.PositiveInfinity, double.NegativeInfinity);
        foreach (var value in values) (low, high) = (Math.Min(low, value), Math.Max(high, value));
        return new(low, high);
    }

    private static ChartRange Around(double value)
    {
        var half = Math.Abs(value) < 1 ? 1 : 0.2 * Math.Abs(value);
        return new(value - half, value + half);
    }
}
