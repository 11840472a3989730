using System.Text.Json;
using System.Text.Json.Serialization;

namespace SetupService.Api.Http.Contract;

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
