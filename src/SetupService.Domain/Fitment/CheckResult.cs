using SetupService.Domain.Answers;

namespace SetupService.Domain.Fitment;

/// <summary>The outcome of one check in numbers; its texts are made from it only when asked for.</summary>
public readonly record struct CheckResult
{
    /// <summary>Pass, caution, fail or unknown.</summary>
    public required CheckStatus Status { get; init; }

    /// <summary>Why it came out so.</summary>
    public UnknownReason Reason { get; init; }

    /// <summary>The figure compared, in the check's own unit; null where there is none.</summary>
    public double? Value { get; init; }

    /// <summary>What it is compared with; null where there is nothing.</summary>
    public double? Limit { get; init; }

    /// <summary>The margin of a check of room; null for the others.</summary>
    public Margin? Margin { get; init; }

    /// <summary>By how much more room than the wheel and tyre fitted now the candidate takes at this place, mm; negative = less. Null where the room itself is known, and where it cannot be told.</summary>
    public double? MoreRoomMm { get; init; }

    internal static CheckResult Unknown(UnknownReason reason) => new() { Status = CheckStatus.Unknown, Reason = reason };

    internal static CheckResult From(bool passes, double value, double? limit) => new()
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

/// <summary>Room left at one place, mm; negative = it touches.</summary>
/// <param name="NominalMm">With everything at its nominal size.</param>
/// <param name="ProbableMm">Nominal less the root-sum-square of growth, production tolerance and measuring error.</param>
/// <param name="WorstCaseMm">Nominal less their sum.</param>
public readonly record struct Margin(double NominalMm, double ProbableMm, double WorstCaseMm);
