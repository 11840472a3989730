using System.Text.Json.Nodes;

namespace SetupService.Api.Host.OpenApi;

/// <summary>Shortens an example answer for the description: the first two rows of each list, and one of each list inside a row.</summary>
internal static class ShortExample
{
    private const int Rows = 2;
    private const int RowsInside = 1;

    /// <summary>Shortens an answer; what is no list in it stays as it is, so that it still keeps its schema.</summary>
    public static JsonNode? From(JsonNode? answer) => Shorten(answer, Rows);

    private static JsonNode? Shorten(JsonNode? node, int rows) => node switch
    {
        JsonObject group => new JsonObject(group.Select(member => KeyValuePair.Create(member.Key, Shorten(member.Value, rows)))),
        JsonArray list => new JsonArray([.. list.Take(rows).Select(row => Shorten(row, RowsInside))]),
        _ => node?.DeepClone(),
    };
}
