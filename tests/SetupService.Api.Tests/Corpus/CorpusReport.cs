using System.Globalization;
using System.Text;
using System.Text.RegularExpressions;
using SetupService.Api.Tests.Comparison;

namespace SetupService.Api.Tests.Corpus;

/// <summary>What a recording moved, written to Corpus/moved.md: per call how many answers, per place of the answer how far.</summary>
internal sealed partial class CorpusReport
{
    private const int PlacesShown = 40;

    private readonly SortedDictionary<string, string> _calls = new(StringComparer.Ordinal);

    /// <summary>The differences of one entry: where the answer itself is of another kind, one difference of the whole.</summary>
    public static List<AnswerDifference> Differences(CorpusEntry kept, CorpusEntry now)
    {
        if (kept.Status is null)
            return [new("", DifferenceKind.Structure, "(none)", $"{now.Status} {now.AnswerType}")];
        if (kept.Status != now.Status || kept.AnswerType != now.AnswerType)
            return [new("", DifferenceKind.Structure, $"{kept.Status} {kept.AnswerType}", $"{now.Status} {now.AnswerType} {now.Answer?.ToJsonString()}")];
        return AnswerComparer.Compare(kept.Answer, now.Answer);
    }

    public void Add(string call, int entries, IReadOnlyList<(string Id, List<AnswerDifference> Differences)> changed)
    {
        StringBuilder text = new();
        Line(text, $"## {call}: {changed.Count} of {entries} answers changed");
        if (changed.Count > 0)
        {
            Line(text, $"");
            Line(text, $"For instance {string.Join(", ", changed.Take(5).Select(one => one.Id))}.");
            Line(text, $"");
            Line(text, $"| place | answers | what moved at most |");
            Line(text, $"| --- | --- | --- |");
            var places = changed
                .SelectMany(one => one.Differences.Select(difference => (one.Id, Difference: difference)))
                .GroupBy(one => Index().Replace(one.Difference.Path, "/*"))
                .OrderByDescending(place => place.Select(one => one.Id).Distinct().Count())
                .ToList();
            foreach (var place in places.Take(PlacesShown))
            {
                var most = place.MaxBy(one => one.Difference.Amount);
                var amount = most.Difference.Kind == DifferenceKind.Number ? $" (by {most.Difference.Amount.ToString("G3", CultureInfo.InvariantCulture)})" : "";
                Line(text, $"| `{place.Key}` | {place.Select(one => one.Id).Distinct().Count()} | {Cell(most.Difference)}{amount}, {most.Id} |");
            }

            if (places.Count > PlacesShown)
                Line(text, $"| and {places.Count - PlacesShown} more places | | |");
        }

        _calls[call] = text.ToString();
        File.WriteAllText(System.IO.Path.Combine(CorpusFile.Folder, "moved.md"), $"# What the last recording moved\n\n{string.Join('\n', _calls.Values)}");
    }

    private static void Line(StringBuilder text, FormattableString line) => text.Append(line.ToString(CultureInfo.InvariantCulture)).Append('\n');

    private static string Cell(AnswerDifference difference) => difference.ToString().Split(": ", 2)[1].Replace("|", "\\|", StringComparison.Ordinal).ReplaceLineEndings(" ");

    [GeneratedRegex("/[0-9]+(?=/|$)")]
    private static partial Regex Index();
}
