using SetupService.Domain.Answers;

namespace SetupService.Domain.Wear.Diagnosis.Advice;

/// <summary>Sums a diagnosis up: what is unsafe, what is wrong, what to do at each axle, and what to check next; at most five sentences.</summary>
public static class DiagnosisWords
{
    // The highest probability written, percent: no cause is certain by numbers.
    private const double MostPct = 99;

    /// <summary>The summary. A tyre not to be driven on comes before everything else.</summary>
    public static string Summary(WearAdvice advice)
    {
        ArgumentNullException.ThrowIfNull(advice);
        var diagnosis = advice.Study.Diagnosis;
        var sentences = new List<string>();
        if (advice.Lead is { } first) sentences.Add(first);
        sentences.Add(Verdict(advice));
        if (diagnosis.IsAnythingRead)
        {
            var todo = advice.Axles.Where(axle => axle.Summary is not null).OrderByDescending(axle => axle.Actions.Count > 0).Select(axle => axle.Summary!).ToList();
            for (var i = 0; i < todo.Count; i++) sentences.Add(i == 0 && advice.Axles.Any(axle => axle.Actions.Count > 0) ? "First: " + Sentences.Lower(todo[i]) : todo[i]);
        }

        sentences.Add("Next check: " + Sentences.Lower(Sentences.First(NextCheckWords.Describe(diagnosis.Next.Check))));
        return string.Join(" ", sentences);
    }

    /// <summary>What is likely, but for a camber that even treads have settled.</summary>
    private static string Verdict(WearAdvice advice)
    {
        var diagnosis = advice.Study.Diagnosis;
        if (!diagnosis.IsAnythingRead) return "No diagnosis yet: nothing was read that shows wear.";
        List<CauseFinding> causes = [.. advice.Acted, .. diagnosis.Causes.Where(cause => !advice.IsSettled(cause) && !advice.Acted.Contains(cause))];
        var first = causes[0];
        if (advice.Acted.Count == 0)
        {
            if (advice.Contradictions.Count > 0) return "Readings contradict each other or are doubtful, so no cause is named yet.";
            if (first.Cause != WearCause.Normal || first.Probability < WearAdvice.Likely) return "No fault stands out.";
        }

        var text = Prose.Write(UnitSystem.Metric, $"Most likely ({Pct(first):pct0}): {CauseWords.Describe(first.Cause, first.Axle)}");
        var others = new List<string>();
        foreach (var other in causes.Skip(1))
        {
            if (other.Probability >= WearAdvice.Likely && other.Cause != WearCause.Normal) others.Add(Prose.Write(UnitSystem.Metric, $"{CauseWords.Describe(other.Cause, other.Axle)} ({Pct(other):pct0})"));
        }

        return others.Count > 0 ? $"{text}; also likely: {string.Join("; ", others)}." : text + ".";
    }

    private static double Pct(CauseFinding finding) => Math.Min(MostPct, 100 * finding.Probability);
}

/// <summary>Takes sentences apart.</summary>
internal static class Sentences
{
    /// <summary>The first sentence of a text: up to the first full stop that a space follows.</summary>
    public static string First(string text)
    {
        var end = text.IndexOf(". ", StringComparison.Ordinal);
        return end < 0 ? text : text[..(end + 1)];
    }

    /// <summary>With a small first letter.</summary>
    public static string Lower(string text) => char.ToLowerInvariant(text[0]) + text[1..];
}
