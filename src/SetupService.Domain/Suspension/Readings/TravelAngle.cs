using SetupService.Domain.Answers;

namespace SetupService.Domain.Suspension.Readings;

/// <summary>Camber or toe at one travel, as a measured curve tells it.</summary>
/// <param name="AngleDeg">The angle, degrees, with its standard error.</param>
/// <param name="SlopeDegPerMm">Its change per mm of bump, with its standard error.</param>
/// <param name="IsExtended">Whether the travel lies beyond the readings, where the curve goes on with growing errors.</param>
public readonly record struct TravelAngle(Estimate AngleDeg, Estimate SlopeDegPerMm, bool IsExtended);
