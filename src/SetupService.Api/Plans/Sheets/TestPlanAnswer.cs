using SetupService.Api.Http.Contract;
using SetupService.Api.Wear;
using SetupService.Api.Wear.BeforeAfter;
using SetupService.Domain.Vehicles;

namespace SetupService.Api.Plans.Sheets;

/// <summary>A tyre on the car.</summary>
public sealed record TyreRecordResponse
{
    /// <summary>Where it is.</summary>
    [Sample("frontLeft")]
    public required WheelPosition Position { get; init; }

    /// <summary>What its sidewall says.</summary>
    [Sample("225/45R17 91W")]
    public required string? Marking { get; init; }

    /// <summary>Whether the package puts on another tyre than was read.</summary>
    [Sample(false)]
    public required bool IsOther { get; init; }

    /// <summary>Week and year of making.</summary>
    [Sample("2319")]
    public required string? MadeWeek { get; init; }

    /// <summary>Depths as last read.</summary>
    public required DepthsResponse? DepthMm { get; init; }
}

/// <summary>A test plan.</summary>
public sealed record TestPlanResponse
{
    /// <summary>Sessions to drive.</summary>
    [Sample(4)]
    public required int SessionCount { get; init; }

    /// <summary>Laps in each; null on a car that sees no track.</summary>
    [Sample(10.0)]
    public required double? LapsPerSession { get; init; }

    /// <summary>Readings of the depths that before-after is asked with as plannedReadings.</summary>
    [Sample(5)]
    public required int ReadingCount { get; init; }

    /// <summary>Laps in all: its plannedLaps.</summary>
    [Sample(40.0)]
    public required double? PlannedLaps { get; init; }

    /// <summary>The ratio of wear rates looked for: its expectedRatio.</summary>
    [Sample(0.85)]
    public required double? ExpectedRatio { get; init; }

    /// <summary>What to read, and when.</summary>
    public required TestReadingResponse[] Read { get; init; }

    /// <summary>How much driving would show it.</summary>
    [Sample("Front left: Before the change the outer shoulder lost 3.7 mm per 100 laps. About 38 laps more, read 5 times, would show wear 15 % slower four times in five.")]
    public required string Enough { get; init; }

    /// <summary>What counts as proof.</summary>
    [Sample("The change is shown where before-after says so of the telling tyre: …")]
    public required string Proof { get; init; }

    /// <summary>When to stop.</summary>
    [Sample("If nothing is shown after these 4 sessions, stop testing: keep the setting where the treads look no worse than before, else go back to what was found.")]
    public required string Stop { get; init; }

    /// <summary>Each tyre of before, as before-after answers it without readings after.</summary>
    public required TyreChangeResponse[] Tyres { get; init; }
}

/// <summary>Something to read.</summary>
public sealed record TestReadingResponse
{
    /// <summary>When.</summary>
    [Sample("after each session")]
    public required string When { get; init; }

    /// <summary>What.</summary>
    [Sample("laps driven, weather, track; …")]
    public required string What { get; init; }
}
