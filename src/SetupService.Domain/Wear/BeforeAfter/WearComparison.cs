using SetupService.Domain.Wear.Readings;
using SetupService.Domain.Wear.StraightWear;

namespace SetupService.Domain.Wear.BeforeAfter;

/// <summary>Whether a change of the car, or of tyres, changed how the tread wears.</summary>
public sealed record WearComparison
{
    /// <summary>Fewest readings at different distances that give a rate with its range.</summary>
    public const int FewestReadings = 3;

    /// <summary>What rates are compared by.</summary>
    public ComparedClock Clock { get; init; }

    /// <summary>The use rates belong to: a lap, a thousand kilometres, or a lap with the road between laps.</summary>
    public TyreUse Unit { get; init; }

    /// <summary>The lines before, with the scatter of all readings; null where there are too few.</summary>
    public WearFit? Before { get; init; }

    /// <summary>The lines after; null in the same case.</summary>
    public WearFit? After { get; init; }

    /// <summary>Number of readings before at different distances.</summary>
    public int BeforeDistinct { get; init; }

    /// <summary>The same after.</summary>
    public int AfterDistinct { get; init; }

    /// <summary>Each zone; null where nothing can be compared.</summary>
    public AcrossTread<ZoneComparison>? Zones { get; init; }

    /// <summary>The outer shoulder against the centre; null in the same case.</summary>
    public ShoulderChange? Outer { get; init; }

    /// <summary>The inner shoulder against the centre; null in the same case.</summary>
    public ShoulderChange? Inner { get; init; }

    /// <summary>Sessions on the side that has fewer; those after count as one where nothing was read there.</summary>
    public int SessionCount { get; init; }

    /// <summary>What became of the wear, by the shoulder that differed most from the centre before.</summary>
    public ChangeOutcome Outcome => ChangeOutcomes.Judge(this);

    /// <summary>The comparison.</summary>
    public static WearComparison Compute(ComparisonQuestion question)
    {
        ArgumentNullException.ThrowIfNull(question);
        var (before, after) = Pooled(question);
        var none = new WearComparison
        {
            BeforeDistinct = WearDesign.DistinctCount(question.Before.Span),
            AfterDistinct = WearDesign.DistinctCount(question.After.Span),
            Before = before,
            After = after,
        };
        if (before is null) return none;
        var (clock, unit) = Compared(before.Design, after?.Design);
        if (clock == ComparedClock.None) return none;
        var main = SessionsOf(unit.TrackLaps > 0);
        var sessionCount = Math.Min(Sessions.Count(question.BeforeSessions.Span), after is null ? 1 : Sessions.Count(question.AfterSessions.Span));
        var further = new FurtherReadings(before, question.After.Span, unit, question.PlannedReadings, main);
        return none with
        {
            Clock = clock,
            Unit = unit,
            Zones = new(Zone(TreadPlace.Outer), Zone(TreadPlace.Centre), Zone(TreadPlace.Inner)),
            Outer = ShoulderChange.Compute(before, after, TreadPlace.Outer, unit, main, sessionCount),
            Inner = ShoulderChange.Compute(before, after, TreadPlace.Inner, unit, main, sessionCount),
            SessionCount = sessionCount,
        };

        ZoneComparison Zone(TreadPlace place)
        {
            var rate = RateChange.Compute(before, after, place, unit, main);
            var road = clock == ComparedClock.Track ? RateChange.Compute(before, after, place, TyreUse.Road1000Km, SessionsOf(isTrack: false)) : null;
            var sought = question.ExpectedRatio ?? rate?.Ratio?.Value;
            if (sought is not { } ratio || ratio == 1 || !(rate?.BeforeMm.Value > 0)) return new(rate, road, sought, null, null, null);
            return new(
                rate,
                road,
                ratio,
                further.LeastUse(place, ratio),
                clock != ComparedClock.Road && question.PlannedLaps is { } laps ? further.Power(place, ratio, laps) : null,
                rate.Value.IsShown == true ? 0 : further.Sessions(place, ratio, sessionCount));
        }

        SessionVariance SessionsOf(bool isTrack)
        {
            var variance = question.BetweenSessions * question.BetweenSessions;
            return new(
                variance * Sessions.SquaredWeights(before.Design, question.Before.Span, question.BeforeSessions.Span, isTrack),
                after is null ? variance : variance * Sessions.SquaredWeights(after.Design, question.After.Span, question.AfterSessions.Span, isTrack));
        }
    }

