using System.Text.Json.Nodes;

namespace SetupService.Api.Host.OpenApi;

/// <summary>The example requests and answers of api/examples, built into the service.</summary>
internal static class ExampleFiles
{
    public static JsonNode? Find(string name)
    {
        using Stream? file = typeof(ExampleFiles).Assembly.GetManifestResourceStream("api/examples/" + name);
        return file is null ? null : JsonNode.Parse(file);
    }
}
