using SetupService.Domain.Answers;
using SetupService.Domain.Wear.Readings;

namespace SetupService.Domain.Wear.Forecast;

/// <summary>The cautions that go with a tyre's remaining life, what is dangerous now first.</summary>
public static class ForecastCautions
{
    /// <summary>A shoulder shallower than this, mm, may show its cords before the next reading; common practice, no source.</summary>
    public const double NearCordsMm = 1;

    private static readonly TreadPlace[] Places = [TreadPlace.Outer, TreadPlace.Centre, TreadPlace.Inner];

    /// <summary>Depth is not all there is to a tyre.</summary>
    public static Caution Inspection { get; } = new(
        "treadInspection",
        "A depth says nothing of cuts, bulges, separation, age or what is under the tread. Look the whole tyre over before and after each track session; what may be driven on the road is decided by local law, and a tyre professional decides in doubt.");

    private static readonly Caution TurningOnRim = new(
        "turningOnRim",
        "Turn a tyre on its rim, or move it to the car's other side, only where its tread has no direction of rotation and no side marked outside, and have a tyre workshop do it: mounting under pressure can kill.");

    /// <summary>The caution of a tyre at or past the legal limit by a reading; null where it is above.</summary>
    /// <param name="leastMm">Its least depth, mm.</param>
    /// <param name="units">Units of the sentence.</param>
    public static Caution? WornOut(double leastMm, UnitSystem units) => leastMm > TreadDepths.LegalLeastMm ? null : new(
        "wornOut",
        Prose.Write(units, $"A zone read last has {leastMm:mm}, at or below the {TreadDepths.LegalLeastMm:mm} most countries ask for. The tyre is done: do not drive on it to gather readings, have a tyre professional replace it; local law decides."));

    /// <summary>The cautions of a forecast.</summary>
    /// <param name="forecast">The forecast.</param>
    /// <param name="units">Units of the sentences.</param>
    public static IReadOnlyList<Caution> Build(TreadForecast forecast, UnitSystem units)
    {
        ArgumentNullException.ThrowIfNull(forecast);
        var list = new List<Caution>();
        var leastMm = forecast.LimitDepthMm;
        var worn = Places.Where(place => forecast.LeastDepthMm(place) <= leastMm).ToList();
        if (worn.Count > 0)
            list.Add(new("wornOut", Prose.Write(units, $"The {Names(worn)} {(worn.Count == 1 ? "is" : "are")} at or past the limit of {leastMm:mm} (least {worn.Min(forecast.LeastDepthMm):mm}). The tyre is done: do not drive it on the road where the law asks for more, nor on track, and have a tyre professional replace it.")));
        if (leastMm < TreadDepths.LegalLeastMm)
            list.Add(new("limitBelowLaw", Prose.Write(units, $"The limit of {leastMm:mm} is less than the {TreadDepths.LegalLeastMm:mm} most countries ask for on the road; to that depth what is left is shorter than told here.")));
        foreach (var place in Places.Where(place => place != TreadPlace.Centre && forecast.LeastDepthMm(place) < NearCordsMm))
            list.Add(new("shoulderNearCords", Prose.Write(units, $"The {ForecastUnits.Name(place)} is down to {forecast.LeastDepthMm(place):mm}: cords may show within a session, and a tyre that shows them can burst. Do not use it.")));
        var wet = Places.Where(place => forecast.LeastDepthMm(place) is var depthMm && depthMm > leastMm && depthMm < TreadDepths.WetGripMm).ToList();
        if (wet.Count > 0)
            list.Add(new("wetGrip", Prose.Write(units, $"The {Names(wet)} {(wet.Count == 1 ? "has" : "have")} less than {TreadDepths.WetGripMm:mm} left (least {wet.Min(forecast.LeastDepthMm):mm}): grip in the wet is much less and water lifts the tyre at lower speed, also where the law still allows it. Slow down in the wet.")));
        if (forecast.Turning is not null || forecast.Swapping is not null) list.Add(TurningOnRim);
        list.Add(Inspection);
        return list;
    }

    private static string Names(List<TreadPlace> places) => string.Join(" and the ", places.Select(ForecastUnits.Name));
}
