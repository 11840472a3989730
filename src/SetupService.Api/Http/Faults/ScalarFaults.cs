using System.Globalization;
using System.Text;
using System.Text.Json;
using SetupService.Api.Http.Contract;

namespace SetupService.Api.Http.Faults;

/// <summary>Checks one value that is neither a walked object nor a walked array against what should stand there.</summary>
internal static class ScalarFaults
{
    /// <summary>The fault of the value the reader stands on, or null where it is sound.</summary>
    public static Fault? Find(ref Utf8JsonReader reader, ContractShape shape, PointerPath path)
    {
        if (reader.TokenType == JsonTokenType.Null)
            return Fault.At(path.ToString(), FaultCodes.Required, $"{path.Label} is null; {shape.Wanted} is needed here.");

        return shape switch
        {
            NumberShape number when reader.TokenType == JsonTokenType.Number => OfNumber(ref reader, number, path),
            TextShape text when reader.TokenType == JsonTokenType.String => OfText(ref reader, text, path),
            WordShape word when reader.TokenType == JsonTokenType.String => OfWord(ref reader, word, path),
            NameShape name when reader.TokenType == JsonTokenType.String => OfText(ref reader, new TextShape(name.MaximumLength), path),
            NameShape when reader.TokenType == JsonTokenType.Number && reader.TryGetInt64(out _) => null,
            FlagShape when reader.TokenType is JsonTokenType.True or JsonTokenType.False => null,
            _ => Fault.At(path.ToString(), FaultCodes.WrongType, $"{path.Label} is {Found(ref reader)}; {shape.Wanted} is needed here."),
        };
    }

    private static Fault? OfNumber(ref Utf8JsonReader reader, NumberShape shape, PointerPath path)
    {
        var typed = Shorten(Encoding.UTF8.GetString(reader.ValueSpan));
        if (!reader.TryGetDouble(out var value) || !double.IsFinite(value))
            return Fault.At(path.ToString(), FaultCodes.NotFinite, $"{path.Label} is {typed}, too large for a number in double precision.");
        if (shape.IsWhole && !double.IsInteger(value))
            return Fault.At(path.ToString(), FaultCodes.WrongType, $"{path.Label} is {typed}; a whole number is needed here.");
        return value >= shape.Minimum && value <= shape.Maximum
            ? null
            : Fault.At(
                path.ToString(),
                FaultCodes.OutOfRange,
                RangeText.Message(path.Label, typed, shape.Minimum, shape.Maximum, shape.Unit),
                new FaultLimits { Minimum = shape.Minimum, Maximum = shape.Maximum, Unit = shape.Unit });
    }

    private static Fault? OfText(ref Utf8JsonReader reader, TextShape shape, PointerPath path)
    {
        var length = reader.GetString()!.Length;
        return length <= shape.MaximumLength
            ? null
            : Fault.At(
                path.ToString(),
                FaultCodes.TooLong,
                string.Create(CultureInfo.InvariantCulture, $"{path.Label} has {length} characters; at most {shape.MaximumLength} are read."),
                new FaultLimits { Maximum = shape.MaximumLength });
    }

    private static Fault? OfWord(ref Utf8JsonReader reader, WordShape shape, PointerPath path)
    {
        foreach (var word in shape.Words)
        {
            if (reader.ValueTextEquals(word))
                return null;
        }

        var typed = reader.GetString()!;
        return Fault.At(path.ToString(), FaultCodes.UnknownWord, WordText.Message(path.Label, typed, shape.Words));
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
