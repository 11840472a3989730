using System.Text.Json;
using System.Text.Json.Serialization;

namespace SetupService.Api.Http.Contract;

/// <summary>Reads a required whole number within its limits.</summary>
internal sealed class LimitedWholeNumberConverter(LimitsAttribute limits) : JsonConverter<int>
{
    public override int Read(ref Utf8JsonReader reader, Type typeToConvert, JsonSerializerOptions options)
    {
        return NumberTokens.TryReadWhole(ref reader, limits, out var value) ? value : throw new JsonException();
    }

    public override void Write(Utf8JsonWriter writer, int value, JsonSerializerOptions options) =>
        throw new NotSupportedException("Requests are read, never written.");
}
