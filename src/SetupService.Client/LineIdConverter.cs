using System.Globalization;
using System.Text.Json;
using System.Text.Json.Serialization;

namespace SetupService.Client;

/// <summary>Reads a line's id, which comes back as it was sent: a text, or a whole number as its digits.</summary>
internal sealed class LineIdConverter : JsonConverter<string>
{
    public override string? Read(ref Utf8JsonReader reader, Type typeToConvert, JsonSerializerOptions options) =>
        reader.TokenType == JsonTokenType.Number ? reader.GetInt64().ToString(CultureInfo.InvariantCulture) : reader.GetString();

    public override void Write(Utf8JsonWriter writer, string value, JsonSerializerOptions options) => writer.WriteStringValue(value);
}
