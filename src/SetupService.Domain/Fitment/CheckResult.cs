using SetupService.Domain.Answers;

namespace SetupService.Domain.Fitment;

/// <summary>The outcome of one check in numbers; its texts are made from it only when asked for.</summary>
public readonly record struct CheckResult
{
    /// <summary>Pass, caution, fail or unknown.</summary>
    public required CheckStatus Status { get; init; }

    /// <summary>Which case it is.</summary>
    public Finding Finding { get; init; }

    /// <summary>The figure compared, in the check's own unit; null where there is none.</summary>
    public double? Value { get; init; }

    /// <summary>What it is compared with; null where there is nothing.</summary>
    public double? Limit { get; init; }

    /// <summary>The margin of a check of room; null for the others.</summary>
    public Margin? Margin { get; init; }

    internal static CheckResult Unknown(Finding finding) => new() { Status = CheckStatus.Unknown, Finding = finding };

    internal static CheckResult Of(bool passes, double value, double? limit) => new()
    {
        Status = passes ? CheckStatus.Pass : CheckStatus.Fail,
        Value = value,
        Limit = limit,
    };

    /// <summary>A check of room: the worst case against the least room wanted.</summary>
    internal static CheckResult Room(in Margin margin, double minimumMarginMm) => new()
    {
        Status = ClearanceBudget.Judge(margin, minimumMarginMm),
        Value = margin.WorstCaseMm,
        Limit = minimumMarginMm,
        Margin = margin,
    };
}
