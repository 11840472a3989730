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
}
