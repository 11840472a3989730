using SetupService.Domain.Vehicles;

namespace SetupService.Domain.Wear.Readings;

/// <summary>One stretch of a tyre's life, oldest first.</summary>
/// <param name="Position">Where on the car it was.</param>
/// <param name="RoadKm">Kilometres of road there; null = not known.</param>
/// <param name="TrackLaps">Laps there; null = not known.</param>
/// <param name="TurnedOnRim">Whether it was mounted with its sides changed over against now.</param>
public sealed record HistoryLeg(WheelPosition Position, double? RoadKm, double? TrackLaps, bool TurnedOnRim);
