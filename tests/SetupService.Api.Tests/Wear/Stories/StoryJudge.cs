using System.Text.Json;
using System.Text.RegularExpressions;

namespace SetupService.Api.Tests.Wear.Stories;

/// <summary>A story as its file tells it.</summary>
/// <param name="Name">What it is called.</param>
/// <param name="Account">What somebody tells of his tyres.</param>
/// <param name="Source">Where the right answer comes from.</param>
/// <param name="Request">The body of the call.</param>
/// <param name="First">What may come first; one of them must hold.</param>
/// <param name="Never">What must not be said; none of them may hold.</param>
public sealed record Story(string Name, string Account, string Source, JsonElement Request, StoryFirst[] First, StoryNever[] Never);

/// <summary>Something that may come first; all that is given must hold.</summary>
/// <param name="Cause">The likeliest cause.</param>
/// <param name="Axle">Its axle.</param>
/// <param name="Says">What the leading sentences or the first action say.</param>
/// <param name="Done">The axles that are done.</param>
public sealed record StoryFirst(string? Cause = null, string? Axle = null, string? Says = null, string[]? Done = null);

/// <summary>Something that must not be said.</summary>
/// <param name="Says">A sentence.</param>
/// <param name="In">Where it is looked for: summary, actions, evidence (with all else); summary, actions and axles where left out.</param>
/// <param name="Cause">A cause that may not be told likelier than <paramref name="Above"/>, nor less likely than <paramref name="Below"/>.</param>
/// <param name="Axle">Its axle.</param>
/// <param name="Above">The most it may be told.</param>
/// <param name="Below">The least it may be told.</param>
/// <param name="Amount">"toe", "camber" or "pressure" of which no amount may be given at the axle.</param>
public sealed record StoryNever(
    string? Says = null, string? In = null, string? Cause = null, string? Axle = null, double? Above = null, double? Below = null, string? Amount = null);

/// <summary>Holds an answer against a story.</summary>
public static partial class StoryJudge
{
    private const int MostSentences = 5;

    // What is told less likely than this nobody acts on: its actions are no advice.
    private const double LeastToAct = 0.1;
    private static readonly (string Member, double Most)[] Steps = [("stepDeg", 1.5), ("stepKpa", 20), ("stepMm", 2)];
    private static readonly (string Amount, string[] Members)[] Amounts =
        [("toe", ["toeDeg", "totalToeMm", "stepMm"]), ("camber", ["camberDeg", "stepDeg"]), ("pressure", ["coldPressureKpa", "stepKpa"])];

    /// <summary>What must be said in no story: signs that contradict their word, a factor in no assumption, laps in the plural of one.</summary>
    private static readonly string[] NeverAnywhere = ["(less|more) negative by [−-]", "further 1 laps", "NaN|Infinity", "0\\.88\\b"];

    /// <summary>Whether what comes first is what a careful technician does first.</summary>
    public static bool IsFirstRight(Story story, JsonElement answer) => story.First.Any(one =>
        (one.Cause is null || (FirstCause(answer) is { } first && Text(first, "cause") == one.Cause && (one.Axle is null || Text(first, "axle") == one.Axle)))
        && (one.Says is null || Regex.IsMatch(Leading(answer), one.Says))
        && (one.Done is null || one.Done.All(axle => IsDone(answer, axle))));

    /// <summary>What was said that must not be; empty where nothing was.</summary>
    public static IReadOnlyList<string> Forbidden(Story story, JsonElement answer)
    {
        List<string> found = [];
        foreach (var never in story.Never)
        {
            if (never.Says is { } says && Regex.Match(In(answer, never.In), says) is { Success: true } match) found.Add($"says \"{match.Value}\"");
            var told = never.Cause is null ? 0 : Told(answer, never.Cause, never.Axle);
            if (never.Above < told) found.Add($"{never.Cause} {never.Axle} told {told:0.00}");
            if (never.Cause is not null && told < never.Below) found.Add($"{never.Cause} {never.Axle} told only {told:0.00}");
            if (never.Amount is { } amount) found.AddRange(AmountsOf(answer, never.Axle, amount));
        }

        var all = In(answer, "evidence");
        found.AddRange(NeverAnywhere.Select(pattern => Regex.Match(all, pattern)).Where(match => match.Success).Select(match => $"says \"{match.Value}\""));
        // Where a cold aim is stated, the tyre is set to it at once.
        var isAimed = story.Request.ValueKind == JsonValueKind.Object && story.Request.GetRawText().Contains("aimCold", StringComparison.Ordinal);
        found.AddRange(Actions(answer).SelectMany(action => Steps.Where(step => !(isAimed && step.Member == "stepKpa") && Number(action, step.Member) is { } value && Math.Abs(value) > step.Most + 1e-9)
            .Select(step => $"{step.Member} {Number(action, step.Member)}")));
        var sentences = Sentences(Text(answer, "summary")!).Count;
        if (sentences > MostSentences) found.Add($"a summary of {sentences} sentences");
        return found;
    }

