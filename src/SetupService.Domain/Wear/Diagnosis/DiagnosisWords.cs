using SetupService.Domain.Answers;
using SetupService.Domain.Wear.Cautions;

namespace SetupService.Domain.Wear.Diagnosis;

/// <summary>Sums a diagnosis up: what is unsafe, what is wrong, what to do first and what to check next; at most five sentences.</summary>
public static class DiagnosisWords
{
    // A second cause at least this likely is named beside the first; judgement.
    private const double Noteworthy = 0.5;

    // A first cause less likely than this does not stand out; judgement.
    private const double Weak = 0.5;

    // The highest probability written, percent: no cause is certain by numbers.
    private const double MostPct = 99;

    /// <summary>The summary. A tyre not to be driven on comes before everything else.</summary>
    /// <param name="study">The diagnosis.</param>
    /// <param name="tyres">The state of each tyre.</param>
    /// <param name="units">Units of the text.</param>
    public static string Summary(WearStudy study, IReadOnlyList<TyreCondition> tyres, UnitSystem units)
    {
        ArgumentNullException.ThrowIfNull(study);
        var sentences = new List<string>();
        if (TyreCautions.Unsafe(tyres, units) is { } caution) sentences.Add(First(caution.Text));
        AddCauses(sentences, study.Diagnosis);
        if (study.Diagnosis.IsAnythingRead)
        {
            var first = study.Diagnosis.Causes[0];
            sentences.Add("First: " + Lower(First(WearActions.Build(study.Case, first, first.Axle is { } axle ? study.At(axle) : null, units)[0].Text)));
        }

        sentences.Add("Next check: " + Lower(First(NextCheckWords.Describe(study.Diagnosis.Next.Check))));
        return string.Join(" ", sentences);
    }

    private static void AddCauses(List<string> sentences, WearDiagnosis diagnosis)
    {
        if (!diagnosis.IsAnythingRead)
        {
            sentences.Add("No diagnosis yet: nothing was read that shows wear.");
            return;
        }

        var first = diagnosis.Causes[0];
        var verdict = first.Probability < Weak ? "No cause stands out; the likeliest" : "Most likely";
        sentences.Add(Prose.Write(UnitSystem.Metric, $"{verdict} ({Pct(first.Probability):pct0}): {CauseWords.Describe(first.Cause, first.Axle)}."));
        var others = new List<string>();
        for (var i = 1; i < diagnosis.Causes.Count; i++)
        {
            var other = diagnosis.Causes[i];
            if (other.Probability >= Noteworthy && other.Cause != WearCause.Normal) others.Add(Prose.Write(UnitSystem.Metric, $"{CauseWords.Describe(other.Cause, other.Axle)} ({Pct(other.Probability):pct0})"));
        }

        if (others.Count > 0) sentences.Add($"Also likely: {string.Join("; ", others)}.");
    }

    /// <summary>The first sentence of a text: up to the first full stop that a space follows.</summary>
    private static string First(string text)
    {
        var end = text.IndexOf(". ", StringComparison.Ordinal);
        return end < 0 ? text : text[..(end + 1)];
    }

    private static string Lower(string text) => char.ToLowerInvariant(text[0]) + text[1..];

    private static double Pct(double probability) => Math.Min(MostPct, 100 * probability);
}
