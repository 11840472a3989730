using SetupService.Domain.Answers;
using SetupService.Domain.Wear.Readings;

namespace SetupService.Domain.Wear.Forecast;

/// <summary>Names and quantities of wear as a person reads them.</summary>
internal static class ForecastUnits
{
    private const double KmPerMile = 1.609344;

    public static string Name(TreadPlace place) => place switch
    {
        TreadPlace.Outer => "outer shoulder",
        TreadPlace.Centre => "centre",
        _ => "inner shoulder",
    };

    /// <summary>Wear on the road; in US units per 1000 miles.</summary>
    public static string Per1000(UnitSystem units, double mmPer1000Km) => units == UnitSystem.Us
        ? Prose.Write(units, $"{mmPer1000Km * KmPerMile:fit} per 1000 miles")
        : Prose.Write(units, $"{mmPer1000Km:fit} per 1000 km");

    /// <summary>Wear on track, of a hundred laps, so that it has digits to read.</summary>
    public static string Per100Laps(UnitSystem units, double mmPerLap) => Prose.Write(units, $"{100 * mmPerLap:fit} per 100 laps");

    /// <summary>Laps to the next whole one.</summary>
    public static string Laps(double laps) => FormattableString.Invariant($"{Math.Round(laps, MidpointRounding.AwayFromZero):0} laps");

    /// <summary>A use as driven: kilometres, laps, or both.</summary>
    public static string Use(UnitSystem units, TyreUse use, double times) => use switch
    {
        { TrackLaps: 0 } => Prose.Write(units, $"{use.RoadKm * times:km}"),
        { RoadKm: 0 } => Laps(use.TrackLaps * times),
        _ => Prose.Write(units, $"{Laps(use.TrackLaps * times)} with {use.RoadKm * times:km} on the road"),
    };
}
