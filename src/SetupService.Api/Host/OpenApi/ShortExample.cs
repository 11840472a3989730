using System.Text.Json;
using System.Text.Json.Nodes;

namespace SetupService.Api.Host.OpenApi;

/// <summary>
/// Shortens an example answer for the description: the first two rows of a table, and one of any other list and of each list inside
/// a row.
/// </summary>
internal static class ShortExample
{
    private const int Rows = 2;

    /// <summary>Shortens an answer; what is no list in it stays as it is, so that it still keeps its schema.</summary>
    public static JsonNode? From(JsonNode? answer) => Shorten(answer, isInside: false);

    private static JsonNode? Shorten(JsonNode? node, bool isInside) => node switch
    {
        JsonObject group => new JsonObject(group.Select(member => KeyValuePair.Create(member.Key, Shorten(member.Value, isInside)))),
        JsonArray list => new JsonArray([.. list.Take(!isInside && list.Any(HasNumber) ? Rows : 1).Select(row => Shorten(row, isInside: true))]),
        _ => node?.DeepClone(),
    };

    /// <summary>What makes a list a table: its rows carry numbers.</summary>
    private static bool HasNumber(JsonNode? row) =>
        row is JsonObject group && group.Any(member => member.Value?.GetValueKind() == JsonValueKind.Number);
}
