using System.Globalization;
using SetupService.Domain.Wear.Cautions;
using SetupService.Domain.Wear.Readings;

namespace SetupService.Api.Wear;

/// <summary>Maps what was read of a tyre to domain values.</summary>
internal static class TyreReadingMapper
{
    private const int WeeksPerYear = 52;
    private const int FirstYear = 2000;

    /// <summary>A day written year-month-day; null where the text is no such day.</summary>
    public static DateOnly? Day(string text) =>
        DateOnly.TryParseExact(text, "yyyy-MM-dd", CultureInfo.InvariantCulture, DateTimeStyles.None, out var day) ? day : null;

    /// <summary>The week a tyre was made in; null where it is not given.</summary>
    public static MadeWeek? Week(TyreReadingDocument tyre) => tyre.MadeWeek is { } text && MadeWeekReader.Read(text).TryGet(out var week, out _) ? week : null;

    /// <summary>The reading.</summary>
    public static TyreReading Map(TyreReadingDocument tyre) => new()
    {
        Position = tyre.Position,
        NewDepthMm = tyre.NewDepthMm,
        Zones = Across(tyre.DepthMm, tyre.AroundMm, tyre.Zones),
        AroundMm = tyre is { AroundMm: { } around, DepthMm: { } depth } ? [depth.ToDomain(), .. around.Select(one => one.ToDomain())] : [],
        Patterns = tyre.Patterns,
        TemperatureC = tyre.TemperatureC?.ToDomain(),
        TemperatureBy = tyre.TemperatureBy,
        SecondsAfterLap = tyre.SecondsAfterLap,
        TemperatureWindowC = tyre.TemperatureWindowC is { } window ? (window.From, window.To) : null,
        Pressure = tyre.PressureKpa?.ToDomain() ?? default,
        GaugeErrorMm = tyre.GaugeErrorMm,
        History = tyre.History is { } history ? [.. history.Select(leg => leg.ToDomain())] : [],
        MadeInWeek = Week(tyre) is { } week ? ((week.Year - FirstYear) * WeeksPerYear) + week.Week : null,
    };

    /// <summary>Depths across a tread, however they were given, the mean of all places round it; empty where none were.</summary>
    public static TreadZone[] Across(DepthsDocument? depthMm, DepthsDocument[]? aroundMm, ZoneDocument[]? zones)
    {
        if (zones is not null) return [.. zones.Select(zone => new TreadZone(zone.AcrossPct, zone.DepthMm))];
        if (depthMm is not { } depth) return [];
        var (outer, centre, inner, count) = (depth.Outer, depth.Centre, depth.Inner, 1);
        foreach (var one in aroundMm ?? []) (outer, centre, inner, count) = (outer + one.Outer, centre + one.Centre, inner + one.Inner, count + 1);
        return TreadZone.FromDepths(new AcrossTread<double>(outer / count, centre / count, inner / count));
    }

    /// <summary>The state of a tyre, for its cautions.</summary>
    /// <param name="tyre">What was read of it.</param>
    /// <param name="today">The day of the reading.</param>
    public static TyreCondition Condition(TyreReadingDocument tyre, DateOnly today)
    {
        var week = Week(tyre);
        return new TyreCondition(tyre.Position)
        {
            LeastDepthMm = Least(tyre),
            GaugeErrorMm = tyre.GaugeErrorMm ?? TreadDepths.UsualGaugeErrorMm,
            Damage = tyre.Damage ?? [],
            AgeYears = week?.AgeYears(today),
            MayBeOlder = week is { IsDecadeKnown: false },
        };
    }

    /// <summary>The least depth in each third of the tread, mm, over all places round the tyre; null without depths.</summary>
    private static AcrossTread<double>? Least(TyreReadingDocument tyre)
    {
        if (tyre.DepthMm is { } depth)
        {
            var all = (tyre.AroundMm ?? []).Append(depth).ToList();
            return new(all.Min(one => one.Outer), all.Min(one => one.Centre), all.Min(one => one.Inner));
        }

        if (tyre.Zones is not { } zones) return null;
        var least = zones.Min(zone => zone.DepthMm);
        return new(In(0, 100.0 / 3), In(100.0 / 3, 200.0 / 3), In(200.0 / 3, 101));

        // A third without a reading gets the least depth read anywhere: for cautions that is the safe side.
        double In(double fromPct, double toPct) => zones.Where(zone => zone.AcrossPct >= fromPct && zone.AcrossPct < toPct).Select(zone => zone.DepthMm).DefaultIfEmpty(least).Min();
    }
}
