using System.Text.Json;

namespace SetupService.Api.Http.Faults;

/// <summary>Reads and quotes pieces of a caller's text for messages.</summary>
internal static class TokenText
{
    /// <summary>Whether the name or text the reader stands on is Unicode: its escapes leave no half of a surrogate pair.</summary>
    public static bool IsUnicode(ref Utf8JsonReader reader)
    {
        if (!reader.ValueIsEscaped)
            return true;

        try
        {
            return reader.GetString() is not null;
        }
        catch (InvalidOperationException)
        {
            // The one way the framework tells: asking for the text.
            return false;
        }
    }

    /// <summary>The text in quotation marks, shortened, without control characters.</summary>
    public static string Quote(string text)
    {
        var part = text.Length > ServiceLimits.QuotedLength ? text[..ServiceLimits.QuotedLength] + "…" : text;
        return "“" + string.Create(part.Length, part, (span, from) =>
        {
            for (var at = 0; at < from.Length; at++)
                span[at] = char.IsControl(from[at]) ? '\uFFFD' : from[at];
        }) + "”";
    }
}
