using System.Text.Json;
using System.Text.Json.Serialization;

namespace SetupService.Api.Http.Contract;

/// <summary>Reads a required number within its limits.</summary>
internal sealed class LimitedNumberConverter(LimitsAttribute limits) : JsonConverter<double>
{
    public override double Read(ref Utf8JsonReader reader, Type typeToConvert, JsonSerializerOptions options)
    {
        return NumberTokens.TryRead(ref reader, limits, out var value) ? value : throw new JsonException();
    }

    public override void Write(Utf8JsonWriter writer, double value, JsonSerializerOptions options) =>
        throw new NotSupportedException("Requests are read, never written.");
}
