using System.Globalization;
using System.Text;
using System.Text.Json;
using SetupService.Api.Http.Contract;

namespace SetupService.Api.Http.Faults;

/// <summary>Checks one value that is neither a walked object nor a walked array against what should stand there.</summary>
internal static class ScalarFaults
{
    /// <summary>The fault of the value the reader stands on, or null where it is sound.</summary>
    public static Fault? Find(ref Utf8JsonReader reader, ContractSchema schema, PointerPath path)
    {
        if (reader.TokenType == JsonTokenType.Null)
            return Fault.At(path.ToString(), FaultCodes.Required, $"{path.Label} is null; {schema.Expected} is needed here.");

        return schema switch
        {
            NumberSchema number when reader.TokenType == JsonTokenType.Number => NumberFault(ref reader, number, path),
            StringSchema text when reader.TokenType == JsonTokenType.String => TextFault(ref reader, text, path),
            EnumSchema word when reader.TokenType == JsonTokenType.String => WordFault(ref reader, word, path),
            LineIdSchema name when reader.TokenType == JsonTokenType.String => TextFault(ref reader, new StringSchema(name.MaximumLength), path),
            LineIdSchema when reader.TokenType == JsonTokenType.Number && reader.TryGetInt64(out _) => null,
            BooleanSchema when reader.TokenType is JsonTokenType.True or JsonTokenType.False => null,
            _ => Fault.At(path.ToString(), FaultCodes.WrongType, $"{path.Label} is {Found(ref reader)}; {schema.Expected} is needed here."),
        };
    }

    private static Fault? NumberFault(ref Utf8JsonReader reader, NumberSchema schema, PointerPath path)
    {
        var typed = Shorten(Encoding.UTF8.GetString(reader.ValueSpan));
        if (!reader.TryGetDouble(out var value) || !double.IsFinite(value))
            return Fault.At(path.ToString(), FaultCodes.NotFinite, $"{path.Label} is {typed}, too large for a number in double precision.");
        if (schema.IsWhole && !double.IsInteger(value))
            return Fault.At(path.ToString(), FaultCodes.WrongType, $"{path.Label} is {typed}; a whole number is needed here.");
        return value >= schema.Minimum && value <= schema.Maximum
            ? null
            : Fault.At(
                path.ToString(),
                FaultCodes.OutOfRange,
                RangeText.Message(path.Label, typed, schema.Minimum, schema.Maximum, schema.Unit),
                new FaultLimits { Minimum = schema.Minimum, Maximum = schema.Maximum, Unit = schema.Unit });
    }

    private static Fault? TextFault(ref Utf8JsonReader reader, StringSchema schema, PointerPath path)
    {
        var length = reader.GetString()!.Length;
        return length <= schema.MaximumLength
            ? null
            : Fault.At(
                path.ToString(),
                FaultCodes.TooLong,
                string.Create(CultureInfo.InvariantCulture, $"{path.Label} has {length} characters; at most {schema.MaximumLength} are read."),
                new FaultLimits { Maximum = schema.MaximumLength });
    }

    private static Fault? WordFault(ref Utf8JsonReader reader, EnumSchema schema, PointerPath path)
    {
        foreach (var word in schema.Words)
        {
            if (reader.ValueTextEquals(word))
                return null;
        }

        var typed = reader.GetString()!;
        return Fault.At(path.ToString(), FaultCodes.UnknownWord, WordText.Message(path.Label, typed, schema.Words));
    }

    private static string Found(ref Utf8JsonReader reader) => reader.TokenType switch
    {
        JsonTokenType.StartObject => "an object",
        JsonTokenType.StartArray => "an array",
        JsonTokenType.String => "the text " + TokenText.Quote(reader.GetString()!),
        JsonTokenType.Number => "the number " + Shorten(Encoding.UTF8.GetString(reader.ValueSpan)),
        JsonTokenType.True => "true",
        _ => "false",
    };

    private static string Shorten(string text) =>
        text.Length > ServiceLimits.QuotedLength ? text[..ServiceLimits.QuotedLength] + "…" : text;
}
