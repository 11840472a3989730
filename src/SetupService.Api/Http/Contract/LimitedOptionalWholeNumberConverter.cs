using System.Text.Json;
using System.Text.Json.Serialization;

namespace SetupService.Api.Http.Contract;

/// <summary>Reads an optional whole number within its limits; null stands for absent.</summary>
internal sealed class LimitedOptionalWholeNumberConverter(LimitsAttribute limits) : JsonConverter<int?>
{
    public override int? Read(ref Utf8JsonReader reader, Type typeToConvert, JsonSerializerOptions options)
    {
        if (reader.TokenType == JsonTokenType.Null)
            return null;

        return NumberTokens.TryReadWhole(ref reader, limits, out var value) ? value : throw new JsonException();
    }

    public override void Write(Utf8JsonWriter writer, int? value, JsonSerializerOptions options) =>
        throw new NotSupportedException("Requests are read, never written.");
}
