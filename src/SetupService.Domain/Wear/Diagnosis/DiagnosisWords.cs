using SetupService.Domain.Answers;
using SetupService.Domain.Wear.Cautions;

namespace SetupService.Domain.Wear.Diagnosis;

/// <summary>Says in a sentence or two what a diagnosis comes to.</summary>
public static class DiagnosisWords
{
    // A second cause as likely as this is told beside the first.
    private const double Noteworthy = 0.5;
    private const double Weak = 0.5;
    private const double MostPct = 99;

    /// <summary>The summary; a tyre not to be driven on comes before everything else.</summary>
    public static string Summary(WearStudy study, IReadOnlyList<TyreCondition> tyres, UnitSystem units) =>
        TyreCautions.Unsafe(tyres, units) is { } caution ? $"{caution.Text} {Summary(study)}" : Summary(study);

    private static string Summary(WearStudy study)
    {
        ArgumentNullException.ThrowIfNull(study);
        var diagnosis = study.Diagnosis;
        if (!diagnosis.IsAnythingRead) return "Nothing was read that tells of wear, so no cause stands out. Begin with what nextCheck says.";
        var first = diagnosis.Causes[0];
        var text = first.Probability < Weak
            ? Prose.Write(UnitSystem.Metric, $"No cause stands out; the likeliest, at {Pct(first.Probability):pct0}, is {CauseWords.Describe(first.Cause, first.Axle)}.")
            : Prose.Write(UnitSystem.Metric, $"Most likely, at {Pct(first.Probability):pct0}: {CauseWords.Describe(first.Cause, first.Axle)}.");
        var others = new List<string>();
        for (var i = 1; i < diagnosis.Causes.Count; i++)
        {
            var other = diagnosis.Causes[i];
            if (other.Probability >= Noteworthy && other.Cause != WearCause.Normal) others.Add(Prose.Write(UnitSystem.Metric, $"{CauseWords.Describe(other.Cause, other.Axle)} ({Pct(other.Probability):pct0})"));
        }

        return others.Count == 0 ? text : $"{text} Likely beside it: {string.Join("; ", others)}.";
    }

    /// <summary>No cause is certain by numbers.</summary>
    private static double Pct(double probability) => Math.Min(MostPct, 100 * probability);
}
