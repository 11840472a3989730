using SetupService.Api.Http.Contract;
using SetupService.Domain.Answers;
using SetupService.Domain.Fitment;

namespace SetupService.Api.Fitment;

/// <summary>One check of a fitment.</summary>
public sealed record CheckItem
{
    /// <summary>Which check.</summary>
    [Sample("inboardClearance")]
    public required CheckId Id { get; init; }

    /// <summary>How it turned out.</summary>
    [Sample("caution")]
    public required CheckStatus Status { get; init; }

    /// <summary>The figure compared, in the unit of <c>unit</c>; null where there is none.</summary>
    [Sample(2.4)]
    public required double? Value { get; init; }

    /// <summary>What it is compared with, in the same unit; null where there is nothing.</summary>
    [Sample(3.0)]
    public required double? Limit { get; init; }

    /// <summary>Unit of value and limit.</summary>
    [Sample("mm")]
    public required string Unit { get; init; }

    /// <summary>The value as a person reads it.</summary>
    [Sample("2.4 mm")]
    public required string? ValueText { get; init; }

    /// <summary>The limit as a person reads it.</summary>
    [Sample("3.0 mm")]
    public required string? LimitText { get; init; }

    /// <summary>Checks of room: what is left with everything nominal; null for the others.</summary>
    [Sample(9.1)]
    public required double? NominalMm { get; init; }

    /// <summary>Checks of room: nominal less the root-sum-square of the tolerances.</summary>
    [Sample(4.3)]
    public required double? ProbableMm { get; init; }

    /// <summary>Checks of room: nominal less the sum of the tolerances.</summary>
    [Sample(2.4)]
    public required double? WorstCaseMm { get; init; }

    /// <summary>What the check is based on, with its source.</summary>
    [Sample("Measured gap less the change of nominal envelope, camber and travel.")]
    public required string Basis { get; init; }

    /// <summary>Why it turned out so, quoting the numbers of the case.</summary>
    [Sample("Of the 14.0 mm measured inboard, the candidate takes 4.9 mm: 9.1 mm nominal.")]
    public required string Explanation { get; init; }
}
