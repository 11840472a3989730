using SetupService.Domain.Vehicles;

namespace SetupService.Domain.Wear.Readings;

/// <summary>Where on the car a tyre was worn, by its history.</summary>
public static class WornLegs
{
    // Less than this share of a use stated and not told by the history is rounding.
    private const double Rounding = 0.05;

    /// <summary>
    /// The places with their share of the tyre's wear, a kilometre of track counted as <paramref name="trackByRoad"/> of road; what the history leaves over of the use stated was
    /// worn where the tyre is. Without a history all of it was worn there. Empty where the history names several places and not how far the tyre ran at each: its wear is
    /// then of no place.
    /// </summary>
    /// <param name="tyre">The tyre.</param>
    /// <param name="use">What the tyres did since new.</param>
    /// <param name="lapKm">Length of a lap, km.</param>
    /// <param name="trackByRoad">How many times as fast a kilometre of track wears.</param>
    public static IReadOnlyList<WornLeg> Compute(TyreReading tyre, in WearUse use, double lapKm, double trackByRoad)
    {
        ArgumentNullException.ThrowIfNull(tyre);
        var byLap = lapKm * trackByRoad;
        var places = new List<WornLeg>(tyre.History.Count + 1);
        var (told, roadKm, laps) = (0.0, 0.0, 0.0);
        foreach (var leg in tyre.History)
        {
            var km = (leg.RoadKm ?? 0) + (byLap * (leg.TrackLaps ?? 0));
            if (leg is { RoadKm: null, TrackLaps: null })
            {
                if (IsOnePlace(tyre)) return [new(leg.Position, leg.TurnedOnRim, 1)];
                return [];
            }

            (told, roadKm, laps) = (told + km, roadKm + (leg.RoadKm ?? 0), laps + (leg.TrackLaps ?? 0));
            Add(places, leg.Position, leg.TurnedOnRim, km);
        }

        var rest = Math.Max(0, (use.RoadKm ?? 0) - roadKm) + (byLap * Math.Max(0, (use.TrackLaps ?? 0) - laps));
        if (rest > Rounding * (told + rest)) Add(places, tyre.Position, false, rest);
        var all = 0.0;
        foreach (var place in places) all += place.Share;
        if (all <= 0) return tyre.History.Count > 1 && !IsOnePlace(tyre) ? [] : [new(tyre.Position, false, 1)];
        for (var i = 0; i < places.Count; i++) places[i] = places[i] with { Share = places[i].Share / all };
        return places;
    }

    private static bool IsOnePlace(TyreReading tyre)
    {
        foreach (var leg in tyre.History)
        {
            if (leg.Position != tyre.History[0].Position || leg.TurnedOnRim != tyre.History[0].TurnedOnRim) return false;
        }

        return true;
    }

    private static void Add(List<WornLeg> places, WheelPosition position, bool isTurned, double km)
    {
        var at = places.FindIndex(place => place.Position == position && place.IsTurned == isTurned);
        if (at < 0) places.Add(new(position, isTurned, km));
        else places[at] = places[at] with { Share = places[at].Share + km };
    }
}

/// <summary>One place where a tyre was worn.</summary>
/// <param name="Position">Where on the car.</param>
/// <param name="IsTurned">True when its sides were changed over there against now: what is its outer shoulder now was the inner one.</param>
/// <param name="Share">Share of all its wear, from 0 to 1.</param>
public readonly record struct WornLeg(WheelPosition Position, bool IsTurned, double Share);
