using System.Text.Json.Nodes;

namespace SetupService.Api.Tests.Geometry;

/// <summary>Finds the places of a request's body, so that a test can go through every one.</summary>
internal static class BodyPlaces
{
    /// <summary>JSON Pointers of every value below the body's root, lists' elements included.</summary>
    public static IEnumerable<string> Of(JsonNode? node, string pointer = "") => node switch
    {
        JsonObject group => group.SelectMany(member => Of(member.Value, $"{pointer}/{member.Key}").Prepend($"{pointer}/{member.Key}")),
        JsonArray list => list.SelectMany((element, index) => Of(element, $"{pointer}/{index}").Prepend($"{pointer}/{index}")),
        _ => [],
    };

    public static JsonNode At(JsonNode body, string pointer) =>
        pointer[1..].Split('/').Aggregate(body, (node, step) => node is JsonArray list ? list[int.Parse(step)]! : node[step]!);

    /// <summary>Whether the last step names a member, not an element of a list.</summary>
    public static bool IsMember(string pointer) => !char.IsAsciiDigit(pointer[pointer.LastIndexOf('/') + 1]);
}
