using System.ComponentModel.DataAnnotations;
using System.Text.Json.Serialization;
using FluentValidation;
using SetupService.Api.Http.Contract;
using SetupService.Api.Http.Faults;
using SetupService.Api.Http.Rules;
using SetupService.Api.Http.Shared;
using SetupService.Domain.Handling.Cornering;
using SetupService.Domain.Vehicles;
using SetupService.Domain.Wear.BeforeAfter;

namespace SetupService.Api.Wear.BeforeAfter;

/// <summary>Tread depths before and after something was changed: a setting, the pressure, the tyre.</summary>
public sealed record BeforeAfterRequest
{
    /// <summary>The tyres before the change.</summary>
    [JsonRequired]
    public TyreSetDocument Before { get; set; } = null!;

    /// <summary>The same places after it; clocks may start anew. Left out while the session is planned.</summary>
    public TyreSetDocument? After { get; set; }

    /// <summary>How much wear rates vary between sessions with nothing changed, one standard deviation; 20 where left out.</summary>
    [Range(0, 100)]
    [Sample(20.0)]
    public double? BetweenSessionsPct { get; set; }

    /// <summary>Ratio of the rates, after over before, that the change is hoped to bring; the one seen where left out.</summary>
    [Range(0, 10)]
    [Sample(0.8)]
    public double? ExpectedRatio { get; set; }

    /// <summary>How many further readings are planned; 4 where left out.</summary>
    [Range(2, 100)]
    [Sample(4)]
    public int? PlannedReadings { get; set; }

    /// <summary>How many further laps are planned; how often they would show the change is answered where given. Counts only where laps are compared.</summary>
    [Range(1, 100_000)]
    [Sample(60.0)]
    public double? PlannedLaps { get; set; }
}

/// <summary>The tyres of a car with their readings.</summary>
public sealed record TyreSetDocument : ITyreHistories
{
    /// <summary>The tyres, each wheel once.</summary>
    [JsonRequired]
    [Count(1, 4)]
    public TyreReadingsDocument[] Tyres { get; set; } = [];
}

/// <summary>What a comparison must keep beyond types and ranges: sound readings, and nothing after the change without its like before.</summary>
public sealed class BeforeAfterRules : AbstractValidator<BeforeAfterRequest>
{
    /// <summary>Creates the rules; they hold no state.</summary>
    public BeforeAfterRules()
    {
        RuleFor(request => request.Before).SetValidator(new TyreSetRules());
        RuleFor(request => request.After).SetValidator(new TyreSetRules()!);
        RuleFor(request => request.After!.Tyres).Must((request, tyres) => tyres.All(tyre => tyre is null || request.Before.Tyres.Any(before => before?.Position == tyre.Position)))
            .When(request => request.After?.Tyres is not null && request.Before?.Tyres is not null)
            .Says(FaultCodes.Inconsistent, (request, tyres) => FormattableString.Invariant($"after has a tyre ({string.Join(", ", tyres.Where(tyre => tyre is not null && request.Before.Tyres.All(before => before?.Position != tyre.Position)).Select(tyre => CorneringWords.Name(tyre.Position)))}) that before has not: there is nothing to compare it with."))
            .WhenRead("Before.Tyres", "After.Tyres");
    }
}

/// <summary>What a set of tyres must keep: sound readings of each.</summary>
public sealed class TyreSetRules : AbstractValidator<TyreSetDocument>
{
    /// <summary>Creates the rules; they hold no state.</summary>
    public TyreSetRules() => RuleForEach(set => set.Tyres).SetValidator(new TyreReadingsRules());
}

/// <summary>Whether a change changed how the tread wears.</summary>
public sealed record BeforeAfterAnswer
{
    /// <summary>Did it work, by the shoulders against the centre, and what would settle it, in at most five sentences.</summary>
    [Sample("It worked. Front left: the outer shoulder wears 1.30 times as fast as the centre, 2.06 times before the change, more than sessions vary.")]
    public required string Summary { get; init; }

    /// <summary>What became of the wear of all tyres.</summary>
    [Sample("better")]
    public required ChangeOutcome Outcome { get; init; }

    /// <summary>Each tyre, in the order of before.</summary>
    public required TyreChangeResponse[] Tyres { get; init; }

    /// <summary>Further readings the plan counts with.</summary>
    [Sample(4)]
    public required int PlannedReadings { get; init; }

    /// <summary>How much rates are taken to vary between sessions with nothing changed, one standard deviation.</summary>
    [Sample(20.0)]
    public required double BetweenSessionsPct { get; init; }

    /// <summary>What is null above, and why.</summary>
    public required UnknownResponse[] Unknown { get; init; }

    /// <summary>Key of the method page.</summary>
    [Sample("wear-before-after")]
    public required string Method { get; init; }

    /// <summary>Edition of model and tables.</summary>
    [Sample("2026.11")]
    public required string Edition { get; init; }

    /// <summary>The calls that usually follow.</summary>
    public required NextCallResponse[] Next { get; init; }

    /// <summary>What was used although nobody gave it.</summary>
    public required AssumptionResponse[] Assumptions { get; init; }

    /// <summary>What can hurt somebody.</summary>
    public required CautionResponse[] Cautions { get; init; }
}

/// <summary>One tyre before and after.</summary>
public sealed record TyreChangeResponse
{
    /// <summary>Where it is on the car.</summary>
    [Sample("frontLeft")]
    public required WheelPosition Position { get; init; }

