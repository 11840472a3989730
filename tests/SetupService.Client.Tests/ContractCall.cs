using System.Reflection;
using System.Runtime.CompilerServices;
using System.Text.Json.Nodes;

namespace SetupService.Client.Tests;

/// <summary>A call as api/openapi.json has it, with its example.</summary>
internal sealed record ContractCall(string Name, string Method, string Path, JsonNode Operation)
{
    private static readonly string Root = System.IO.Path.GetFullPath(System.IO.Path.Combine(ThisFolder(), "../.."));

    private static readonly JsonNode Document = JsonNode.Parse(File.ReadAllText(System.IO.Path.Combine(Root, "api/openapi.json")))!;

    /// <summary>Every call of the contract.</summary>
    public static IReadOnlyList<ContractCall> All { get; } =
    [
        .. from path in Document["paths"]!.AsObject()
           from method in path.Value!.AsObject()
           select new ContractCall(method.Value!["operationId"]!.GetValue<string>(), method.Key.ToUpperInvariant(), path.Key, method.Value),
    ];

    /// <summary>The method of the client that makes it; null where there is none.</summary>
    public MethodInfo? ClientMethod => typeof(SetupClient).GetMethod($"{char.ToUpperInvariant(Name[0])}{Name[1..]}Async");

    /// <summary>Its parameters, references followed.</summary>
    public IReadOnlyList<JsonNode> Parameters => [.. (Operation["parameters"]?.AsArray() ?? []).Select(one => Resolve(one!))];

    /// <summary>The media type of its body; null where it has none.</summary>
    public string? BodyType => Operation["requestBody"]?["content"]!.AsObject().First().Key;

    /// <summary>The media type of its answer.</summary>
    public string AnswerType => Operation["responses"]!["200"]!["content"]!.AsObject().First().Key;

    /// <summary>The name of the schema of its body.</summary>
    public string? BodySchema => LastPart(Operation["requestBody"]?["content"]!.AsObject().First().Value!["schema"]!["$ref"]);

    /// <summary>The name of the schema of its answer.</summary>
    public string? AnswerSchema => LastPart(Operation["responses"]!["200"]!["content"]!.AsObject().First().Value!["schema"]!["$ref"]);

    /// <summary>The example body.</summary>
    public JsonNode? BodyExample => Operation["requestBody"] is { } body ? Resolve(body["content"]!.AsObject().First().Value!["examples"]!["demo"]!)["value"] : null;

    public static ContractCall Find(string name) => All.Single(one => one.Name == name);

    /// <summary>The text of a file of api/examples.</summary>
    public static string Example(string file) => File.ReadAllText(System.IO.Path.Combine(Root, "api/examples", file));

    public override string ToString() => Name;

    /// <summary>The address with the examples of its parameters, those alone that <paramref name="isTaken"/>.</summary>
    public string Address(Func<JsonNode, bool> isTaken)
    {
        var path = Path;
        List<string> query = [];
        foreach (var parameter in Parameters)
        {
            var (name, example) = (parameter["name"]!.GetValue<string>(), parameter["example"]?.ToString());
            if (parameter["in"]!.GetValue<string>() == "path")
                path = path.Replace($"{{{name}}}", Uri.EscapeDataString(example!), StringComparison.Ordinal);
            else if (example is not null && isTaken(parameter))
                query.Add($"{name}={Uri.EscapeDataString(example)}");
        }

        return path + (query.Count == 0 ? "" : "?" + string.Join('&', query));
    }

    private static string? LastPart(JsonNode? reference) => reference?.GetValue<string>().Split('/')[^1];

    private static JsonNode Resolve(JsonNode node) => node["$ref"] is { } reference
        ? reference.GetValue<string>().Split('/').Skip(1).Aggregate(Document, (at, name) => at[name]!)
        : node;

    private static string ThisFolder([CallerFilePath] string file = "") => System.IO.Path.GetDirectoryName(file)!;
}
