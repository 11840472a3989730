namespace SetupService.Domain.Wear.Readings;

/// <summary>What the tyres did; what is not known is null.</summary>
/// <param name="RoadKm">Kilometres of road.</param>
/// <param name="TrackLaps">Laps of a track, or runs up a hill.</param>
/// <param name="LapKm">Length of a lap, km.</param>
public readonly record struct WearUse(double? RoadKm, double? TrackLaps, double? LapKm)
{
    /// <summary>Lateral acceleration usual in the track's corners, g.</summary>
    public double? LateralG { get; init; }

    /// <summary>Radius of a usual corner of the track, m.</summary>
    public double? CornerRadiusM { get; init; }
}