    /// <summary>The worse shoulder against the centre, before and after; else the zone that wore fastest.</summary>
    [Sample("the outer shoulder wears 1.30 times as fast as the centre, 2.06 times before the change, more than sessions vary.")]
    public required string Text { get; init; }

    /// <summary>What became of its wear, by the shoulder that differed most from the centre before.</summary>
    [Sample("better")]
    public required ChangeOutcome Outcome { get; init; }

    /// <summary>The outer shoulder against the centre; null where nothing can be compared.</summary>
    public required ShoulderChangeResponse? OuterToCentre { get; init; }

    /// <summary>The inner shoulder against the centre; null likewise.</summary>
    public required ShoulderChangeResponse? InnerToCentre { get; init; }

    /// <summary>Each zone; null likewise.</summary>
    public required ZoneChangesResponse? Zones { get; init; }

    /// <summary>What rates are compared by; none where nothing can be compared.</summary>
    [Sample("track")]
    public required ComparedClock Clock { get; init; }

    /// <summary>Road that goes with each lap; null unless the clock is sameMix.</summary>
    [Sample(58.8)]
    public required double? RoadPerLapKm { get; init; }

    /// <summary>Scatter of one reading about straight wear, one standard deviation over both lists; null where there are too few.</summary>
    [Sample(0.12)]
    public required double? ScatterMm { get; init; }
}

/// <summary>The three zones across the tread.</summary>
public sealed record ZoneChangesResponse
{
    /// <summary>The outer shoulder.</summary>
    public required ZoneChangeResponse Outer { get; init; }

    /// <summary>The middle.</summary>
    public required ZoneChangeResponse Centre { get; init; }

    /// <summary>The inner shoulder.</summary>
    public required ZoneChangeResponse Inner { get; init; }
}

/// <summary>A zone's wear before and after.</summary>
public sealed record ZoneChangeResponse
{
    /// <summary>What happened to it, and what more use would show.</summary>
    [Sample("At the outer shoulder wear went from 3.7 mm per 100 laps to 2.34 mm per 100 laps: 0.63 times (90 % range 0.58 to 0.69). The readings show a change.")]
    public required string Text { get; init; }

    /// <summary>By the compared clock; null where the readings before do not tell a rate.</summary>
    public required RateChangeResponse? Rate { get; init; }

    /// <summary>Per 1000 km of road beside it; null where laps are not compared or the road is not told apart.</summary>
    public required RateChangeResponse? Road { get; init; }

    /// <summary>The ratio further readings are to show: the one expected, or the one seen.</summary>
    [Sample(0.8)]
    public required double? SoughtRatio { get; init; }

    /// <summary>Further laps in these sessions that would show it four times in five; null where none would.</summary>
    [Sample(38.0)]
    public required double? LapsToShow { get; init; }

    /// <summary>The same in kilometres; null where laps are compared without road, or no use would.</summary>
    [Sample(2100.0)]
    public required double? KmToShow { get; init; }

    /// <summary>Further sessions a side that would show it four times in five; 0 where shown, null where none would.</summary>
    [Sample(2)]
    public required int? FurtherSessionCount { get; init; }

    /// <summary>How often the laps planned would show it; null where none are planned.</summary>
    [Sample(0.87)]
    public required double? PlannedPower { get; init; }
}

/// <summary>A rate before and after.</summary>
public sealed record RateChangeResponse
{
    /// <summary>Wear of the unit of use before: a lap, or 1000 km where the road is compared.</summary>
    public required UncertaintyResponse BeforeMm { get; init; }

    /// <summary>The same after; null where the readings after do not tell it.</summary>
    public required UncertaintyResponse? AfterMm { get; init; }

    /// <summary>After over before; upper is null where the rate before is not shown to be above zero.</summary>
    public required UncertaintyResponse? Ratio { get; init; }

    /// <summary>Whether the range of the ratio, which holds what sessions vary, leaves 1 out.</summary>
    [Sample(true)]
    public required bool? IsShown { get; init; }

    internal static RateChangeResponse? From(RateChange? change) => change is not { } known ? null : new RateChangeResponse
    {
        BeforeMm = UncertaintyResponse.From(known.BeforeMm),
        AfterMm = UncertaintyResponse.From(known.AfterMm),
        Ratio = UncertaintyResponse.From(known.Ratio),
        IsShown = known.IsShown,
    };
}

/// <summary>How fast a shoulder wears against the centre: the pattern, whatever the pace.</summary>
public sealed record ShoulderChangeResponse
{
    /// <summary>Shoulder over centre before; an end is null where the centre's rate is not shown to be above zero.</summary>
    public required UncertaintyResponse Before { get; init; }

    /// <summary>The same after; null where the readings after do not tell it.</summary>
    public required UncertaintyResponse? After { get; init; }

    /// <summary>Whether a change beyond what sessions vary is shown at 90 %.</summary>
    [Sample(false)]
    public required bool? IsShown { get; init; }

    /// <summary>Further sessions a side that would show it four times in five; 0 where shown, null where none would.</summary>
    [Sample(2)]
    public required int? FurtherSessionCount { get; init; }

    internal static ShoulderChangeResponse? From(ShoulderChange? change) => change is not { } known ? null : new ShoulderChangeResponse
    {
        Before = UncertaintyResponse.From(known.Before)!,
        After = UncertaintyResponse.From(known.After),
        IsShown = known.IsShown,
        FurtherSessionCount = known.FurtherSessions,
    };
}
