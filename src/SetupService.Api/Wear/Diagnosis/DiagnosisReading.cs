using System.Globalization;
using SetupService.Domain.Vehicles;
using SetupService.Domain.Wear.Cautions;
using SetupService.Domain.Wear.Readings;

namespace SetupService.Api.Wear.Diagnosis;

/// <summary>Reads a request on tyres into the domain's case.</summary>
internal static class DiagnosisReading
{
    private const int WeeksPerYear = 52;
    private const int FirstYear = 2000;

    /// <summary>The case.</summary>
    public static WearCase Case(DiagnosisRequest request, Vehicle? vehicle) => new()
    {
        Vehicle = vehicle ?? new Vehicle(),
        Use = request.Use?.ToDomain() ?? default,
        Tyres = [.. request.Tyres.Select(Tyre)],
    };

    /// <summary>A day written year-month-day; null where it is none.</summary>
    public static DateOnly? Day(string text) =>
        DateOnly.TryParseExact(text, "yyyy-MM-dd", CultureInfo.InvariantCulture, DateTimeStyles.None, out var day) ? day : null;

    /// <summary>The conditions of the tyres, for their cautions.</summary>
    public static TyreCondition[] Conditions(DiagnosisRequest request, DateOnly today) => [.. request.Tyres.Select(tyre => Condition(tyre, today))];

    /// <summary>The week a tyre was made in; null where it is not told.</summary>
    public static MadeWeek? Week(TyreReadingDocument tyre) => tyre.MadeWeek is { } text && MadeWeekReader.Read(text).TryGet(out var week, out _) ? week : null;

    private static TyreReading Tyre(TyreReadingDocument tyre) => new()
    {
        Position = tyre.Position,
        NewDepthMm = tyre.NewDepthMm,
        Zones = Zones(tyre),
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

    private static TreadZone[] Zones(TyreReadingDocument tyre)
    {
        if (tyre.Zones is { } zones) return [.. zones.Select(zone => new TreadZone(zone.AcrossPct, zone.DepthMm))];
        if (tyre.DepthMm is not { } depth) return [];
        var all = new List<DepthsDocument> { depth };
        if (tyre.AroundMm is { } around) all.AddRange(around);
        return TreadZone.FromDepths(new AcrossTread<double>(all.Average(one => one.Outer), all.Average(one => one.Centre), all.Average(one => one.Inner)));
    }

    private static TyreCondition Condition(TyreReadingDocument tyre, DateOnly today)
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

    /// <summary>The least depth of each third of the tread, wherever round the tyre.</summary>
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

        // A third without a reading is no shallower than the least read anywhere: for cautions that is the safe side.
        double In(double fromPct, double toPct) => zones.Where(zone => zone.AcrossPct >= fromPct && zone.AcrossPct < toPct).Select(zone => zone.DepthMm).DefaultIfEmpty(least).Min();
    }
}
