using SetupService.Api.Http.Shared;
using SetupService.Domain.Answers;
using SetupService.Domain.Wear.BeforeAfter;
using SetupService.Domain.Wear.Forecast;
using SetupService.Domain.Wear.Readings;

namespace SetupService.Api.Wear.BeforeAfter;

/// <summary>Maps a comparison of wear before and after a change to the answer.</summary>
internal static class BeforeAfterMapper
{
    /// <summary>The answer.</summary>
    public static BeforeAfterAnswer ToAnswer(BeforeAfterRequest request, ComparisonQuestion question, WearComparison comparison, UnitSystem units) => new()
    {
        Summary = ComparisonWords.Summary(comparison, question, units),
        Clock = comparison.Clock,
        RoadPerLapKm = comparison.Clock == ComparedClock.SameMix ? comparison.Unit.RoadKm : null,
        Zones = comparison.Zones is not { } zones ? null : new ZoneChangesResponse
        {
            Outer = Zone(comparison, zones.Outer, ComparisonWords.Zone(comparison, question, TreadPlace.Outer, units)),
            Centre = Zone(comparison, zones.Centre, ComparisonWords.Zone(comparison, question, TreadPlace.Centre, units)),
            Inner = Zone(comparison, zones.Inner, ComparisonWords.Zone(comparison, question, TreadPlace.Inner, units)),
        },
        OuterToCentre = ShoulderChangeResponse.From(comparison.Outer),
        InnerToCentre = ShoulderChangeResponse.From(comparison.Inner),
        PlannedReadings = question.PlannedReadings,
        ScatterMm = (comparison.Before ?? comparison.After)?.Scatter.StandardDeviationMm,
        Unknown = Unknown(comparison),
        Method = "wear-before-after",
        Edition = Edition.Current,
        Assumptions = Assumptions(request, comparison),
        Cautions = CautionResponse.From(Cautions(question, units)),
    };

    private static ZoneChangeResponse Zone(WearComparison comparison, in ZoneComparison zone, string text) => new()
    {
        Text = text,
        Rate = RateChangeResponse.From(zone.Main),
        Road = RateChangeResponse.From(zone.Road),
        SoughtRatio = zone.SoughtRatio,
        LapsToShow = comparison.Unit.TrackLaps > 0 ? zone.LeastUse * comparison.Unit.TrackLaps : null,
        KmToShow = comparison.Unit.RoadKm > 0 ? zone.LeastUse * comparison.Unit.RoadKm : null,
        PlannedPower = zone.PlannedPower,
    };

    private static UnknownResponse[] Unknown(WearComparison comparison)
    {
        var list = new List<UnknownResponse>();
        if (comparison.Zones is not { } zones)
        {
            foreach (var output in (ReadOnlySpan<string>)["/zones", "/outerToCentre", "/innerToCentre"]) Add(output, ComparisonWords.NoComparison(comparison));
            return [.. list];
        }

        foreach (var (name, zone) in (ReadOnlySpan<(string, ZoneComparison)>)[("outer", zones.Outer), ("centre", zones.Centre), ("inner", zones.Inner)])
        {
            var path = "/zones/" + name;
            if (comparison.After is null) Add(path + "/rate/ratio", ComparisonWords.NoAfter(comparison));
            else if (zone.Main?.Ratio is { IsBounded: false }) Add(path + "/rate/ratio/upper", "the rate before is not shown to be above zero, so no ratio is too large");
            if (ComparisonWords.NoPlan(comparison, zone) is { } reason) Add(comparison.Clock == ComparedClock.Road ? path + "/kmToShow" : path + "/lapsToShow", reason);
        }

        if (comparison.After is null) Add("/outerToCentre/after", ComparisonWords.NoAfter(comparison));
        else if (comparison.Outer is { IsShown: null }) Add("/outerToCentre/isShown", "a rate is not shown to be above zero");
        if (comparison.After is null) Add("/innerToCentre/after", ComparisonWords.NoAfter(comparison));
        else if (comparison.Inner is { IsShown: null }) Add("/innerToCentre/isShown", "a rate is not shown to be above zero");
        return [.. list];

        void Add(string output, string reason) => list.Add(UnknownResponse.Create(output, reason, comparison.After is null ? ["/after"] : ["/before", "/after"]));
    }

    private static AssumptionResponse[] Assumptions(BeforeAfterRequest request, WearComparison comparison)
    {
        var list = new List<Assumption>
        {
            new("/after", null, "same track, season, driver and kind of tyre", "Tire Sci. Technol. 13(1), abstract: repeats weeks apart moved rates by up to 30 %, ratios between tyres of one car by 2 %", "Compare nothing read in different seasons or on different tracks: such a difference may be weather or surface, and no range here holds it. Two tyres of one car over the same laps compare best."),
        };
        if (request.GaugeErrorMm is null)
            list.Add(new("/gaugeErrorMm", TreadDepths.UsualGaugeErrorMm, null, "judgement: a hand gauge in untrained hands", "Judges whether tread grows; the ranges come from the readings' own scatter."));
        if (comparison.Before is { Scatter.IsFloor: true } before)
            list.Add(new("/before", before.Scatter.StandardDeviationMm, null, "rounding to 0.1 mm, or 0.3 of the gauge error given; derived", "The readings lie closer to the line than a gauge reads; this scatter in mm is taken in its place."));
        if (request.PlannedReadings is null && comparison.Zones is not null)
            list.Add(new("/plannedReadings", ComparisonQuestion.UsualReadings, null, "our choice", "How many readings the further use is read at, at equal steps, with nothing but the compared clock moving between them."));
        return AssumptionResponse.From(list);
    }

    private static List<Caution> Cautions(ComparisonQuestion question, UnitSystem units)
    {
        var list = new List<Caution>();
        var leastMm = LeastMm(question.After.Length > 0 ? question.After.Span[^1] : question.Before.Span[^1]);
        if (ForecastCautions.WornOut(leastMm, units) is { } worn) list.Add(worn);
        list.Add(ForecastCautions.Inspection);
        return list;
    }

    private static double LeastMm(in DepthReading reading) => Math.Min(reading.DepthMm.Outer, Math.Min(reading.DepthMm.Centre, reading.DepthMm.Inner));
}
