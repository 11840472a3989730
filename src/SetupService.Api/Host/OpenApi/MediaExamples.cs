using System.Text.Json.Nodes;
using Microsoft.AspNetCore.OpenApi;
using Microsoft.OpenApi;
using SetupService.Api.Fitment.Batch;
using SetupService.Api.Http;

namespace SetupService.Api.Host.OpenApi;

/// <summary>Shows with each media type of a call what is sent and what comes back: the files of api/examples, whatever their format.</summary>
internal sealed class MediaExamples : IOpenApiOperationTransformer
{
    private static readonly Dictionary<string, string> Endings = new(StringComparer.Ordinal)
    {
        [ProducedMedia.Json.Type] = "json",
        [NdjsonBatch.MediaType] = "ndjson",
        [CsvBatch.MediaType] = "csv",
        ["image/svg+xml"] = "svg",
    };

    // A page shows itself; these are short ones.
    private static readonly Dictionary<string, string> Pages = new(StringComparer.Ordinal)
    {
        ["docs/problems/{name}"] = "too-large",
        ["docs/methods/{name}"] = "fitment-window",
    };

    public Task TransformAsync(OpenApiOperation operation, OpenApiOperationTransformerContext context, CancellationToken cancellationToken)
    {
        if (context.Description.ActionDescriptor.EndpointMetadata.OfType<ExampleName>().LastOrDefault() is { } example)
        {
            Show(operation.RequestBody?.Content, example.Name + ".request.");
            Show(operation.Responses?["200"].Content, example.Name + ".answer.");
            if (operation.RequestBody?.Content?.TryGetValue(CsvBatch.RequestMediaType, out var form) == true)
                form.Example = Form(example.Name);
        }
        else if (Pages.TryGetValue(context.Description.RelativePath ?? "", out var page))
        {
            ShowPage(operation, context.Description.RelativePath!.Replace("{name}", page + ".md", StringComparison.Ordinal), page);
        }

        else
        {
            ShowSamples(operation.Responses?["200"].Content);
        }

        return Task.CompletedTask;
    }

    private static void Show(IDictionary<string, OpenApiMediaType>? content, string start)
    {
        foreach ((var type, var media) in content ?? new Dictionary<string, OpenApiMediaType>())
        {
            if (Endings.TryGetValue(type, out var ending) && ExampleFiles.Find(start + ending) is { } example)
                media.Example = example;
        }
    }

    /// <summary>The parts of a table's request, each under its name.</summary>
    private static JsonObject? Form(string name) =>
        ExampleFiles.Find(name + ".car.json") is { } car && ExampleFiles.Find(name + ".request.csv") is { } candidates
            ? new JsonObject { ["car"] = car, ["candidates"] = candidates }
            : null;

    private static void ShowPage(OpenApiOperation operation, string resource, string page)
    {
        foreach (var parameter in (operation.Parameters ?? []).OfType<OpenApiParameter>())
            parameter.Example = JsonValue.Create(page);
        foreach (var media in (operation.Responses?["200"].Content ?? new Dictionary<string, OpenApiMediaType>()).Values)
            media.Example = ExampleFiles.Text(resource) is { } text ? JsonValue.Create(text) : null;
    }

    /// <summary>An answer that changes with every build has no file; its members' samples stand for it.</summary>
    private static void ShowSamples(IDictionary<string, OpenApiMediaType>? content)
    {
        foreach (var media in (content ?? new Dictionary<string, OpenApiMediaType>()).Values)
        {
            if (media.Schema?.Properties is { Count: > 0 } members && members.Values.All(member => member.Examples is { Count: > 0 }))
                media.Example = new JsonObject(members.Select(member => KeyValuePair.Create(member.Key, (JsonNode?)member.Value.Examples![0].DeepClone())));
        }
    }
}
