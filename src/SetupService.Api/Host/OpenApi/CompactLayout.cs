using System.Text.Encodings.Web;
using System.Text.Json;

namespace SetupService.Api.Host.OpenApi;

/// <summary>
/// Lays JSON out for people: what fits a line stands on one, everything else is opened a level at a time, each
/// one space further in from the members of a schema on: the four levels above open the document and each schema, and
/// every line would begin with theirs. A member is then one line, and a difference between two editions is read member by member.
/// </summary>
internal static class CompactLayout
{
    /// <summary>The most characters a line has, unless a single value is longer.</summary>
    private const int LineLength = 560;

    /// <summary>The levels that stand at the margin.</summary>
    private const int LevelsAtMargin = 4;

    /// <summary>Lays out a whole document.</summary>
    /// <param name="json">The document; its values keep their own text.</param>
    /// <returns>The same document, ending in a line feed.</returns>
    public static string Format(JsonElement json)
    {
        using StringWriter text = new();
        Write(text, json, depth: 0, used: 0);
        text.Write('\n');
        return text.ToString();
    }

    private static void Write(StringWriter text, JsonElement value, int depth, int used)
    {
        var isOpened = value.ValueKind is JsonValueKind.Object or JsonValueKind.Array;
        var line = OnOneLine(value);
        if (!isOpened || depth + used + line.Length <= LineLength)
        {
            text.Write(line);
            return;
        }

        var isObject = value.ValueKind == JsonValueKind.Object;
        text.Write(isObject ? '{' : '[');
        var separator = "\n";
        foreach ((var name, var inner) in Parts(value))
        {
            text.Write(separator);
            Indent(text, depth + 1);
            text.Write(name);
            Write(text, inner, depth + 1, name.Length + 1);
            separator = ",\n";
        }

        text.Write('\n');
        Indent(text, depth);
        text.Write(isObject ? '}' : ']');
    }

    private static void Indent(StringWriter text, int depth)
    {
        for (var i = LevelsAtMargin; i < depth; i++)
            text.Write(' ');
    }

    private static string OnOneLine(JsonElement value) => value.ValueKind switch
    {
        JsonValueKind.Object when value.EnumerateObject().Any() => $"{{{Joined(value)}}}",
        JsonValueKind.Object => "{}",
        JsonValueKind.Array => $"[{Joined(value)}]",
        _ => value.GetRawText(),
    };

    private static string Joined(JsonElement value) => string.Join(',', Parts(value).Select(part => part.Name + OnOneLine(part.Value)));

    /// <summary>The parts of an object, each behind its name, or those of an array, which have none.</summary>
    private static IEnumerable<(string Name, JsonElement Value)> Parts(JsonElement value) => value.ValueKind == JsonValueKind.Object
        ? value.EnumerateObject().Select(member => ($"\"{JsonEncodedText.Encode(member.Name, JavaScriptEncoder.UnsafeRelaxedJsonEscaping)}\":", member.Value))
        : value.EnumerateArray().Select(element => ("", element));
}
