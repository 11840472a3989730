using SetupService.Domain.Answers;
using SetupService.Domain.Vehicles;
using SetupService.Domain.Wear.Readings;

namespace SetupService.Domain.Wear.Diagnosis.Advice;

/// <summary>When to read an axle's treads again: once so much more is worn that the gauge can tell it, and never beyond what the tread has left.</summary>
internal static class NextReading
{
    // The wear a reading must show beyond its error: four gauge errors, and half a millimetre; judgement.
    private const double GaugeErrors = 4;
    private const double LeastMm = 0.5;

    // Never sooner or later than this while there is tread; tyres are usually looked at, and changed over, at 8000 km (owners' manuals: 5000 to 7500 miles).
    private const double LeastLaps = 10;
    private const double MostLaps = 100;
    private const double LapSteps = 5;
    private const double LeastKm = 1000;
    private const double MostKm = 8000;
    private const double KmSteps = 500;

    // The same tyre wears up to a third faster weeks apart (Tire Sci. Technol. 13(1)), and then lasts a quarter less: with what the gauge leaves open of what is left, the next reading comes before the least the tread may last.
    private const double LastsLess = 0.25;

    private const double LittleSteps = 4;

    // From this share of the wear on the track it is counted in laps.
    private const double CountsByLaps = 0.25;

    /// <summary>As the end of a sentence: "in 40 laps", "in 4000 km", "before the next drive", "after the next session".</summary>
    public static string When(WearCase wear, CarAxle at, UnitSystem units)
    {
        if (IsUnusable(wear, at)) return "on the new tyres, after a session or a few weeks on the road";
        var (needMm, wornMm, mostWornMm, leftMm, openMm) = (0.0, 0.0, 0.0, double.PositiveInfinity, 0.0);
        foreach (var tyre in wear.Tyres)
        {
            if (tyre.Axle != at || TreadFigures.Compute(tyre) is not { } figures) continue;
            var leastMm = ShallowestMm(tyre);
            needMm = NeedMm(tyre);
            wornMm = Math.Max(wornMm, figures.WornMm.Value);
            mostWornMm = Math.Max(mostWornMm, (tyre.NewDepthMm ?? TreadFigures.UsualNewDepthMm.Value) - leastMm);
            openMm = Math.Max(openMm, Uncertainty.StandardErrorsAtNinetyPct * (tyre.GaugeErrorMm ?? TreadDepths.UsualGaugeErrorMm));
            leftMm = Math.Min(leftMm, leastMm - (IsNearItsEnd(leastMm, needMm) ? TreadDepths.LegalLeastMm : TreadDepths.WetGripMm));
        }

        if (wornMm > 0)
        {
            var ofRest = leftMm > openMm ? leftMm / Math.Max(mostWornMm, wornMm) * (1 - Math.Min(1, double.Hypot(openMm / leftMm, LastsLess))) : 0;
            if (wear.Use.TrackLaps is > 0 and var laps && TrackShare.Compute(wear.Use).Value >= CountsByLaps)
                return Bounded(laps * needMm / wornMm, laps * ofRest, LapSteps, LeastLaps, MostLaps) is { } count ? Prose.Write(units, $"in {count:n} laps") : Now;
            if (wear.Use.RoadKm is > 0 and var roadKm)
                return Bounded(roadKm * needMm / wornMm, roadKm * ofRest, KmSteps, LeastKm, MostKm) is { } km ? $"in {RoadWords.About(units, km)}" : Now;
            if (leftMm < needMm) return Now;
        }

        return "after the next session or a few weeks on the road";
    }

    /// <summary>The shallowest place of an axle's treads where the next reading finds them below what serves in the wet, mm; null where it does not, or they were not read, or a tyre has to be replaced before driving.</summary>
    public static double? EndMm(WearCase wear, CarAxle at)
    {
        if (IsUnusable(wear, at)) return null;
        var (leastMm, needMm) = (double.PositiveInfinity, LeastMm);
        foreach (var tyre in wear.Tyres)
        {
            if (tyre.Axle == at) (leastMm, needMm) = (Math.Min(leastMm, ShallowestMm(tyre)), Math.Max(needMm, NeedMm(tyre)));
        }

        return IsNearItsEnd(leastMm, needMm) ? leastMm : null;
    }

    private static bool IsUnusable(WearCase wear, CarAxle at)
    {
        foreach (var position in wear.Unusable)
        {
            if (WheelPositions.AxleOf(position) == at) return true;
        }

        return false;
    }

    private const string Now = "before the next drive";

    private static bool IsNearItsEnd(double leastMm, double needMm) => leastMm < TreadDepths.WetGripMm + needMm;

    private static double NeedMm(TyreReading tyre) => Math.Max(LeastMm, GaugeErrors * (tyre.GaugeErrorMm ?? TreadDepths.UsualGaugeErrorMm));

    private static double ShallowestMm(TyreReading tyre)
    {
        var leastMm = double.PositiveInfinity;
        foreach (var zone in tyre.Zones) leastMm = Math.Min(leastMm, zone.DepthMm);
        foreach (var place in tyre.AroundMm) leastMm = Math.Min(leastMm, Math.Min(place.Outer, Math.Min(place.Centre, place.Inner)));
        return leastMm;
    }

    /// <summary>The use until the next reading, no more than the tread has left; null where it has less than a step.</summary>
    private static double? Bounded(double wanted, double left, double step, double least, double most)
    {
        // Of little that is left, fifths of a step: nine laps rounded down to five would show no wear.
        var leftStep = left < LittleSteps * step ? step / 5 : step;
        var rounded = Math.Min(Math.Clamp(Math.Ceiling(wanted / step) * step, least, most), Math.Floor(left / leftStep) * leftStep);
        return rounded >= step ? rounded : null;
    }
}
