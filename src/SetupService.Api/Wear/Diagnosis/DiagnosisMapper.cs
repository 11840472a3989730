using System.Globalization;
using SetupService.Domain.Answers;
using SetupService.Domain.Handling.Cars;
using SetupService.Domain.Numerics;
using SetupService.Domain.Vehicles;
using SetupService.Domain.Wear.Cautions;
using SetupService.Domain.Wear.Diagnosis;
using SetupService.Domain.Wear.Readings;

namespace SetupService.Api.Wear.Diagnosis;

/// <summary>A diagnosis request together with what the study of it found.</summary>
/// <param name="Request">The request.</param>
/// <param name="Study">The causes and the wear model.</param>
/// <param name="Car">The car of the wear model with its assumptions; null without a wear model.</param>
/// <param name="NoModel">Why there is no wear model; null where there is one.</param>
/// <param name="Today">The day of the readings.</param>
internal sealed record DiagnosedCar(DiagnosisRequest Request, WearStudy Study, ResolvedHandlingCar? Car, string? NoModel, DateOnly Today)
{
    /// <summary>The state of each tyre, in the request's order.</summary>
    public TyreCondition[] Conditions { get; } = DiagnosisMapper.Conditions(Request, Today);

    /// <summary>The car as stated; null where none was.</summary>
    public Vehicle? Stated { get; private init; }

    /// <summary>Studies a request: causes always, the wear model where the car is known well enough.</summary>
    public static DiagnosedCar From(DiagnosisRequest request, Vehicle? vehicle, DateOnly today, UnitSystem units, WorkBudget budget)
    {
        var wear = DiagnosisMapper.Case(request, vehicle);
        var why = vehicle is null ? "needs a vehicle with axle loads, tracks, wheelbase and springs" : Lacks(vehicle);
        var car = why is null && vehicle is not null ? HandlingCarBuilder.Build(vehicle, units) : null;
        if (why is null && car is null) why = "the suspension's points do not hold the wheel where it is stated";
        if (why is null && wear.Use.TrackLaps is 0) (car, why) = (null, "the tyres are stated to have seen no track: camber short of the cornering is a matter of the track");
        var study = WearStudy.Compute(wear, car?.Car, budget);
        if (study.IsWorkSpent) (car, why) = (null, "the work allowed for one request was spent before the wear model was learned");
        else if (car is not null && study is { Front: null, Rear: null }) (car, why) = (null, "the car has no balance in such corners, or its wear model does not come to rest");
        return new(request, study, car, why, today) { Stated = vehicle };
    }

    private static string? Lacks(Vehicle vehicle)
    {
        var missing = HandlingCarBuilder.Missing(vehicle).ToList();
        if (vehicle.WheelbaseMm is null) missing.Add("/wheelbaseMm");
        if (missing.Count > 0) return "needs " + string.Join(", ", missing.Select(place => "/vehicle" + place));
        return LoadContradiction.Find(vehicle) is { Count: > 0 } contradictions ? contradictions[0].Message : null;
    }
}

/// <summary>Maps a diagnosis request to the case the domain studies.</summary>
internal static class DiagnosisMapper
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

    /// <summary>A day written year-month-day; null where the text is no such day.</summary>
    public static DateOnly? Day(string text) =>
        DateOnly.TryParseExact(text, "yyyy-MM-dd", CultureInfo.InvariantCulture, DateTimeStyles.None, out var day) ? day : null;

    /// <summary>The conditions of the tyres, for their cautions.</summary>
    public static TyreCondition[] Conditions(DiagnosisRequest request, DateOnly today) => [.. request.Tyres.Select(tyre => Condition(tyre, today))];

    /// <summary>The week a tyre was made in; null where it is not given.</summary>
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
