using System.Globalization;
using System.Text.Json;
using SetupService.Api.Http.Faults;

namespace SetupService.Api.Http.Documents;

/// <summary>One of the texts a document was merged from, and where in the body it stood.</summary>
/// <param name="Members">The text.</param>
/// <param name="Pointer">Its JSON Pointer in the body.</param>
internal sealed record SentText(Lazy<JsonElement> Members, string Pointer)
{
    /// <summary>
    /// Where in the body the caller wrote what a fault of the merged document names: in the text that has most of the way there, the
    /// first of them where several have as much. What is missing counts to the text that named the object it is missing in.
    /// </summary>
    public static string PlaceOf(Fault fault, IEnumerable<SentText> texts)
    {
        var pointer = fault.Pointer ?? "";
        var told = fault.Code == FaultCodes.Required ? pointer[..Math.Max(pointer.LastIndexOf('/'), 0)] : pointer;
        return texts.MaxBy(text => text.Steps(told))!.Pointer + pointer;
    }

    /// <summary>True where a JSON Pointer (RFC 6901) leads to a value.</summary>
    public static bool Reaches(in JsonElement members, string pointer) => Steps(members, pointer) == pointer.AsSpan().Count('/');

    /// <summary>How many steps of a JSON Pointer lead somewhere in the text.</summary>
    private int Steps(string pointer) => Steps(Members.Value, pointer);

    private static int Steps(JsonElement at, ReadOnlySpan<char> pointer)
    {
        var steps = 0;
        while (pointer is ['/', ..])
        {
            var end = pointer[1..].IndexOf('/') + 1;
            var name = end > 0 ? pointer[1..end] : pointer[1..];
            pointer = end > 0 ? pointer[end..] : default;
            if (name.Contains('~')) name = name.ToString().Replace("~1", "/", StringComparison.Ordinal).Replace("~0", "~", StringComparison.Ordinal);
            if (at.ValueKind == JsonValueKind.Object && at.TryGetProperty(name, out var member))
                at = member;
            else if (at.ValueKind == JsonValueKind.Array && int.TryParse(name, NumberStyles.None, CultureInfo.InvariantCulture, out var index) && index < at.GetArrayLength())
                at = at[index];
            else
                return steps;
            steps++;
        }

        return steps;
    }
}
