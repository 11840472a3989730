using SetupService.Api.Http.Shared;
using SetupService.Domain.Answers;
using SetupService.Domain.Handling.Cornering;
using SetupService.Domain.Vehicles;
using SetupService.Domain.Wear.BeforeAfter;
using SetupService.Domain.Wear.Forecast;
using SetupService.Domain.Wear.Readings;

namespace SetupService.Api.Wear.BeforeAfter;

/// <summary>Maps a comparison of wear before and after a change to the answer.</summary>
internal static class BeforeAfterMapper
{
    /// <summary>The comparison of each tyre of a request.</summary>
    public static TyreComparison[] Compute(BeforeAfterRequest request) => [.. request.Before.Tyres.Select(before =>
    {
        var after = After(request, before.Position);
        return TyreComparison.Compute(before.Position, new ComparisonQuestion
        {
            Before = before.ToDomain(),
            After = after?.ToDomain() ?? [],
            BeforeSessions = before.Sessions(),
            AfterSessions = after?.Sessions() ?? [],
            BetweenSessions = request.BetweenSessionsPct / 100 ?? Sessions.UsualSpread,
            GaugeErrorMm = before.GaugeErrorMm ?? after?.GaugeErrorMm,
            ExpectedRatio = request.ExpectedRatio,
            PlannedReadings = request.PlannedReadings ?? ComparisonQuestion.UsualReadings,
            PlannedLaps = request.PlannedLaps,
        });
    })];

    /// <summary>The answer.</summary>
    public static BeforeAfterAnswer ToAnswer(BeforeAfterRequest request, TyreComparison[] tyres, UnitSystem units) => new()
    {
        Summary = ComparisonWords.Summary(tyres, units),
        Outcome = ChangeOutcomes.Judge(tyres),
        Tyres = [.. tyres.Select(tyre => Tyre(tyre, units))],
        PlannedReadings = request.PlannedReadings ?? ComparisonQuestion.UsualReadings,
        BetweenSessionsPct = request.BetweenSessionsPct ?? (100 * Sessions.UsualSpread),
        Unknown = Unknown(request, tyres),
        Method = "wear-before-after",
        Edition = Edition.Current,
        Next = NextCalls.AfterBeforeAfter,
        Assumptions = Assumptions(request, tyres),
        Cautions = CautionResponse.From(Cautions(tyres, units)),
    };

    private static TyreReadingsDocument? After(BeforeAfterRequest request, WheelPosition position) =>
        request.After is { } after ? Array.Find(after.Tyres, tyre => tyre.Position == position) : null;

    /// <summary>One tyre.</summary>
    public static TyreChangeResponse Tyre(TyreComparison tyre, UnitSystem units)
    {
        var comparison = tyre.Wear;
        return new TyreChangeResponse
        {
            Position = tyre.Position,
            Text = ComparisonWords.Describe(tyre, units),
            Outcome = comparison.Outcome,
            OuterToCentre = ShoulderChangeResponse.From(comparison.Outer),
            InnerToCentre = ShoulderChangeResponse.From(comparison.Inner),
            Zones = comparison.Zones is not { } zones ? null : new ZoneChangesResponse
            {
                Outer = Zone(comparison, zones.Outer, ComparisonWords.Zone(tyre, TreadPlace.Outer, units)),
                Centre = Zone(comparison, zones.Centre, ComparisonWords.Zone(tyre, TreadPlace.Centre, units)),
                Inner = Zone(comparison, zones.Inner, ComparisonWords.Zone(tyre, TreadPlace.Inner, units)),
            },
            Clock = comparison.Clock,
            RoadPerLapKm = comparison.Clock == ComparedClock.SameMix ? comparison.Unit.RoadKm : null,
            ScatterMm = (comparison.Before ?? comparison.After)?.Scatter.StandardDeviationMm,
        };
    }

    private static ZoneChangeResponse Zone(WearComparison comparison, in ZoneComparison zone, string text) => new()
    {
        Text = text,
        Rate = RateChangeResponse.From(zone.Main),
        Road = RateChangeResponse.From(zone.Road),
        SoughtRatio = zone.SoughtRatio,
        LapsToShow = comparison.Unit.TrackLaps > 0 ? zone.LeastUse * comparison.Unit.TrackLaps : null,
        KmToShow = comparison.Unit.RoadKm > 0 ? zone.LeastUse * comparison.Unit.RoadKm : null,
        FurtherSessionCount = zone.FurtherSessions,
        PlannedPower = zone.PlannedPower,
    };

