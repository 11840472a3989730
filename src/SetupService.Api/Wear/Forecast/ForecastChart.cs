using SetupService.Api.Drawings.Charts;
using SetupService.Domain.Answers;
using SetupService.Domain.Handling.Cornering;
using SetupService.Domain.Wear.Forecast;
using SetupService.Domain.Wear.Readings;
using SetupService.Domain.Wear.StraightWear;

namespace SetupService.Api.Wear.Forecast;

/// <summary>
/// Draws depth over distance: of one tyre a panel per zone, of several one per tyre with the zone that ends it. Each has the fitted wear with its 90 % band,
/// the readings and the limit. With both road and laps the axis follows their overall proportion, and each reading is corrected to that proportion with the
/// fitted rates, so that only scatter is left to see.
/// </summary>
internal static class ForecastChart
{
    private const int LinePoints = 41;
    private const int LimitPoints = 20;
    private const double MmPerInch = 25.4;
    private const double KmPerMile = 1.609344;

    // The axis ends a little beyond the tyre's life, but no further than this many times the distance driven.
    private const double BehindEnd = 1.1;
    private const double FurthestMixes = 3;
    private const double LeastMixes = 0.2;

    /// <summary>The picture.</summary>
    public static string Draw(ForecastRequest request, CarForecast car, UnitSystem units, double widthPx)
    {
        var isTrack = car.Tyres.All(tyre => tyre.Tread.Mix.TrackLaps > 0);
        var hasRoad = car.Tyres.Any(tyre => tyre.Tread.Mix.RoadKm > 0);
        var panels = new List<ChartPanel>();
        for (var i = 0; i < car.Tyres.Count; i++)
        {
            var drawing = new TyreDrawing(car.Tyres[i].Tread, request.Tyres[i].ToDomain(), isTrack, units);
            if (car.Tyres.Count == 1) panels.AddRange(((TreadPlace[])[TreadPlace.Outer, TreadPlace.Centre, TreadPlace.Inner]).Select(place => drawing.Panel(place, ForecastUnits.Name(place))));
            else panels.Add(drawing.Panel(car.Tyres[i].Tread.Ending?.Place ?? Shallowest(car.Tyres[i].Tread), CorneringWords.Name(car.Tyres[i].Position)));
        }

        return ChartDrawing.Draw(new Chart
        {
            Heading = car.Tyres.Count == 1 ? "Tread depth and how long it lasts" : "Tread depth and how long it lasts, where each tyre ends first",
            Lines = [ForecastWords.Lead(car, units)],
            Across = isTrack ? new ChartAxis(hasRoad ? "laps, road in proportion" : "laps", "") : new ChartAxis("road", units == UnitSystem.Us ? "miles" : "km"),
            Panels = panels,
            Notes = [.. Notes(car, units)],
        }, widthPx);
    }

    private static TreadPlace Shallowest(TreadForecast tread) =>
        ((TreadPlace[])[TreadPlace.Outer, TreadPlace.Centre, TreadPlace.Inner]).MinBy(tread.LeastDepthMm);

    private static IEnumerable<string> Notes(CarForecast car, UnitSystem units)
    {
        if (car.Tyres.Any(tyre => tyre.Tread.Clock == WearClock.Both && tyre.Tread.Fit is not null))
            yield return "Road and laps did not grow in proportion; each reading is corrected to the overall proportion with the road's wear rate.";
        var rough = car.Tyres.Where(tyre => tyre.Tread.OfTyre == ForecastStatus.Rough).Select(tyre => CorneringWords.Name(tyre.Position)).ToList();
        if (rough.Count > 0) yield return $"Readings only, no line: {string.Join(", ", rough)}, whose forecast is rough.";
        foreach (var caution in ForecastCautions.Build(car, units)) yield return caution.Text;
    }

    /// <summary>The panels of one tyre.</summary>
    private sealed class TyreDrawing(TreadForecast forecast, DepthReading[] readings, bool isTrack, UnitSystem units)
    {
        private readonly string _unit = units == UnitSystem.Us ? "1/32 in" : "mm";
        private readonly double _mm = units == UnitSystem.Us ? MmPerInch / 32 : 1;
        private readonly double _perUnit = !isTrack && units == UnitSystem.Us ? KmPerMile : 1;

        /// <summary>How far the axis continues after the last reading, in multiples of the use between first and last reading.</summary>
        private double Last => Math.Clamp((forecast.Ending?.MixesLeft ?? 0) * BehindEnd, LeastMixes, FurthestMixes);

        public ChartPanel Panel(TreadPlace place, string name)
        {
            var zone = name == ForecastUnits.Name(place) ? name : $"{name}: {ForecastUnits.Name(place)}";
            var dots = new ChartSeries("readings", [.. readings.Select(one => Dot(one, place))]) { IsJoined = false, IsMain = false };
            List<ChartSeries> series = forecast.Fit is { } fit ? [Line(fit, place), dots] : [dots];
            series.Add(Limit());
            return new(zone, _unit, series) { LeastSpan = 0.5 / _mm, TellsZero = false, Signs = Left(place) };
        }

        private ChartPoint Dot(in DepthReading reading, TreadPlace place) => new(
            (isTrack ? reading.TrackLaps : reading.RoadKm) / _perUnit,
            (reading.DepthMm.At(place) + (forecast.Fit is { } fit ? OnMix(fit, reading, place) : 0)) / _mm);

        private ChartSeries Line(WearFit fit, TreadPlace place)
        {
            var points = new ChartPoint[LinePoints];
            for (var i = 0; i < points.Length; i++)
            {
                var mixes = -1 + ((1 + Last) * i / (points.Length - 1));
                var range = fit.DepthAfterMm(place, mixes);
                points[i] = new(Where(mixes), range.Value / _mm) { Lower = range.Lower / _mm, Upper = range.Upper / _mm };
            }

            return new("fitted wear", points) { BandName = "90 % band" };
        }

        private ChartSeries Limit()
        {
            var (from, to) = (Where(-1), Where(forecast.Fit is null ? 0 : Last));
            return new(Prose.Write(units, $"limit {forecast.LimitDepthMm:tread}"), [.. Enumerable.Range(0, LimitPoints).Select(i => new ChartPoint(from + ((to - from) * i / (LimitPoints - 1)), forecast.LimitDepthMm / _mm))]) { IsMain = false };
        }

        private string? Left(TreadPlace place) => forecast.Zones.At(place) is { MixesLeft: { IsBounded: true, Value: { } left } }
            ? $"{ForecastUnits.MainUse(units, forecast.Mix, left)} left"
            : null;

        private double Where(double mixes) => isTrack
            ? readings[^1].TrackLaps + (mixes * forecast.Mix.TrackLaps)
            : (readings[^1].RoadKm + (mixes * forecast.Mix.RoadKm)) / _perUnit;

        /// <summary>Correction of a reading's depth to the road that the overall proportion has at its laps, mm.</summary>
        private double OnMix(WearFit fit, in DepthReading reading, TreadPlace place)
        {
            if (fit.Design.Clock != WearClock.Both || !isTrack) return 0;
            var mixes = (reading.TrackLaps - fit.Design.LastLaps) / fit.Design.Mix.TrackLaps;
            return fit.DepthAfterMm(place, Math.Min(mixes, -1e-12)).Value - fit.DepthMm(place, reading);
        }
    }
}
