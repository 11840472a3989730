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

/// <summary>A stretch of use of a tyre.</summary>
/// <param name="RoadKm">Kilometres on the road, km.</param>
/// <param name="TrackLaps">Laps on track.</param>
public readonly record struct TyreUse(double RoadKm, double TrackLaps)
{
    /// <summary>Nothing but a thousand kilometres on the road.</summary>
    public static TyreUse Road1000Km => new(1000, 0);

    /// <summary>Nothing but a lap.</summary>
    public static TyreUse OneLap => new(0, 1);
}
