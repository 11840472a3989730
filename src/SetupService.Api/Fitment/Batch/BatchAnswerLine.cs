using SetupService.Api.Http.Contract;
using SetupService.Api.Http.Problems;
using SetupService.Domain.Answers;
using SetupService.Domain.Fitment;

namespace SetupService.Api.Fitment.Batch;

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

    /// <summary>The gravest status, as in the single call.</summary>
    [Sample("caution")]
    public CheckStatus? Verdict { get; init; }

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

    /// <summary>The checks that could not be told.</summary>
    [Sample("springSeatClearance")]
    public CheckId[]? Unknown { get; init; }

    /// <summary>With <c>detail=full</c>: the answer of the single call.</summary>
    public CheckAnswer? Result { get; init; }

    /// <summary>Why the line could not be answered.</summary>
    public Problem? Problem { get; init; }

    /// <summary>The closing line; without it the answer was cut off.</summary>
    public BatchSummary? Summary { get; init; }
}
