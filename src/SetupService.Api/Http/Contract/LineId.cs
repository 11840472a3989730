using System.Text.Json;
using System.Text.Json.Serialization;

namespace SetupService.Api.Http.Contract;

/// <summary>A caller's own name for a line, given back as it came: a text of up to 64 characters, or a whole number.</summary>
[JsonConverter(typeof(LineIdConverter))]
public sealed record LineId
{
    /// <summary>The longest text kept.</summary>
    public const int MaximumLength = 64;

    /// <summary>The text, or null where the id is a number.</summary>
    public string? Text { get; init; }

    /// <summary>The number; meant only where there is no text.</summary>
    public long Number { get; init; }
}

/// <summary>Reads and writes a line's id as the text or whole number it is.</summary>
public sealed class LineIdConverter : JsonConverter<LineId>
{
    /// <inheritdoc />
    public override LineId Read(ref Utf8JsonReader reader, Type typeToConvert, JsonSerializerOptions options)
    {
        if (reader.TokenType == JsonTokenType.String && reader.GetString() is { Length: <= LineId.MaximumLength } text)
            return new LineId { Text = text };
        return reader.TokenType == JsonTokenType.Number && reader.TryGetInt64(out var number)
            ? new LineId { Number = number }
            : throw new JsonException();
    }

    /// <inheritdoc />
    public override void Write(Utf8JsonWriter writer, LineId value, JsonSerializerOptions options)
    {
        ArgumentNullException.ThrowIfNull(writer);
        ArgumentNullException.ThrowIfNull(value);
        if (value.Text is { } text)
            writer.WriteStringValue(text);
        else
            writer.WriteNumberValue(value.Number);
    }
}
