using System.Text.Json;
using System.Text.Json.Nodes;

namespace SetupService.Api.Host.OpenApi;

/// <summary>The example requests and answers of api/examples, built into the service.</summary>
internal static class ExampleFiles
{
    /// <summary>The example as the description shows it: JSON as JSON, any other format as its text; null where there is no such file.</summary>
    public static JsonNode? Find(string file)
    {
        if (Text("api/examples/" + file) is not { } text)
            return null;
        return file.EndsWith(".json", StringComparison.Ordinal) ? InDoubles(JsonNode.Parse(text)) : JsonValue.Create(text);
    }

    /// <summary>
    /// The same with every fraction held as a double: the writer of the description takes a number as read for a decimal, whose 28
    /// places cut a very small one short.
    /// </summary>
    private static JsonNode? InDoubles(JsonNode? node) => node switch
    {
        JsonObject group => new JsonObject(group.Select(member => KeyValuePair.Create(member.Key, InDoubles(member.Value)))),
        JsonArray list => new JsonArray([.. list.Select(InDoubles)]),
        JsonValue value when value.GetValueKind() == JsonValueKind.Number && !value.TryGetValue<long>(out _) => JsonValue.Create(value.GetValue<double>()),
        _ => node?.DeepClone(),
    };

    /// <summary>The text of a resource, or null where there is none of this name.</summary>
    public static string? Text(string resource)
    {
        using var stream = typeof(ExampleFiles).Assembly.GetManifestResourceStream(resource);
        if (stream is null)
            return null;
        using StreamReader reader = new(stream);
        return reader.ReadToEnd();
    }
}
