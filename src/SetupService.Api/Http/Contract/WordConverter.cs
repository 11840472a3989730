using System.Text.Json;
using System.Text.Json.Serialization;

namespace SetupService.Api.Http.Contract;

/// <summary>
/// Reads and writes an enum as one of its camelCase words and as nothing else: no number, no other case, no list.
/// </summary>
/// <typeparam name="T">The enum.</typeparam>
public sealed class WordConverter<T> : JsonConverter<T>
    where T : struct, Enum
{
    /// <inheritdoc />
    public override T Read(ref Utf8JsonReader reader, Type typeToConvert, JsonSerializerOptions options)
    {
        if (reader.TokenType == JsonTokenType.String && Words<T>.TryGet(ref reader, out var value))
            return value;

        throw new JsonException();
    }

    /// <inheritdoc />
    public override void Write(Utf8JsonWriter writer, T value, JsonSerializerOptions options)
    {
        ArgumentNullException.ThrowIfNull(writer);
        writer.WriteStringValue(Words<T>.EncodedOf(value));
    }
}
