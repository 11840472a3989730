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
        "Inspect the whole tyre before and after each track session: depth says nothing about cuts, bulges, separation, age or what is under the tread. Local law decides what may be driven on the road; in doubt ask a tyre professional.");

    private static readonly Caution TurningOnRim = new(
        "turningOnRim",
        "Turn a tyre on its rim, or move it to the other side of the car, only if its tread has no direction of rotation and no side marked outside. Have a tyre workshop do it: mounting under pressure can kill.");

    /// <summary>The caution of a tyre at or past the legal limit by a reading; null where it is above.</summary>
    /// <param name="leastMm">Its least depth, mm.</param>
    /// <param name="units">Units of the sentence.</param>
    public static Caution? WornOut(double leastMm, UnitSystem units) => leastMm > TreadDepths.LegalLeastMm ? null : new(
        "wornOut",
        Prose.Write(units, $"Do not drive on this tyre to gather readings: a zone is down to {leastMm:tread}, at or below the {TreadDepths.LegalLeastMm:tread} most countries require. Have a tyre professional replace it; local law decides."));

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
            list.Add(new("wornOut", Prose.Write(units, $"Have a tyre professional replace this tyre: the {Names(worn)} {(worn.Count == 1 ? "is" : "are")} at or past the limit of {leastMm:tread} (least {worn.Min(forecast.LeastDepthMm):tread}). Do not drive it on track, nor on the road where the law asks for more.")));
        if (leastMm < TreadDepths.LegalLeastMm)
            list.Add(new("limitBelowLaw", Prose.Write(units, $"The limit of {leastMm:tread} is below the {TreadDepths.LegalLeastMm:tread} most countries require on the road; the legal life left is shorter than shown here.")));
        foreach (var place in Places.Where(place => place != TreadPlace.Centre && forecast.LeastDepthMm(place) < NearCordsMm))
            list.Add(new("shoulderNearCords", Prose.Write(units, $"Do not use this tyre: its {ForecastUnits.Name(place)} is down to {forecast.LeastDepthMm(place):tread}. Cords may show within a session, and a tyre that shows them can burst.")));
        var wet = Places.Where(place => forecast.LeastDepthMm(place) is var depthMm && depthMm > leastMm && depthMm < TreadDepths.WetGripMm).ToList();
        if (wet.Count > 0)
            list.Add(new("wetGrip", Prose.Write(units, $"Slow down in the wet: the {Names(wet)} {(wet.Count == 1 ? "has" : "have")} less than {TreadDepths.WetGripMm:tread} left (least {wet.Min(forecast.LeastDepthMm):tread}). The tyre grips less and aquaplanes at lower speed, even where the law still allows it.")));
        if (forecast.Turning is not null || forecast.Swapping is not null) list.Add(TurningOnRim);
        list.Add(Inspection);
        return list;
    }

    private static string Names(List<TreadPlace> places) => string.Join(" and the ", places.Select(ForecastUnits.Name));
}
