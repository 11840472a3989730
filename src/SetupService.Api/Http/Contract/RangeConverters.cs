using System.ComponentModel.DataAnnotations;
using System.Globalization;
using System.Text.Json;
using System.Text.Json.Serialization;

namespace SetupService.Api.Http.Contract;

/// <summary>The inclusive range a number of a request must lie in, in the unit its name ends in.</summary>
internal readonly record struct NumberRange(double Minimum, double Maximum)
{
    /// <summary>The range an attribute states, whether with whole numbers or not.</summary>
    public static NumberRange From(RangeAttribute attribute) =>
        new(Convert.ToDouble(attribute.Minimum, CultureInfo.InvariantCulture), Convert.ToDouble(attribute.Maximum, CultureInfo.InvariantCulture));
}

/// <summary>Reads a number where it is within a range; a number too large for a double is never within any.</summary>
internal static class NumberTokens
{
    public static bool TryRead(ref Utf8JsonReader reader, NumberRange range, out double value)
    {
        value = 0;
        return reader.TokenType == JsonTokenType.Number
            && reader.TryGetDouble(out value)
            && value >= range.Minimum
            && value <= range.Maximum;
    }

    public static bool TryReadWhole(ref Utf8JsonReader reader, NumberRange range, out int value)
    {
        // 87.0 is the whole number 87 (JSON Schema says so), 87.5 is none.
        var isWhole = TryRead(ref reader, range, out var read) && double.IsInteger(read)
            && read is >= int.MinValue and <= int.MaxValue;
        value = isWhole ? (int)read : 0;
        return isWhole;
    }
}

/// <summary>Reads a required number within its range.</summary>
internal sealed class RangedNumberConverter(NumberRange range) : JsonConverter<double>
{
    public override double Read(ref Utf8JsonReader reader, Type typeToConvert, JsonSerializerOptions options)
    {
        return NumberTokens.TryRead(ref reader, range, out var value) ? value : throw new JsonException();
    }

    public override void Write(Utf8JsonWriter writer, double value, JsonSerializerOptions options) =>
        throw new NotSupportedException("Requests are read, never written.");
}

/// <summary>Reads an optional number within its range; null stands for absent.</summary>
internal sealed class RangedOptionalNumberConverter(NumberRange range) : JsonConverter<double?>
{
    public override double? Read(ref Utf8JsonReader reader, Type typeToConvert, JsonSerializerOptions options)
    {
        if (reader.TokenType == JsonTokenType.Null)
            return null;

        return NumberTokens.TryRead(ref reader, range, out var value) ? value : throw new JsonException();
    }

    public override void Write(Utf8JsonWriter writer, double? value, JsonSerializerOptions options) =>
        throw new NotSupportedException("Requests are read, never written.");
}

/// <summary>Reads a required whole number within its range.</summary>
internal sealed class RangedWholeNumberConverter(NumberRange range) : JsonConverter<int>
{
    public override int Read(ref Utf8JsonReader reader, Type typeToConvert, JsonSerializerOptions options)
    {
        return NumberTokens.TryReadWhole(ref reader, range, out var value) ? value : throw new JsonException();
    }

    public override void Write(Utf8JsonWriter writer, int value, JsonSerializerOptions options) =>
        throw new NotSupportedException("Requests are read, never written.");
}

/// <summary>Reads an optional whole number within its range; null stands for absent.</summary>
internal sealed class RangedOptionalWholeNumberConverter(NumberRange range) : JsonConverter<int?>
{
    public override int? Read(ref Utf8JsonReader reader, Type typeToConvert, JsonSerializerOptions options)
    {
        if (reader.TokenType == JsonTokenType.Null)
            return null;

        return NumberTokens.TryReadWhole(ref reader, range, out var value) ? value : throw new JsonException();
    }

    public override void Write(Utf8JsonWriter writer, int? value, JsonSerializerOptions options) =>
        throw new NotSupportedException("Requests are read, never written.");
}

/// <summary>Reads an array of numbers that must each be within the range.</summary>
internal sealed class RangedNumbersConverter(NumberRange range) : JsonConverter<double[]>
{
    public override double[] Read(ref Utf8JsonReader reader, Type typeToConvert, JsonSerializerOptions options)
    {
        if (reader.TokenType != JsonTokenType.StartArray)
            throw new JsonException();

        List<double> values = [];
        while (reader.Read() && reader.TokenType != JsonTokenType.EndArray)
            values.Add(NumberTokens.TryRead(ref reader, range, out var value) ? value : throw new JsonException());
        return [.. values];
    }

    public override void Write(Utf8JsonWriter writer, double[] value, JsonSerializerOptions options) =>
        throw new NotSupportedException("Requests are read, never written.");
}
