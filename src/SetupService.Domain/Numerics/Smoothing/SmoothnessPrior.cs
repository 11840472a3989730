namespace SetupService.Domain.Numerics.Smoothing;

/// <summary>
/// What is known of a curve's second derivative before anything is read; level and slope are left open. Both figures are judgements
/// about the field the curve comes from, not about the readings.
/// </summary>
/// <param name="CurvatureStandardDeviation">Standard deviation of the second derivative at the middle of the readings, around zero; above zero.</param>
/// <param name="CurvatureDrift">Variance the second derivative gains per unit of place away from there; above zero.</param>
public readonly record struct SmoothnessPrior(double CurvatureStandardDeviation, double CurvatureDrift);
