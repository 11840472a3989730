using System.Text.Json.Serialization;
using SetupService.Api.Fitment.Batch;
using SetupService.Api.Http.Contract;
using SetupService.Api.Http.Problems;
using SetupService.Api.Vehicles;
using SetupService.Domain.Answers;
using SetupService.Domain.Fitment;
using SetupService.Domain.Vehicles;

namespace SetupService.Api.Fitment.Catalogue;

/// <summary>A line of the part <c>cars</c>: a car that every candidate is held against.</summary>
public sealed record CatalogueCarLine
{
    /// <summary>The caller's name for this car, given back with each pair; no two have the same.</summary>
    [JsonRequired]
    [Sample("tarn-2019")]
    public LineId Id { get; set; } = null!;

    /// <summary>The car, as far as it is known.</summary>
    [JsonRequired]
    public VehicleDocument Vehicle { get; set; } = null!;

    /// <summary>Which axle a <c>candidate</c> goes on; where left out it goes on all four wheels.</summary>
    [Sample("front")]
    public CarAxle? Axle { get; set; }

    /// <summary>A change of static camber made at the same time at <c>axle</c>, which it needs.</summary>
    public CamberChangeDocument? CamberChange { get; set; }

    /// <summary>What the caller wants of the margins.</summary>
    public TolerancesDocument? Tolerances { get; set; }

    /// <summary>The checks whose being unknown makes a verdict unknown.</summary>
    [Count(0, 17)]
    [Sample("inboardClearance")]
    public CheckId[]? Required { get; set; }
}

// Describes the lines; CatalogueLines writes them.
/// <summary>A line of a catalogue's answer: a pair, a problem, or the closing summary. What a kind of line has not is left out.</summary>
public sealed record CatalogueAnswerLine
{
    /// <summary>The car's id; null where it could not be read.</summary>
    [Sample("tarn-2019")]
    public LineId? Car { get; init; }

    /// <summary>The candidate's id; null where it has none.</summary>
    [Sample("wheel-17-8-42")]
    public LineId? Candidate { get; init; }

    /// <summary>Number of the candidate's line in its part, from 1; of a car that cannot be read, of the car's.</summary>
    [Sample(2)]
    public int? Line { get; init; }

    /// <summary>The verdict of the single check.</summary>
    [Sample("caution")]
    public CheckStatus? Verdict { get; init; }

    /// <summary>The checks the verdict was made by; where bolt circle, centre bore, rim diameter, rim width or overall diameter fails, those alone.</summary>
    [Sample("outboardClearance")]
    public CheckId[]? DecidedBy { get; init; }

    /// <summary>Probable room at the tightest place; null where it is not known, and where one of those five fails.</summary>
    [Sample(4.3)]
    public double? ProbableMm { get; init; }

    /// <summary>Why a car or candidate cannot be read; its pairs have no lines.</summary>
    public Problem? Problem { get; init; }

    /// <summary>The closing line; without it the answer was cut off.</summary>
    public CatalogueSummary? Summary { get; init; }
}

/// <summary>The counts of a catalogue.</summary>
public sealed record CatalogueSummary
{
    /// <summary>Number of cars, read or not.</summary>
    [Sample(2)]
    public required int CarCount { get; init; }

    /// <summary>Number of candidates, read or not.</summary>
    [Sample(3)]
    public required long CandidateCount { get; init; }

    /// <summary>Number of pairs with a verdict, sent or not.</summary>
    [Sample(6)]
    public required long AnsweredCount { get; init; }

    /// <summary>Number of pairs whose car or candidate could not be read.</summary>
    [Sample(0)]
    public required long RefusedCount { get; init; }

    /// <summary>The verdicts of the pairs.</summary>
    public required VerdictCounts Verdicts { get; init; }

    /// <summary>True when everything sent was read to its end.</summary>
    [Sample(true)]
    public required bool IsComplete { get; init; }

    /// <summary>Why it is not complete; left out where it is.</summary>
    [JsonIgnore(Condition = JsonIgnoreCondition.WhenWritingNull)]
    [Sample("No bytes came for 30 s, so the service stopped waiting.")]
    public string? Reason { get; init; }
}
