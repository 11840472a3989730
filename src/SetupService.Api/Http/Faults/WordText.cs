namespace SetupService.Api.Http.Faults;

/// <summary>The sentence for a word outside a closed set, the same for bodies and query parameters.</summary>
internal static class WordText
{
    public static string Message(string label, string typed, IReadOnlyList<string> words)
    {
        var meant = NearestName.Find(typed, words) is { } near ? $"; {near} may be meant" : "";
        return $"{label} is {TokenText.Quote(typed)}{meant}. It must be one of: {string.Join(", ", words)}.";
    }
}
