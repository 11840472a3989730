using SetupService.Domain.Answers;
using SetupService.Domain.Vehicles;

namespace SetupService.Domain.Fitment.Words;

/// <summary>The answer of a check as a shop would say it to a customer: the verdict, what decided it, what to do by hand; at most five sentences.</summary>
public static class SummaryWords
{
    // The verdict before them and the advice after them make five.
    private const int MostReasons = 3;

    /// <summary>The sentences.</summary>
    public static string Write(FitmentContext car, in Fitting candidate, CheckSheet sheet, UnitSystem units)
    {
        ArgumentNullException.ThrowIfNull(car);
        ArgumentNullException.ThrowIfNull(sheet);
        List<string> sentences = [Lead(car, sheet, units), .. Reasons(car, candidate, sheet, units)];
        if (Advice(sheet) is { } advice) sentences.Add(advice);
        return string.Join(' ', sentences);
    }

    /// <summary>What decided the verdict, a sentence each; where there are too many the last says how many more.</summary>
    public static IReadOnlyList<string> Reasons(FitmentContext car, in Fitting candidate, CheckSheet sheet, UnitSystem units)
    {
        ArgumentNullException.ThrowIfNull(car);
        ArgumentNullException.ThrowIfNull(sheet);
        var (reasons, left) = (new List<string>(MostReasons), sheet.DecidedBy.Count);
        foreach (var id in sheet.DecidedBy)
        {
            if (reasons.Count == MostReasons - 1 && left > 1)
            {
                reasons.Add(FormattableString.Invariant($"{left} more checks {(sheet.Verdict == CheckStatus.Unknown ? "that decide are unknown" : sheet.Verdict == CheckStatus.Fail ? "fail" : "need a look")}; each says why."));
                break;
            }

            reasons.Add(Reason(car, candidate, id, sheet[id], units));
            left--;
        }

        return reasons;
    }

    private static string Lead(FitmentContext car, CheckSheet sheet, UnitSystem units) => sheet.Verdict switch
    {
        CheckStatus.Fail => "Does not fit.",
        CheckStatus.Unknown => "Not known to fit yet.",
        CheckStatus.Caution => Room(car, sheet, units) is { } left ? $"Fits, with {left}, but look at this first." : "Fits, but look at this first.",
        _ => Room(car, sheet, units) is { } room ? $"Fits, with {room}." : "Fits: it takes no more room than the wheel and tyre fitted now.",
    };

    /// <summary>"11 mm to the strut and 5 mm to the arch lip", as probable; null where neither gap was measured.</summary>
    public static string? Room(FitmentContext car, CheckSheet sheet, UnitSystem units)
    {
        ArgumentNullException.ThrowIfNull(car);
        ArgumentNullException.ThrowIfNull(sheet);
        var inboard = Left(CheckId.InboardClearance, car.Axle.Clearance.InboardTo switch
        {
            InboardNeighbour.Strut => "to the strut",
            InboardNeighbour.Arm => "to the arm",
            InboardNeighbour.Body => "to the body",
            _ => "inboard",
        });
        var outboard = Left(CheckId.OutboardClearance, "to the arch lip");
        return inboard is not null && outboard is not null ? $"{inboard} and {outboard}" : inboard ?? outboard;

        string? Left(CheckId place, string where) => sheet[place] is { Status: not CheckStatus.Unknown, Margin: { ProbableMm: var mm } } ? Prose.Write(units, $"{mm:room} {where}") : null;
    }

    /// <summary>Why a check did not pass, in one sentence for a customer.</summary>
    public static string Reason(FitmentContext car, in Fitting candidate, CheckId id, in CheckResult result, UnitSystem units)
    {
        ArgumentNullException.ThrowIfNull(car);
        if (id > CheckId.SpringSeatClearance) return FirstSentence(CheckWords.Explanation(car, candidate, id, result, units));
        var place = id switch
        {
            CheckId.OutboardClearance => "at the arch lip",
            CheckId.SpringSeatClearance => "at the spring seat",
            _ => ClearanceWords.Place(id),
        };
        return result switch
        {
            { Status: CheckStatus.Fail, Margin: { ProbableMm: var shortMm } } => Prose.Write(units, $"It probably touches {place}, by about {-shortMm:room}."),
            { Status: CheckStatus.Caution, Margin: { WorstCaseMm: var worstMm } } => Prose.Write(units, $"It is tight {place}: {worstMm:room} in the worst case."),
            { Reason: UnknownReason.GapMissing, MoreRoomMm: { } moreMm } when moreMm > 0.05 => Prose.Write(units, $"It takes {moreMm:room} more room {ClearanceWords.Place(id)} than what is fitted now, and the gap there was not measured."),
            _ => FirstSentence(CheckWords.Explanation(car, candidate, id, result, units)),
        };
    }

    private static string? Advice(CheckSheet sheet) => sheet.Verdict switch
    {
        CheckStatus.Pass or CheckStatus.Caution => "Turn the wheel by hand over full travel and lock before driving.",
        CheckStatus.Unknown => "Measure what is missing before buying.",
        _ => null,
    };

    // A full stop inside a number has no space behind it.
    private static string FirstSentence(string text) => text.IndexOf(". ", StringComparison.Ordinal) is var end and >= 0 ? text[..(end + 1)] : text;
}
