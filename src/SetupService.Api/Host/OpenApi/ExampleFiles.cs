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
        return file.EndsWith(".json", StringComparison.Ordinal) ? JsonNode.Parse(text) : JsonValue.Create(text);
    }

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
