using SetupService.Api.Drawings.Charts;
using SetupService.Domain.Answers;
using SetupService.Domain.Wear.Forecast;
using SetupService.Domain.Wear.Readings;
using SetupService.Domain.Wear.StraightWear;

namespace SetupService.Api.Wear.Forecast;

/// <summary>
/// Draws depth over distance, one panel per zone: the fitted line with its 90 % band, the readings and the limit. With both road and laps the axis follows
/// their overall proportion, and each reading is corrected to that proportion with the fitted rates, so that only scatter is left to see.
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
    public static string Draw(ForecastRequest request, TreadForecast forecast, ForecastAnswer answer, UnitSystem units, double widthPx)
    {
        var readings = DepthReadingDocument.ToDomain(request.Readings);
        var isTrack = forecast.Mix.TrackLaps > 0;
        var (length, mm) = units == UnitSystem.Us ? ("1/32 in", MmPerInch / 32) : ("mm", 1);
        var across = isTrack
            ? new ChartAxis(forecast.Mix.RoadKm > 0 ? "laps, road in proportion" : "laps", "")
            : new ChartAxis("road", units == UnitSystem.Us ? "miles" : "km");
        var perUnit = !isTrack && units == UnitSystem.Us ? KmPerMile : 1;
        return ChartDrawing.Draw(new Chart
        {
            Heading = "Tread depth and how long it lasts",
            Lines = [ForecastWords.Headline(forecast, units)],
            Across = across,
            Panels = [.. ((TreadPlace[])[TreadPlace.Outer, TreadPlace.Centre, TreadPlace.Inner]).Select(Panel)],
            Notes = [.. Notes(forecast, answer)],
        }, widthPx);

        ChartPanel Panel(TreadPlace place)
        {
            var dots = new ChartSeries("readings", [.. readings.Select(one => Dot(one, place))]) { IsJoined = false, IsMain = false };
            List<ChartSeries> series = forecast.Fit is { } fit ? [Line(fit, place), dots] : [dots];
            series.Add(Limit());
            return new(Name(place), length, series) { LeastSpan = 0.5 / mm };
        }

        ChartPoint Dot(in DepthReading reading, TreadPlace place)
        {
            var moved = forecast.Fit is { } fit ? OnMix(fit, reading, place) : 0;
            return new((isTrack ? reading.TrackLaps : reading.RoadKm) / perUnit, (reading.DepthMm.At(place) + moved) / mm);
        }

        ChartSeries Line(WearFit fit, TreadPlace place)
        {
            var points = new ChartPoint[LinePoints];
            var last = Last(forecast);
            for (var i = 0; i < points.Length; i++)
            {
                var mixes = -1 + ((1 + last) * i / (points.Length - 1));
                var range = DepthAfter(fit, place, mixes);
                points[i] = new(Where(mixes), range.Value / mm) { Lower = range.Lower / mm, Upper = range.Upper / mm };
            }

            return new("fitted wear", points) { BandName = "90 % band" };
        }

        ChartSeries Limit()
        {
            var (from, to) = (Where(-1), Where(forecast.Fit is null ? 0 : Last(forecast)));
            return new("limit", [.. Enumerable.Range(0, LimitPoints).Select(i => new ChartPoint(from + ((to - from) * i / (LimitPoints - 1)), forecast.LimitDepthMm / mm))]) { IsMain = false };
        }

        double Where(double mixes) => isTrack
            ? readings[^1].TrackLaps + (mixes * forecast.Mix.TrackLaps)
            : (readings[^1].RoadKm + (mixes * forecast.Mix.RoadKm)) / perUnit;
    }

    /// <summary>The notes under the chart: rates, how readings were corrected, and cautions.</summary>
    private static IEnumerable<string> Notes(TreadForecast forecast, ForecastAnswer answer)
    {
        if (forecast.Clock == WearClock.Both)
            yield return "Road and laps did not grow in proportion; each reading is corrected to the overall proportion with the road's wear rate.";
        foreach (var caution in answer.Cautions) yield return caution.Text;
    }

    /// <summary>How far the axis continues after the last reading, in multiples of the use between first and last reading.</summary>
    private static double Last(TreadForecast forecast) =>
        Math.Clamp((forecast.Ending?.MixesLeft ?? 0) * BehindEnd, LeastMixes, FurthestMixes);

    /// <summary>Depth after that many multiples of the use since the last reading, mm.</summary>
    private static Uncertainty DepthAfter(WearFit fit, TreadPlace place, double mixes)
    {
        var share = fit.Design.Share(fit.Design.Mix)!.Value;
        var lostMm = fit.Wear(place, fit.Design.Mix)!.Value.Value;
        var variance = fit.Design.EndVariance - (2 * mixes * fit.Design.EndCovariance(share)) + (mixes * mixes * fit.Design.Variance(share));
        return fit.Scatter.Range(fit.Zones.At(place).EndDepthMm - (mixes * lostMm), Math.Max(0, variance));
    }

    /// <summary>Correction of a reading's depth to the road that the overall proportion has at its laps, mm.</summary>
    private static double OnMix(WearFit fit, in DepthReading reading, TreadPlace place)
    {
        if (fit.Design.Clock != WearClock.Both) return 0;
        var mixes = (reading.TrackLaps - fit.Design.LastLaps) / fit.Design.Mix.TrackLaps;
        return DepthAfter(fit, place, mixes).Value - fit.Design.DepthMm(fit.Zones.At(place), reading);
    }

    private static string Name(TreadPlace place) => place switch
    {
        TreadPlace.Outer => "outer shoulder",
        TreadPlace.Centre => "centre",
        _ => "inner shoulder",
    };
}
