using SetupService.Domain.Answers;
using SetupService.Domain.Wear.Readings;

namespace SetupService.Domain.Wear.Forecast;

/// <summary>Names and quantities of wear as a person reads them.</summary>
public static class ForecastUnits
{
    private const double KmPerMile = 1.609344;

    /// <summary>A place across the tread.</summary>
    public static string Name(TreadPlace place) => place switch
    {
        TreadPlace.Outer => "outer shoulder",
        TreadPlace.Centre => "centre",
        _ => "inner shoulder",
    };

    /// <summary>Wear on the road; in US units per 1000 miles.</summary>
    public static string Per1000(UnitSystem units, double mmPer1000Km) => units == UnitSystem.Us
        ? Prose.Write(units, $"{mmPer1000Km * KmPerMile:treadFine} per 1000 miles")
        : Prose.Write(units, $"{mmPer1000Km:treadFine} per 1000 km");

    /// <summary>The depth worn on those 1000 km, or in US units miles, without saying so again.</summary>
    public static string On1000(UnitSystem units, double mmPer1000Km) =>
        Prose.Write(units, $"{mmPer1000Km * (units == UnitSystem.Us ? KmPerMile : 1):treadFine}");

    /// <summary>A use by its main clock: laps where there are any, else kilometres.</summary>
    public static string MainUse(UnitSystem units, TyreUse use, double times) =>
        use.TrackLaps == 0 ? RoadWords.About(units, use.RoadKm * times) : Laps(use.TrackLaps * times);

    /// <summary>Wear on track, of a hundred laps, so that it has digits to read.</summary>
    public static string Per100Laps(UnitSystem units, double mmPerLap) => Prose.Write(units, $"{100 * mmPerLap:treadFine} per 100 laps");

    /// <summary>Laps, rounded to whole ones: "1 lap", "12 laps".</summary>
    public static string Laps(double laps) => Whole(laps) == 1 ? "1 lap" : FormattableString.Invariant($"{Whole(laps):0} laps");

    /// <summary>When something is due: "now", "after 1 more lap", "after another 300 km".</summary>
    /// <param name="units">Units of the text.</param>
    /// <param name="use">What <paramref name="times"/> counts.</param>
    /// <param name="times">How much use from now, not negative.</param>
    public static string After(UnitSystem units, TyreUse use, double times)
    {
        if (use.TrackLaps == 0) return use.RoadKm * times < 1 ? "now" : $"after another {RoadWords.About(units, use.RoadKm * times)}";
        var laps = Whole(use.TrackLaps * times);
        if (laps < 1) return "now";
        var more = FormattableString.Invariant($"after {laps:0} more {(laps == 1 ? "lap" : "laps")}");
        return use.RoadKm == 0 ? more : $"{more} with {RoadWords.About(units, use.RoadKm * times)} on the road";
    }

    private static double Whole(double laps) => Math.Round(laps, MidpointRounding.AwayFromZero);

    /// <summary>A use as driven: kilometres, laps, or both.</summary>
    public static string Use(UnitSystem units, TyreUse use, double times) => use switch
    {
        { TrackLaps: 0 } => RoadWords.About(units, use.RoadKm * times),
        { RoadKm: 0 } => Laps(use.TrackLaps * times),
        _ => $"{Laps(use.TrackLaps * times)} with {RoadWords.About(units, use.RoadKm * times)} on the road",
    };
}
