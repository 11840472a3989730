using System.Globalization;
using System.Text.Json;
using System.Text.Json.Nodes;
using System.Text.RegularExpressions;

namespace SetupService.Api.Tests.Comparison;

/// <summary>
/// Compares an answer with the one kept: members, items, strings and enums exactly, numbers to a tolerance, so that the last digit
/// of another processor is no failure and everything a caller could notice is one.
/// </summary>
internal static partial class AnswerComparer
{
    /// <summary>Two numbers agree within this share of the larger one: above the nine digits an answer is kept with, below any instrument.</summary>
    public const double RelativeTolerance = 1e-7;

    /// <summary>Two numbers agree within this amount in their own unit: what is left of a difference of large numbers.</summary>
    public const double AbsoluteTolerance = 1e-7;

    /// <summary>The differences of two JSON values, in the order of the kept one; empty where they agree.</summary>
    public static List<AnswerDifference> Compare(JsonNode? kept, JsonNode? now)
    {
        List<AnswerDifference> found = [];
        CompareNodes("", kept, now, found);
        return found;
    }

    /// <summary>The differences of two texts (a drawing, a table): words exactly, numbers to a tolerance.</summary>
    public static List<AnswerDifference> CompareTexts(string kept, string now)
    {
        List<AnswerDifference> found = [];
        AddTextDifference("", kept, now, found);
        return found;
    }

    private static void CompareNodes(string path, JsonNode? kept, JsonNode? now, List<AnswerDifference> found)
    {
        switch (kept, now)
        {
            case (JsonObject before, JsonObject after):
                CompareObjects(path, before, after, found);
                break;
            case (JsonArray before, JsonArray after):
                for (var i = 0; i < Math.Max(before.Count, after.Count); i++)
                {
                    if (i >= before.Count || i >= after.Count)
                        found.Add(new($"{path}/{i}", DifferenceKind.Structure, i < before.Count ? Shown(before[i]) : "(none)", i < after.Count ? Shown(after[i]) : "(none)"));
                    else
                        CompareNodes($"{path}/{i}", before[i], after[i], found);
                }

                break;
            case (JsonValue before, JsonValue after):
                CompareValues(path, before, after, found);
                break;
            case (null, null):
                break;
            default:
                found.Add(new(path, DifferenceKind.Structure, Shown(kept), Shown(now)));
                break;
        }
    }

    /// <summary>The order of members means nothing in JSON and is not compared.</summary>
    private static void CompareObjects(string path, JsonObject kept, JsonObject now, List<AnswerDifference> found)
    {
        foreach ((var name, var value) in kept)
        {
            if (now.TryGetPropertyValue(name, out var other))
                CompareNodes($"{path}/{name}", value, other, found);
            else
                found.Add(new($"{path}/{name}", DifferenceKind.Structure, Shown(value), "(none)"));
        }

        foreach ((var name, var value) in now)
        {
            if (!kept.ContainsKey(name))
                found.Add(new($"{path}/{name}", DifferenceKind.Structure, "(none)", Shown(value)));
        }
    }

    private static void CompareValues(string path, JsonValue kept, JsonValue now, List<AnswerDifference> found)
    {
        var kind = kept.GetValueKind();
        if (kind != now.GetValueKind() && !(kind is JsonValueKind.True or JsonValueKind.False && now.GetValueKind() is JsonValueKind.True or JsonValueKind.False))
            found.Add(new(path, DifferenceKind.Structure, Shown(kept), Shown(now)));
        else if (kind == JsonValueKind.Number)
            AddNumberDifference(path, kept, now, found);
        else if (kind == JsonValueKind.String)
            AddTextDifference(path, kept.GetValue<string>(), now.GetValue<string>(), found);
        else if (kind != now.GetValueKind())
            found.Add(new(path, DifferenceKind.Text, Shown(kept), Shown(now)));
    }

    private static void AddNumberDifference(string path, JsonValue kept, JsonValue now, List<AnswerDifference> found)
    {
        var before = NumberOf(kept.ToJsonString());
        var after = NumberOf(now.ToJsonString());
        if (!Agree(before, after, AbsoluteTolerance))
            found.Add(new(path, DifferenceKind.Number, Shown(kept), Shown(now), Math.Abs(after - before)));
    }

    /// <summary>A text of at least four words is prose, whose rounded numbers may differ by one in the last digit; shorter ones are exact.</summary>
    private static void AddTextDifference(string path, string kept, string now, List<AnswerDifference> found)
    {
        if (kept == now)
            return;
        if (kept.AsSpan().Count(' ') < 3 && !kept.Contains('\n', StringComparison.Ordinal)
            || Numbers().Replace(kept, "#") != Numbers().Replace(now, "#"))
        {
            found.Add(new(path, DifferenceKind.Text, kept, now));
            return;
        }

        if (!Numbers().Matches(kept).Zip(Numbers().Matches(now), AgreeAsPrinted).All(agree => agree))
            found.Add(new(path, DifferenceKind.Text, kept, now));
    }

    private static bool AgreeAsPrinted(Match kept, Match now)
    {
        var point = kept.Value.IndexOf('.', StringComparison.Ordinal);
        var lastDigit = point < 0 ? 1 : Math.Pow(10, point + 1 - kept.Value.Length);
        return Agree(NumberOf(kept.Value), NumberOf(now.Value), lastDigit * 1.000001);
    }

    private static bool Agree(double kept, double now, double absolute) =>
        Math.Abs(now - kept) <= absolute + (RelativeTolerance * Math.Max(Math.Abs(kept), Math.Abs(now)));

    private static double NumberOf(string text) => double.Parse(text.Replace('−', '-'), NumberStyles.Float, CultureInfo.InvariantCulture);

    private static string Shown(JsonNode? node) => node?.ToJsonString() ?? "null";

    // A sign counts where no letter, digit or bracket stands before it, so that "225/45-17" keeps its hyphen.
    [GeneratedRegex(@"(?:(?<![\w)])[-−])?\d+(?:\.\d+)?")]
    private static partial Regex Numbers();
}
