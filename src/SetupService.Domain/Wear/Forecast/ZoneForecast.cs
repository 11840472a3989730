using SetupService.Domain.Answers;
using SetupService.Domain.Numerics.Statistics;

namespace SetupService.Domain.Wear.Forecast;

/// <summary>How a zone wears and how long it lasts.</summary>
/// <param name="DepthNowMm">Depth at the last reading by the fit, mm.</param>
/// <param name="RatePer1000KmMm">Wear on the road, mm per 1000 km; null where the readings do not tell it apart.</param>
/// <param name="RatePerLapMm">Wear on track, mm per lap; null likewise.</param>
/// <param name="KmLeft">Kilometres left if the tyre sees the road only, km.</param>
/// <param name="LapsLeft">Laps left if it sees the track only.</param>
/// <param name="MixesLeft">How many times the use between first and last reading is left.</param>
public readonly record struct ZoneForecast(
    Uncertainty DepthNowMm, Uncertainty? RatePer1000KmMm, Uncertainty? RatePerLapMm, RatioRange? KmLeft, RatioRange? LapsLeft, RatioRange MixesLeft);
