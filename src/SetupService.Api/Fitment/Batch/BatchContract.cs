using System.Text.Json.Serialization;
using SetupService.Api.Fitment.CarCheck;
using SetupService.Api.Fitment.Check;
using SetupService.Api.Http.Contract;
using SetupService.Api.Http.Problems;
using SetupService.Api.Vehicles;
using SetupService.Domain.Answers;
using SetupService.Domain.Fitment;
using SetupService.Domain.Vehicles;

namespace SetupService.Api.Fitment.Batch;

/// <summary>A line that sets the car for the lines after it, or the part <c>car</c> of a table.</summary>
public sealed record BatchCarLine
{
    /// <summary>The car, as far as it is known.</summary>
    [JsonRequired]
    public VehicleDocument Vehicle { get; set; } = null!;

    /// <summary>Which axle a <c>candidate</c> goes on.</summary>
    [JsonRequired]
    [Sample("front")]
    public CarAxle Axle { get; set; }

    /// <summary>A change of static camber made at the same time at that axle.</summary>
    public CamberChangeDocument? CamberChange { get; set; }

    /// <summary>What the caller wants of the margins.</summary>
    public TolerancesDocument? Tolerances { get; set; }

    /// <summary>The checks whose being unknown makes a verdict unknown.</summary>
    [Count(0, 17)]
    [Sample("inboardClearance")]
    public CheckId[]? Required { get; set; }
}

/// <summary>A line that asks about one candidate: <c>candidate</c>, or <c>front</c>, <c>rear</c> or both of them.</summary>
public sealed record BatchCandidateLine
{
    /// <summary>What the caller calls this candidate: a text or a whole number, given back as it came.</summary>
    [Sample("wheel-17-8-42")]
    public LineId? Id { get; set; }

    /// <summary>The wheel and tyre for the axle that the car's line names; in a catalogue, where it names none, for all four wheels.</summary>
    public FittingDocument? Candidate { get; set; }

    /// <summary>What goes on the front of the whole car; where left out it stays as it is.</summary>
    public FittingDocument? Front { get; set; }

    /// <summary>What goes on the rear of the whole car; where left out it stays as it is.</summary>
    public FittingDocument? Rear { get; set; }
}

// Describes the lines; BatchLines writes them.
/// <summary>A line of a batch's answer: a verdict, a problem, or the closing summary. What a kind of line has not is left out.</summary>
public sealed record BatchAnswerLine
{
    /// <summary>Number of the line answered, from 1, as it stands in what was sent.</summary>
    [Sample(2)]
    public int? Line { get; init; }

    /// <summary>The caller's own name for the line; null where it has none.</summary>
    [Sample("wheel-17-8-42")]
    public LineId? Id { get; init; }

    /// <summary>The gravest status, as in the single call. For a whole car the members down to <c>unknown</c> are of both axles together.</summary>
    [Sample("caution")]
    public CheckStatus? Verdict { get; init; }

    /// <summary>The checks the verdict was made by, as in the single call.</summary>
    [Sample("fullLockClearance")]
    public CheckId[]? DecidedBy { get; init; }

    /// <summary>The place with least room in the worst case; null where no room is known.</summary>
    [Sample("inboardClearance")]
    public CheckId? Governing { get; init; }

    /// <summary>Probable room there; null where no room is known.</summary>
    [Sample(4.3)]
    public double? ProbableMm { get; init; }

    /// <summary>Worst-case room there; null where no room is known.</summary>
    [Sample(2.4)]
    public double? WorstCaseMm { get; init; }

    /// <summary>The checks that failed.</summary>
    [Sample("fullLockClearance")]
    public CheckId[]? Failed { get; init; }

    /// <summary>The checks that are cautions.</summary>
    [Sample("outboardClearance")]
    public CheckId[]? Cautioned { get; init; }

    /// <summary>The checks that could not be told.</summary>
    [Sample("springSeatClearance")]
    public CheckId[]? Unknown { get; init; }

    /// <summary>Of a whole car: the front axle.</summary>
    public BatchAxleResponse? Front { get; init; }

    /// <summary>Of a whole car: the rear axle.</summary>
    public BatchAxleResponse? Rear { get; init; }

    /// <summary>With <c>detail=checks</c> or <c>detail=full</c>: the answer of the single call in that detail.</summary>
    public CheckAnswer? Result { get; init; }

    /// <summary>The same of a whole car.</summary>
    public CarCheckAnswer? CarResult { get; init; }

    /// <summary>Why the line could not be answered.</summary>
    public Problem? Problem { get; init; }

    /// <summary>The closing line; without it the answer was cut off.</summary>
    public BatchSummary? Summary { get; init; }
}

/// <summary>One axle of a whole car in a batch's answer.</summary>
public sealed record BatchAxleResponse
{
    /// <summary>The axle's own verdict.</summary>
    [Sample("caution")]
    public required CheckStatus Verdict { get; init; }

    /// <summary>The checks it was made by.</summary>
    [Sample("outboardClearance")]
    public required CheckId[] DecidedBy { get; init; }

    /// <summary>The least probable room; null where no room is known.</summary>
    [Sample(4.3)]
    public required double? ProbableMm { get; init; }
}

/// <summary>How many there are of each verdict, sent or not.</summary>
public sealed record VerdictCounts
{
    /// <summary>How many pass.</summary>
    [Sample(1)]
    public required long PassCount { get; init; }

    /// <summary>How many are cautions.</summary>
    [Sample(1)]
    public required long CautionCount { get; init; }

    /// <summary>How many fail.</summary>
    [Sample(0)]
    public required long FailCount { get; init; }

    /// <summary>How many are unknown.</summary>
    [Sample(0)]
    public required long UnknownCount { get; init; }
}

/// <summary>The counts of a batch.</summary>
public sealed record BatchSummary
{
    /// <summary>Number of lines answered and refused together, sent or not.</summary>
    [Sample(3)]
    public required long LineCount { get; init; }

    /// <summary>Number of lines answered with a verdict.</summary>
    [Sample(2)]
    public required long AnsweredCount { get; init; }

    /// <summary>Number of lines answered with a problem.</summary>
    [Sample(1)]
    public required long RefusedCount { get; init; }

    /// <summary>The verdicts of the lines answered.</summary>
    public required VerdictCounts Verdicts { get; init; }

    /// <summary>True when everything sent was read to its end; false when the service stopped waiting for a line.</summary>
    [Sample(true)]
    public required bool IsComplete { get; init; }

    /// <summary>Why the batch is not complete; left out where it is.</summary>
    [JsonIgnore(Condition = JsonIgnoreCondition.WhenWritingNull)]
    [Sample("No bytes came for 30 s, so the service stopped waiting. Send the lines after the last one answered again.")]
    public string? Reason { get; init; }
}
