using System.Buffers;
using System.Globalization;
using System.Text;
using System.Text.Json;
using System.Text.Unicode;

namespace SetupService.Api.Http.Faults;

/// <summary>Tells whether bytes are JSON text at all, before anything is looked up in them.</summary>
internal static class SyntaxScan
{
    // Deep enough to tell a deep body from a broken one within the largest body accepted.
    private const int DeepestScanned = 1 << 20;

    /// <summary>The one fault of a body that is empty, not JSON or nested too deeply; null where it can be walked.</summary>
    public static Fault? Find(ReadOnlySpan<byte> utf8)
    {
        if (utf8.IndexOfAnyExcept(" \t\r\n"u8) < 0)
            return Fault.At("", FaultCodes.Required, "The body is empty; a JSON object is needed.");
        if (!Utf8.IsValid(utf8))
            return NotJson(utf8, LengthOfValidPart(utf8), "The body is not UTF-8");

        Utf8JsonReader reader = new(utf8, new JsonReaderOptions { MaxDepth = DeepestScanned });
        int? tooDeepAt = null;
        try
        {
            while (reader.Read())
            {
                if (reader.TokenType is JsonTokenType.String or JsonTokenType.PropertyName && !TokenText.IsUnicode(ref reader))
                    return NotJson(utf8, (int)reader.TokenStartIndex, "The body has a text with half of a surrogate pair");
                if (tooDeepAt is null && reader.CurrentDepth >= ServiceLimits.JsonDepth
                    && reader.TokenType is JsonTokenType.StartObject or JsonTokenType.StartArray)
                {
                    tooDeepAt = (int)reader.TokenStartIndex;
                }
            }
        }
        catch (JsonException fault)
        {
            return NotJson(utf8, OffsetOf(utf8, fault), "The body is not JSON");
        }

        return tooDeepAt is { } deep
            ? TooDeep(utf8, deep)
            : null;
    }

    private static int LengthOfValidPart(ReadOnlySpan<byte> utf8)
    {
        var length = 0;
        while (Rune.DecodeFromUtf8(utf8[length..], out _, out var consumed) == OperationStatus.Done)
            length += consumed;
        return length;
    }

    private static int OffsetOf(ReadOnlySpan<byte> utf8, JsonException fault)
    {
        var start = 0;
        for (var line = fault.LineNumber ?? 0; line > 0; line--)
            start += utf8[start..].IndexOf((byte)'\n') + 1;
        return Math.Min(utf8.Length, start + (int)(fault.BytePositionInLine ?? 0));
    }

    private static Fault NotJson(ReadOnlySpan<byte> utf8, int offset, string what)
    {
        (var line, var column) = PlaceOf(utf8, offset);
        var found = offset >= utf8.Length ? "it ends there too early" : "from there on it cannot be read";
        var message = string.Create(CultureInfo.InvariantCulture, $"{what}: line {line}, character {column}, {found}.");
        return Fault.At("", FaultCodes.Syntax, message) with { Line = line, Column = column };
    }

    private static Fault TooDeep(ReadOnlySpan<byte> utf8, int offset)
    {
        (var line, var column) = PlaceOf(utf8, offset);
        var message = string.Create(
            CultureInfo.InvariantCulture,
            $"At line {line}, character {column}, the body nests deeper than {ServiceLimits.JsonDepth} levels.");
        FaultLimits limits = new() { Maximum = ServiceLimits.JsonDepth };
        return Fault.At("", FaultCodes.TooDeep, message, limits) with { Line = line, Column = column };
    }

    private static (int Line, int Column) PlaceOf(ReadOnlySpan<byte> utf8, int offset)
    {
        var before = utf8[..offset];
        var column = 1;
        foreach (var part in before[(before.LastIndexOf((byte)'\n') + 1)..])
        {
            // Bytes 10xxxxxx go on with the character before them.
            if ((part & 0xC0) != 0x80)
                column++;
        }

        return (before.Count((byte)'\n') + 1, column);
    }
}
