using SetupService.Domain.Answers;
using SetupService.Domain.Handling.Cornering;
using SetupService.Domain.Vehicles;
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
    /// <param name="position">Where it is on the car.</param>
    /// <param name="leastMm">Its least depth, mm.</param>
    /// <param name="units">Units of the sentence.</param>
    public static Caution? WornOut(WheelPosition position, double leastMm, UnitSystem units) => leastMm > TreadDepths.LegalLeastMm ? null : new(
        "wornOut",
        Prose.Write(units, $"Do not drive on the {CorneringWords.Name(position)} tyre to gather readings: a zone is down to {leastMm:tread}, at or below the {TreadDepths.LegalLeastMm:tread} most countries require. Have a tyre professional replace it; local law decides."));

    /// <summary>The cautions of a car's forecast, the gravest kind first, within a kind in the order of the tyres.</summary>
    /// <param name="car">The forecast.</param>
    /// <param name="units">Units of the sentences.</param>
    public static IReadOnlyList<Caution> Build(CarForecast car, UnitSystem units)
    {
        ArgumentNullException.ThrowIfNull(car);
        var list = new List<Caution>();
        foreach (var tyre in car.Tyres)
        {
            var forecast = tyre.Tread;
            var worn = Places.Where(place => forecast.LeastDepthMm(place) <= forecast.LimitDepthMm).ToList();
            if (worn.Count > 0)
                list.Add(new("wornOut", Prose.Write(units, $"Have a tyre professional replace the {Name(tyre)} tyre: the {Names(worn)} {(worn.Count == 1 ? "is" : "are")} at or past the limit of {forecast.LimitDepthMm:tread} (least {worn.Min(forecast.LeastDepthMm):tread}). Do not drive it on track, nor on the road where the law asks for more.")));
        }

        if (car.Tyres[0].Tread.LimitDepthMm < TreadDepths.LegalLeastMm)
            list.Add(new("limitBelowLaw", Prose.Write(units, $"The limit of {car.Tyres[0].Tread.LimitDepthMm:tread} is below the {TreadDepths.LegalLeastMm:tread} most countries require on the road; the legal life left is shorter than shown here.")));
        foreach (var tyre in car.Tyres)
        {
            foreach (var place in Places.Where(place => place != TreadPlace.Centre && tyre.Tread.LeastDepthMm(place) < NearCordsMm))
                list.Add(new("shoulderNearCords", Prose.Write(units, $"Do not use the {Name(tyre)} tyre: its {ForecastUnits.Name(place)} is down to {tyre.Tread.LeastDepthMm(place):tread}. Cords may show within a session, and a tyre that shows them can burst.")));
        }

        foreach (var tyre in car.Tyres)
        {
            var forecast = tyre.Tread;
            var wet = Places.Where(place => forecast.LeastDepthMm(place) is var depthMm && depthMm > forecast.LimitDepthMm && depthMm < TreadDepths.WetGripMm).ToList();
            if (wet.Count > 0)
                list.Add(new("wetGrip", Prose.Write(units, $"Slow down in the wet: the {Names(wet)} of the {Name(tyre)} tyre {(wet.Count == 1 ? "has" : "have")} less than {TreadDepths.WetGripMm:tread} left (least {wet.Min(forecast.LeastDepthMm):tread}). It grips less and aquaplanes at lower speed, even where the law still allows it.")));
        }

        if (car.Swaps.Count > 0 || car.Tyres.Any(tyre => tyre.Tread.Turning is not null)) list.Add(TurningOnRim);
        list.Add(Inspection);
        return list;
    }

    private static string Name(TyreForecast tyre) => CorneringWords.Name(tyre.Position);

    private static string Names(List<TreadPlace> places) => string.Join(" and the ", places.Select(ForecastUnits.Name));
}
