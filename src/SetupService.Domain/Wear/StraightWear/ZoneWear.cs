namespace SetupService.Domain.Wear.StraightWear;

/// <summary>The straight line (or plane, over two clocks) of a zone's depth.</summary>
/// <param name="MeanDepthMm">Depth where both clocks have their mean, mm.</param>
/// <param name="LostOfMixMm">What the whole mix takes off by each clock, mm; negative where depth grows.</param>
/// <param name="EndDepthMm">Fitted depth at the last reading, mm.</param>
/// <param name="SquaresMm2">Sum of the squared distances of the readings from it, mm².</param>
public readonly record struct ZoneWear(double MeanDepthMm, MixShare LostOfMixMm, double EndDepthMm, double SquaresMm2);
