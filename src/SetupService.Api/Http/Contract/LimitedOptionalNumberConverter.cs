using System.Text.Json;
using System.Text.Json.Serialization;

namespace SetupService.Api.Http.Contract;

/// <summary>Reads an optional number within its limits; null stands for absent.</summary>
internal sealed class LimitedOptionalNumberConverter(LimitsAttribute limits) : JsonConverter<double?>
{
    public override double? Read(ref Utf8JsonReader reader, Type typeToConvert, JsonSerializerOptions options)
    {
        if (reader.TokenType == JsonTokenType.Null)
            return null;

        return NumberTokens.TryRead(ref reader, limits, out var value) ? value : throw new JsonException();
    }

    public override void Write(Utf8JsonWriter writer, double? value, JsonSerializerOptions options) =>
        throw new NotSupportedException("Requests are read, never written.");
}
