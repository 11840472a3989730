using System.Globalization;
using System.Text.Json;
using System.Text.Json.Nodes;

namespace SetupService.Api.Host.OpenApi;

/// <summary>Shortens an example answer for the description: one row of every list, the beginning of every long text, fractions to four digits.</summary>
internal static class ShortExample
{
    private const int LongestText = 28;
    private const int Digits = 4;

    /// <summary>Shortens an answer; what is neither list nor long text stays as it is, so that it still keeps its schema. A table is its own text and stays whole.</summary>
    public static JsonNode? From(JsonNode? answer) => answer switch
    {
        JsonObject group => new JsonObject(group.Select(member => KeyValuePair.Create(member.Key, (JsonNode?)Text(member.Value) ?? From(member.Value)))),
        JsonArray list => new JsonArray([.. list.Take(1).Select(one => (JsonNode?)Text(one) ?? From(one))]),
        JsonValue value when value.GetValueKind() == JsonValueKind.Number && value.TryGetValue<double>(out var number) && number != Math.Truncate(number) => JsonValue.Create(Rounded(number)),
        _ => answer?.DeepClone(),
    };

    private static double Rounded(double number) => double.Parse(number.ToString("G" + Digits, CultureInfo.InvariantCulture), CultureInfo.InvariantCulture);

    private static JsonValue? Text(JsonNode? value) =>
        value is JsonValue && value.GetValueKind() == JsonValueKind.String && value.GetValue<string>() is { Length: > LongestText } text ? JsonValue.Create(Beginning(text)) : null;

    // Cut between two words; a marking or pointer without spaces is never that long.
    private static string Beginning(string text) => text.LastIndexOf(' ', LongestText) is > 0 and var end ? text[..end] + " …" : text;
}