    /// <summary>The sentences that lead: the summary without what is also likely or checked next, and the first action.</summary>
    public static string Leading(JsonElement answer)
    {
        var leads = Sentences(Text(answer, "summary")!).Where(sentence => !NotLeading().IsMatch(sentence));
        return string.Join(' ', leads) + "\n" + (Actions(answer).Select(action => Text(action, "text")).FirstOrDefault() ?? "");
    }

    private static JsonElement? FirstCause(JsonElement answer) => answer.GetProperty("causes").EnumerateArray().Cast<JsonElement?>().FirstOrDefault();

    private static bool IsDone(JsonElement answer, string axle) =>
        answer.TryGetProperty("axles", out var axles) && axles.TryGetProperty(axle, out var one) && one.ValueKind == JsonValueKind.Object && one.TryGetProperty("isDone", out var done) && done.ValueKind == JsonValueKind.True;

    private static double Told(JsonElement answer, string cause, string? axle) => answer.GetProperty("causes").EnumerateArray()
        .Where(one => Text(one, "cause") == cause && (axle is null || Text(one, "axle") == axle)).Select(one => one.GetProperty("probability").GetDouble()).DefaultIfEmpty(0).Max();

    private static IEnumerable<JsonElement> Actions(JsonElement answer, string? axle = null)
    {
        var lists = answer.TryGetProperty("actions", out _) ? [answer] : answer.GetProperty("causes").EnumerateArray().Where(one => axle is null || Text(one, "axle") == axle);
        return lists.Where(one => Number(one, "probability") is not < LeastToAct).SelectMany(one => one.GetProperty("actions").EnumerateArray());
    }

    private static IEnumerable<string> AmountsOf(JsonElement answer, string? axle, string amount) =>
        from action in Actions(answer, axle)
        where !action.TryGetProperty("axle", out var of) || axle is null || of.GetString() == axle
        from member in Amounts.Single(one => one.Amount == amount).Members
        where action.TryGetProperty(member, out var value) && value.ValueKind != JsonValueKind.Null
        select $"{member} given";

    private static string In(JsonElement answer, string? where)
    {
        var summary = Text(answer, "summary")!;
        var actions = string.Join('\n', Actions(answer).Select(action => $"{Text(action, "text")}\n{Text(action, "until")}"));
        if (where == "summary") return summary;
        if (where == "actions") return actions;
        var axles = answer.TryGetProperty("axles", out var both) ? string.Join('\n', both.EnumerateObject().Where(one => one.Value.ValueKind == JsonValueKind.Object).Select(one => Text(one.Value, "text"))) : "";
        var text = $"{summary}\n{actions}\n{axles}";
        if (where != "evidence") return text;
        var causes = answer.GetProperty("causes").EnumerateArray().ToList();
        return text + '\n' + string.Join('\n', causes.Select(one => Text(one, "meaning")).Concat(causes.SelectMany(one => one.GetProperty("evidence").EnumerateArray()).Where(one => one.GetProperty("supports").GetBoolean()).Select(one => Text(one, "observation"))));
    }

    private static List<string> Sentences(string text) => [.. SentenceEnd().Split(text).Where(sentence => sentence.Length > 0)];

    private static string? Text(JsonElement one, string member) => one.TryGetProperty(member, out var value) && value.ValueKind == JsonValueKind.String ? value.GetString() : null;

    private static double? Number(JsonElement one, string member) => one.TryGetProperty(member, out var value) && value.ValueKind == JsonValueKind.Number ? value.GetDouble() : null;

    [GeneratedRegex("(?<=[.!?])\\s+(?=\\p{Lu})")]
    private static partial Regex SentenceEnd();

    [GeneratedRegex("^(Next check|Also|Later)", RegexOptions.CultureInvariant)]
    private static partial Regex NotLeading();
}
