using System.Text.Json.Nodes;
using SetupService.Api.Tests.Examples;

namespace SetupService.Api.Tests.Plans;

/// <summary>Requests for plans, made of the example.</summary>
internal static class PlanBodies
{
    public const string PlansPath = "/v1/plans";

    public static JsonObject Demo() => JsonNode.Parse(File.ReadAllText(ExampleCall.FileOf("plan.request.json")))!.AsObject();

    public static JsonObject Part(string id, string kind, double price, string? vehicle, string more = "")
    {
        var part = JsonNode.Parse("{" + more + "}")!.AsObject();
        part["id"] = id;
        part["kind"] = kind;
        part["price"] = new JsonObject { ["amount"] = price, ["currency"] = "EUR" };
        if (vehicle is not null) part["change"] = new JsonObject { ["vehicle"] = JsonNode.Parse(vehicle) };
        return part;
    }

    public static JsonObject WithParts(this JsonObject body, params JsonObject[] parts)
    {
        body["parts"] = new JsonArray([.. parts]);
        return body;
    }

    /// <summary>Puts a value in a place of a request; null takes the member out.</summary>
    public static JsonObject Put(JsonObject body, string pointer, string? value)
    {
        var steps = pointer.Split('/')[1..];
        JsonNode node = body;
        foreach (var step in steps[..^1]) node = node is JsonArray rows ? rows[int.Parse(step, System.Globalization.CultureInfo.InvariantCulture)]! : node[step]!;
        if (value is null) node.AsObject().Remove(steps[^1]);
        else if (node is JsonArray list) list[int.Parse(steps[^1], System.Globalization.CultureInfo.InvariantCulture)] = JsonNode.Parse(value);
        else node[steps[^1]] = JsonNode.Parse(value);
        return body;
    }
}
