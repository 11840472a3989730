using System.Text.Json.Nodes;

namespace SetupService.Api.Host.OpenApi;

/// <summary>Shortens an example answer for the description: one row of every list.</summary>
internal static class ShortExample
{
    /// <summary>Shortens an answer; what is no list in it stays as it is, so that it still keeps its schema.</summary>
    public static JsonNode? From(JsonNode? answer) => answer switch
    {
        JsonObject group => new JsonObject(group.Select(member => KeyValuePair.Create(member.Key, From(member.Value)))),
        JsonArray list => new JsonArray([.. list.Take(1).Select(From)]),
        _ => answer?.DeepClone(),
    };
}
