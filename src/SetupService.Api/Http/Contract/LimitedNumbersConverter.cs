using System.Text.Json;
using System.Text.Json.Serialization;

namespace SetupService.Api.Http.Contract;

/// <summary>Reads an array of numbers that must each be within the limits.</summary>
internal sealed class LimitedNumbersConverter(LimitsAttribute limits) : JsonConverter<double[]>
{
    public override double[] Read(ref Utf8JsonReader reader, Type typeToConvert, JsonSerializerOptions options)
    {
        if (reader.TokenType != JsonTokenType.StartArray)
            throw new JsonException();

        List<double> values = [];
        while (reader.Read() && reader.TokenType != JsonTokenType.EndArray)
            values.Add(NumberTokens.TryRead(ref reader, limits, out var value) ? value : throw new JsonException());
        return [.. values];
    }

    public override void Write(Utf8JsonWriter writer, double[] value, JsonSerializerOptions options) =>
        throw new NotSupportedException("Requests are read, never written.");
}