    private static UnknownResponse[] Unknown(BeforeAfterRequest request, TyreComparison[] tyres)
    {
        var list = new List<UnknownResponse>();
        for (var i = 0; i < tyres.Length; i++)
        {
            var (comparison, path) = (tyres[i].Wear, FormattableString.Invariant($"/tyres/{i}"));
            var before = FormattableString.Invariant($"/before/tyres/{i}/readings");
            var after = request.After is { } set && Array.FindIndex(set.Tyres, tyre => tyre.Position == tyres[i].Position) is var index and >= 0
                ? FormattableString.Invariant($"/after/tyres/{index}/readings") : request.After is null ? "/after" : "/after/tyres";
            if (comparison.Zones is not { } zones)
            {
                foreach (var output in (ReadOnlySpan<string>)["/zones", "/outerToCentre", "/innerToCentre"]) Add(path + output, ComparisonWords.NoComparison(comparison), before, after);
                continue;
            }

            foreach (var (name, zone) in (ReadOnlySpan<(string, ZoneComparison)>)[("outer", zones.Outer), ("centre", zones.Centre), ("inner", zones.Inner)])
            {
                var at = $"{path}/zones/{name}";
                if (comparison.After is null) Add(at + "/rate/ratio", ComparisonWords.NoAfter(comparison), after);
                else if (zone.Main?.Ratio is { IsBounded: false }) Add(at + "/rate/ratio/upper", "the rate before is not shown to be above zero, so no ratio is too large", before);
                if (ComparisonWords.NoPlan(comparison, zone) is { } reason) Add(at + (comparison.Clock == ComparedClock.Road ? "/kmToShow" : "/lapsToShow"), reason, before, after);
                if (ComparisonWords.NoSessions(comparison, zone) is { } why) Add(at + "/furtherSessionCount", why, before, after);
            }

            Shoulder(path + "/outerToCentre", comparison.Outer);
            Shoulder(path + "/innerToCentre", comparison.Inner);

            void Shoulder(string output, ShoulderChange? change)
            {
                if (comparison.After is null) Add(output + "/after", ComparisonWords.NoAfter(comparison), after);
                else if (change is { IsShown: null }) Add(output + "/isShown", "a rate is not shown to be above zero", before, after);
            }
        }

        return [.. list];

        void Add(string output, string reason, params string[] needs) => list.Add(UnknownResponse.Create(output, reason, needs));
    }

    /// <summary>What a comparison takes although nobody gave it.</summary>
    public static AssumptionResponse[] Assumptions(BeforeAfterRequest request, TyreComparison[] tyres)
    {
        var list = new List<Assumption>
        {
            new("/after", null, "same track, driver and kind of tyre", "Tire Sci. Technol. 13(1), abstract: repeats weeks apart moved rates by up to 30 %, ratios between tyres of one car by 2 %", "Another track, driver or tyre wears otherwise whatever was changed on the car. Two tyres of one car over the same laps compare best."),
        };
        if (request.BetweenSessionsPct is null)
            list.Add(new("/betweenSessionsPct", 100 * Sessions.UsualSpread, null, "judgement; repeats weeks apart moved rates by up to 30 % (Tire Sci. Technol. 13(1), abstract)", "One standard deviation, in percent, of a wear rate from session to session with nothing changed; half of it in the ratio of a shoulder to the centre. More laps in a session do not take it away, more sessions do."));
        for (var i = 0; i < tyres.Length; i++)
        {
            var path = FormattableString.Invariant($"/before/tyres/{i}");
            if (tyres[i].Question.GaugeErrorMm is null)
                list.Add(new(path + "/gaugeErrorMm", TreadDepths.UsualGaugeErrorMm, null, "judgement: a hand gauge in untrained hands", "Judges whether tread grows; the ranges come from the readings' own scatter."));
            if (tyres[i].Wear.Before is { Scatter.IsFloor: true } before)
                list.Add(new(path + "/readings", before.Scatter.StandardDeviationMm, null, "rounding to 0.1 mm, or 0.3 of the gauge error given; derived", "The readings lie closer to the line than a gauge reads; this scatter in mm is taken in its place."));
            if (request.Before.Tyres[i].Readings.All(one => one.Session is null))
                list.Add(new(path + "/readings", 1, null, "the request", FormattableString.Invariant($"No session is named: the readings of the {CorneringWords.Name(tyres[i].Position)} tyre before the change, and those after it, count as one session each.")));
        }

        if (request.PlannedReadings is null && tyres.Any(tyre => tyre.Wear.Zones is not null))
            list.Add(new("/plannedReadings", ComparisonQuestion.UsualReadings, null, "our choice", "How many readings the further use is read at, at equal steps, with nothing but the compared clock moving between them."));
        return AssumptionResponse.From(list);
    }

    private static List<Caution> Cautions(TyreComparison[] tyres, UnitSystem units)
    {
        var list = new List<Caution>();
        foreach (var tyre in tyres)
        {
            var leastMm = LeastMm(tyre.Question.After.Length > 0 ? tyre.Question.After.Span[^1] : tyre.Question.Before.Span[^1]);
            if (ForecastCautions.WornOut(tyre.Position, leastMm, units) is { } worn) list.Add(worn);
        }

        list.Add(ForecastCautions.Inspection);
        return list;
    }

    private static double LeastMm(in DepthReading reading) => Math.Min(reading.DepthMm.Outer, Math.Min(reading.DepthMm.Centre, reading.DepthMm.Inner));
}
