using System.Text.Json;
using System.Text.Json.Nodes;
using Json.Schema;

namespace SetupService.Api.Tests.Examples;

/// <summary>
/// The schemas of the API description as JSON Schema 2020-12, the dialect of OpenAPI 3.1. Answers are held to them more
/// strictly than clients are told: a member no schema names is a fault too.
/// </summary>
internal sealed class DescribedSchemas
{
    private const string Here = "#/components/schemas/";
    private const string Home = "https://described.invalid/schemas";

    private static readonly EvaluationOptions Options = new() { OutputFormat = OutputFormat.List };
    private static readonly Lock OneReader = new();
    private static DescribedSchemas? _read;

    private readonly JsonNode _document;
    private readonly Dictionary<string, JsonSchema> _built = new(StringComparer.Ordinal);

    private DescribedSchemas(JsonNode document)
    {
        _document = document;
        JsonObject definitions = [];
        foreach ((var name, var schema) in document["components"]!["schemas"]!.AsObject())
            definitions.Add(name, Closed(schema!));
        JsonObject whole = new() { ["$schema"] = "https://json-schema.org/draft/2020-12/schema", ["$id"] = Home, ["$defs"] = definitions };
        BuildOptions options = new() { SchemaRegistry = new SchemaRegistry() };
        _ = JsonSchema.FromText(whole.ToJsonString().Replace(Here, "#/$defs/", StringComparison.Ordinal), options);
        foreach ((var name, _) in definitions)
            _built.Add(name, JsonSchema.FromText(new JsonObject { ["$ref"] = $"{Home}#/$defs/{name}" }.ToJsonString(), options));
    }

    /// <summary>
    /// The schemas of the description, the same for every test: all are built before the first is used and by one reader, because the
    /// library's registry must not be written while another thread resolves a reference in it.
    /// </summary>
    public static async Task<DescribedSchemas> ReadAsync(HttpClient client)
    {
        var text = await client.GetStringAsync(new Uri("/openapi/v1.json", UriKind.Relative));
        lock (OneReader)
            return _read ??= new(JsonNode.Parse(text)!);
    }

    /// <summary>A schema in a registry of its own, so that tests beside this one do not write where it is resolved.</summary>
    public static JsonSchema Alone(string text) => JsonSchema.FromText(text, new BuildOptions { SchemaRegistry = new SchemaRegistry() });

    /// <summary>What is wrong with the JSON answer of a call; null where nothing is.</summary>
    public string? FaultOf(string method, string path, int status, string answer)
    {
        var response = _document["paths"]?[path]?[method]?["responses"]?[$"{status}"];
        if (response?["$ref"]?.GetValue<string>() is { } shared)
            response = _document["components"]!["responses"]![shared.Split('/')[^1]];
        var media = response?["content"]?[status == 200 ? "application/json" : "application/problem+json"];
        var reference = media?["schema"]?["$ref"]?.GetValue<string>();
        return reference is null ? $"{method} {path} {status} has no named schema" : FaultOf(reference[Here.Length..], answer);
    }

    /// <summary>What is wrong with JSON that should follow a named schema; null where nothing is.</summary>
    public string? FaultOf(string schema, string json)
    {
        using var document = JsonDocument.Parse(json);
        var results = _built[schema].Evaluate(document.RootElement, Options);
        if (results.IsValid)
            return null;

        var faults = (results.Details ?? [])
            .Where(detail => detail.Errors is { Count: > 0 })
            .Select(detail => $"{detail.InstanceLocation}: {string.Join("; ", detail.Errors!.Values)}");
        return $"{schema} is not kept: {string.Join(" | ", faults)} in {json}";
    }

    /// <summary>
    /// Schemas that also take a null for each member that may be left out. The reader takes it so; the description shows the plain
    /// form, without it.
    /// </summary>
    public static JsonNode WithNulls(JsonNode schemas)
    {
        var copy = schemas.DeepClone();
        AllowNulls(copy);
        return copy;
    }

    private static void AllowNulls(JsonNode? node)
    {
        if (node is JsonArray list)
        {
            foreach (var element in list)
                AllowNulls(element);
        }
        else if (node is JsonObject group)
        {
            var required = (group["required"] as JsonArray ?? []).Select(name => name!.ToString()).ToHashSet();
            foreach ((var name, var member) in (group["properties"] as JsonObject ?? []).ToArray())
            {
                if (member!["$ref"] is { } target && !required.Contains(name))
                    group["properties"]![name] = new JsonObject { ["anyOf"] = new JsonArray(new JsonObject { ["$ref"] = target.DeepClone() }, new JsonObject { ["type"] = "null" }) };
            }

            foreach ((_, var inner) in group)
                AllowNulls(inner);
        }
    }

    private static JsonNode Closed(JsonNode schema)
    {
        var copy = schema.DeepClone();
        if (copy["properties"] is not null && copy["additionalProperties"] is null && copy["unevaluatedProperties"] is null)
            copy["additionalProperties"] = false;
        return copy;
    }
}
