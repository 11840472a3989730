using SetupService.Domain.Answers;

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

/// <summary>Says how far.</summary>
public static class RoadWords
{
    private const double KmPerMile = 1.609344;

    /// <summary>A distance nobody knows closer, with two significant digits in the units of the text: "4800 km", "3000 miles".</summary>
    /// <param name="units">Units of the text.</param>
    /// <param name="km">The distance, km, not negative.</param>
    public static string About(UnitSystem units, double km)
    {
        var unitKm = units == UnitSystem.Us ? KmPerMile : 1;
        var digits = km < unitKm ? 1 : Math.Pow(10, Math.Max(0, Math.Floor(Math.Log10(km / unitKm)) - 1));
        return Prose.Write(units, $"{Math.Round(km / unitKm / digits, MidpointRounding.AwayFromZero) * digits * unitKm:km}");
    }
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