    /// <summary>Both fits with the scatter of all readings: the gauge is the same.</summary>
    private static (WearFit? Before, WearFit? After) Pooled(ComparisonQuestion question)
    {
        var (before, after) = (Fitted(question.Before.Span, question.GaugeErrorMm), Fitted(question.After.Span, question.GaugeErrorMm));
        if (before is null || after is null) return (before, after);
        var scatter = GaugeScatter.Estimate(
            Squares(before) + Squares(after), before.Scatter.DegreesOfFreedom + after.Scatter.DegreesOfFreedom, question.GaugeErrorMm);
        return (before with { Scatter = scatter }, after with { Scatter = scatter });
    }

    private static WearFit? Fitted(ReadOnlySpan<DepthReading> readings, double? gaugeErrorMm) =>
        WearDesign.DistinctCount(readings) >= FewestReadings ? WearFit.Fit(readings, gaugeErrorMm) : null;

    private static double Squares(WearFit fit) => fit.Zones.Outer.SquaresMm2 + fit.Zones.Centre.SquaresMm2 + fit.Zones.Inner.SquaresMm2;

    /// <summary>Laps where both lists have them, else kilometres, else both in the same mix.</summary>
    private static (ComparedClock Clock, TyreUse Unit) Compared(WearDesign before, WearDesign? after)
    {
        if (IsTold(TyreUse.OneLap)) return (ComparedClock.Track, TyreUse.OneLap);
        if (IsTold(TyreUse.Road1000Km)) return (ComparedClock.Road, TyreUse.Road1000Km);
        if (before.Clock != WearClock.InProportion && after?.Clock != WearClock.InProportion) return (ComparedClock.None, default);
        var mix = before.Clock == WearClock.InProportion ? before.Mix : after!.Mix;
        var lap = new TyreUse(mix.RoadKm / mix.TrackLaps, 1);
        return IsTold(lap) ? (ComparedClock.SameMix, lap) : (ComparedClock.None, default);

        bool IsTold(TyreUse use) => before.Share(use) is not null && (after is null || after.Share(use) is not null);
    }
}

/// <summary>What rates before and after are compared by.</summary>
public enum ComparedClock
{
    /// <summary>Nothing: no clock is known of both.</summary>
    None,

    /// <summary>Wear per lap.</summary>
    Track,

    /// <summary>Wear per kilometre on the road.</summary>
    Road,

    /// <summary>Wear per lap together with the road between laps, where both always moved in the same proportion.</summary>
    SameMix,
}

/// <summary>What a comparison of wear before and after a change starts from.</summary>
public sealed record ComparisonQuestion
{
    /// <summary>Further readings where not stated how many.</summary>
    public const int UsualReadings = 4;

    /// <summary>Readings before the change, in the order they were taken.</summary>
    public required ReadOnlyMemory<DepthReading> Before { get; init; }

    /// <summary>Readings after it; empty where there are none yet. Their clocks may restart at zero.</summary>
    public ReadOnlyMemory<DepthReading> After { get; init; }

    /// <summary>The session of each reading before; empty = all in one.</summary>
    public ReadOnlyMemory<int> BeforeSessions { get; init; }

    /// <summary>The session of each reading after; empty = all in one.</summary>
    public ReadOnlyMemory<int> AfterSessions { get; init; }

    /// <summary>How much rates vary between sessions with nothing changed, one standard deviation as a share.</summary>
    public double BetweenSessions { get; init; } = Sessions.UsualSpread;

    /// <summary>Stated standard deviation of one reading, mm; null where it is not stated.</summary>
    public double? GaugeErrorMm { get; init; }

    /// <summary>Ratio of the rates the change is hoped to bring; null where the one seen is asked for.</summary>
    public double? ExpectedRatio { get; init; }

    /// <summary>How many further readings are planned.</summary>
    public int PlannedReadings { get; init; } = UsualReadings;

    /// <summary>How many further laps are planned; null where none are, or laps are not compared.</summary>
    public double? PlannedLaps { get; init; }
}

/// <summary>A zone's wear before and after a change.</summary>
/// <param name="Main">By the compared clock; null where the readings before do not determine it.</param>
/// <param name="Road">Per 1000 km beside it, where laps are compared and both lists separate the road; else null.</param>
/// <param name="SoughtRatio">The ratio further readings are to show: the one expected, or the one seen; null where there is none.</param>
/// <param name="LeastUse">Further use that would show it four times in five, in units of the clock; null where none would, or nothing is sought.</param>
/// <param name="PlannedPower">How often the planned use would show it, 0 to 1; null where none is planned or nothing is sought.</param>
/// <param name="FurtherSessions">Further sessions on each side that would show it four times in five; 0 where it is shown, null where none would or nothing is sought.</param>
public readonly record struct ZoneComparison(RateChange? Main, RateChange? Road, double? SoughtRatio, double? LeastUse, double? PlannedPower, int? FurtherSessions);
