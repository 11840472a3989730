using System.Text.Json.Nodes;
using Microsoft.AspNetCore.OpenApi;
using Microsoft.OpenApi;
using SetupService.Api.Fitment.Batch;
using SetupService.Api.Http;

namespace SetupService.Api.Host.OpenApi;

/// <summary>
/// Shows with each call what is sent and what comes back: the files of api/examples. A request is shown whole, so that it can be
/// sent as it stands, and once for all calls that take it; an answer is shortened, a picture left out.
/// </summary>
internal sealed class MediaExamples : IOpenApiOperationTransformer
{
    private static readonly Dictionary<string, string> Endings = new(StringComparer.Ordinal)
    {
        [ProducedMedia.Json.Type] = "json",
        [NdjsonBatch.MediaType] = "ndjson",
        [CsvBatch.MediaType] = "csv",
    };

    // A page shows its first line.
    private static readonly Dictionary<string, string> Pages = new(StringComparer.Ordinal)
    {
        ["docs/problems/{name}"] = "too-large",
        ["docs/methods/{name}"] = "fitment-window",
    };

    public Task TransformAsync(OpenApiOperation operation, OpenApiOperationTransformerContext context, CancellationToken cancellationToken)
    {
        if (context.Description.ActionDescriptor.EndpointMetadata.OfType<ExampleName>().LastOrDefault() is { } example)
        {
            ShowRequest(operation.RequestBody?.Content, example.Name, context.Document!);
            ShowAnswer(operation.Responses?["200"].Content, example.Name, context.Document!);
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

    private static void ShowRequest(IDictionary<string, OpenApiMediaType>? content, string name, OpenApiDocument document)
    {
        foreach ((var type, var media) in content ?? new Dictionary<string, OpenApiMediaType>())
        {
            var isForm = type == FormParts.MediaType;
            var file = $"{name}.request.{(isForm ? "csv" : Endings.GetValueOrDefault(type))}";
            if ((isForm ? Form(name) : ExampleFiles.Find(file)) is { } example)
                Share(media, document, file, example);
        }
    }

    private static void ShowAnswer(IDictionary<string, OpenApiMediaType>? content, string name, OpenApiDocument document)
    {
        foreach ((var type, var media) in content ?? new Dictionary<string, OpenApiMediaType>())
        {
            var file = $"{name}.answer.{Endings.GetValueOrDefault(type)}";
            if (ShortExample.From(ExampleFiles.Find(file)) is { } example)
                Share(media, document, file, example);
        }
    }

    /// <summary>An example stands once for all calls, under the name of the first file that holds it.</summary>
    private static void Share(OpenApiMediaType media, OpenApiDocument document, string file, JsonNode example)
    {
        var examples = (document.Components ??= new OpenApiComponents()).Examples ??= new Dictionary<string, IOpenApiExample>();
        var same = examples.FirstOrDefault(known => JsonNode.DeepEquals(known.Value.Value, example)).Key;
        if (same is null)
            examples.Add(file, new OpenApiExample { Value = example });
        media.Examples = new Dictionary<string, IOpenApiExample> { ["demo"] = new OpenApiExampleReference(same ?? file, document) };
    }

    /// <summary>The parts of a form, each under its name.</summary>
    private static JsonObject? Form(string name)
    {
        if (ExampleFiles.Find(name + ".request.csv") is not { } candidates)
            return null;
        if (ExampleFiles.Find(name + ".car.json") is { } car)
            return new JsonObject { ["car"] = car, ["candidates"] = candidates };
        return ExampleFiles.Find(name + ".cars.ndjson") is { } cars ? new JsonObject { ["cars"] = cars, ["candidates"] = candidates } : null;
    }

    private static void ShowPage(OpenApiOperation operation, string resource, string page)
    {
        foreach (var parameter in (operation.Parameters ?? []).OfType<OpenApiParameter>())
            parameter.Example = JsonValue.Create(page);
        foreach (var media in (operation.Responses?["200"].Content ?? new Dictionary<string, OpenApiMediaType>()).Values)
            media.Example = ExampleFiles.Text(resource) is { } text ? JsonValue.Create(text.Split('\n')[0]) : null;
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
