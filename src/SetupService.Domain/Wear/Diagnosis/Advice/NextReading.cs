using SetupService.Domain.Answers;
using SetupService.Domain.Vehicles;
using SetupService.Domain.Wear.Readings;

namespace SetupService.Domain.Wear.Diagnosis.Advice;

/// <summary>When to read an axle's treads again: once so much more is worn that the gauge can tell it.</summary>
internal static class NextReading
{
    // The wear a reading must show beyond its error: four gauge errors, and half a millimetre; judgement.
    private const double GaugeErrors = 4;
    private const double LeastMm = 0.5;

    // Never sooner or later than this; tyres are usually looked at, and changed over, at 8000 km (owners' manuals: 5000 to 7500 miles).
    // From this share of the wear on the track it is counted in laps.
    private const double CountsByLaps = 0.25;

    private const double LeastLaps = 10;
    private const double MostLaps = 100;
    private const double LapSteps = 5;
    private const double LeastKm = 1000;
    private const double MostKm = 8000;
    private const double KmSteps = 500;

    /// <summary>As the end of a sentence: "in 40 laps", "in 4000 km", "after the next session".</summary>
    public static string When(WearCase wear, CarAxle at, UnitSystem units)
    {
        var (needMm, wornMm) = (0.0, 0.0);
        foreach (var tyre in wear.Tyres)
        {
            if (tyre.Axle != at || TreadFigures.Compute(tyre) is not { } figures) continue;
            needMm = Math.Max(LeastMm, GaugeErrors * (tyre.GaugeErrorMm ?? TreadDepths.UsualGaugeErrorMm));
            wornMm = Math.Max(wornMm, figures.WornMm.Value);
        }

        if (wornMm > 0 && wear.Use.TrackLaps is > 0 and var laps && TrackShare.Compute(wear.Use).Value >= CountsByLaps)
        {
            var count = Rounded(laps * needMm / wornMm, LapSteps, LeastLaps, MostLaps);
            return Prose.Write(units, $"in {count:n} laps");
        }

        if (wornMm > 0 && wear.Use.RoadKm is > 0 and var roadKm)
        {
            var km = Rounded(roadKm * needMm / wornMm, KmSteps, LeastKm, MostKm);
            return Prose.Write(units, $"in {km:km}");
        }

        return "after the next session or a few weeks on the road";
    }

    private static double Rounded(double value, double step, double least, double most) => Math.Clamp(Math.Ceiling(value / step) * step, least, most);
}
