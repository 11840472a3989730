namespace SetupService.Domain.Numerics.Smoothing;

/// <summary>A curve at one place, with standard deviations of what is not known of it.</summary>
/// <param name="Value">The curve's value.</param>
/// <param name="ValueStandardDeviation">Standard deviation of the value, not negative.</param>
/// <param name="Slope">The curve's first derivative.</param>
/// <param name="SlopeStandardDeviation">Standard deviation of the slope, not negative.</param>
public readonly record struct SplinePoint(double Value, double ValueStandardDeviation, double Slope, double SlopeStandardDeviation);
