namespace SetupService.Domain.Wear.Readings;

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
