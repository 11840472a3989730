namespace SetupService.Domain.Wear.Readings;

/// <summary>Tread depths of one tyre, read when two clocks stood where they did.</summary>
/// <param name="RoadKm">Kilometres on the road until then, km; not negative.</param>
/// <param name="TrackLaps">Laps on track until then; not negative.</param>
/// <param name="DepthMm">Depth across the tread, mm.</param>
public readonly record struct DepthReading(double RoadKm, double TrackLaps, AcrossTread<double> DepthMm);
