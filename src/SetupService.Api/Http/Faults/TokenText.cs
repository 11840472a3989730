using System.Text.Json;

namespace SetupService.Api.Http.Faults;

/// <summary>Reads and quotes pieces of a caller's text for messages.</summary>
internal static class TokenText
{
    /// <summary>The name or text the reader stands on; what is no Unicode text becomes a replacement character.</summary>
    public static string Read(ref Utf8JsonReader reader) => TryRead(ref reader, out string text) ? text : "\uFFFD";

    /// <summary>The name or text the reader stands on, unless its escapes leave half of a surrogate pair.</summary>
    public static bool TryRead(ref Utf8JsonReader reader, out string text)
    {
        try
        {
            text = reader.GetString() ?? "";
            return true;
        }
        catch (InvalidOperationException)
        {
            text = "";
            return false;
        }
    }

    /// <summary>The text in quotation marks, shortened, without control characters.</summary>
    public static string Quote(string text)
    {
        string part = text.Length > ServiceLimits.QuotedLength ? text[..ServiceLimits.QuotedLength] + "…" : text;
        return "“" + string.Create(part.Length, part, (span, from) =>
        {
            for (int at = 0; at < from.Length; at++)
                span[at] = char.IsControl(from[at]) ? '\uFFFD' : from[at];
        }) + "”";
    }
}
